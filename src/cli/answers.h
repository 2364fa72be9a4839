// The answers of one run, gathered so that they are written all at once, after everything went
// well.
#pragma once

#include <string>

#include "cli/command.h"
#include "ohmfold/problem.h"
#include "ohmfold/render.h"
#include "ohmfold/solve.h"
#include "ohmfold/trace.h"

namespace ohmfold {

/// Tells on standard error which cases of a trace contradict themselves, or are too long with their
/// symbols.
[[nodiscard]] ExitCode tell_contradictions(const Trace& trace);

class Answers {
 public:
  /// `several`: may hold the answers to more than one text. Then JSON is an array, however many
  /// there turn out to be, and each text's worked solution has the text's name above it.
  Answers(const OutputChoice& choice, bool several);

  /// Solves a problem and keeps the answer. Contradictions are told on standard error at once.
  [[nodiscard]] ExitCode add(const Problem& problem, const SolveOptions& options);

  /// The same; as text with the content and the notation of a handout, and where they are `drawn`
  /// with its figures.
  [[nodiscard]] ExitCode add(const Problem& problem, const SolveOptions& options,
                             const HandoutOptions& handout, bool drawn);

  /// Inspects a problem and keeps the answer, in the same way.
  [[nodiscard]] ExitCode add_inspection(const Problem& problem);

  /// Writes what was gathered to where the choice says; nothing where nothing was solved.
  [[nodiscard]] ExitCode deliver() const;

 private:
  void append(std::string answer, const std::string& source_name);

  OutputChoice choice_;
  bool several_;
  TextOptions text_options_;
  std::string text_;
};

}  // namespace ohmfold

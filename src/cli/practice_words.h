// What a session of practice says by itself, around the replies and hints.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "cli/attempts.h"
#include "ohmfold/coach.h"
#include "ohmfold/render.h"
#include "ohmfold/source.h"

namespace ohmfold {

/// Where the session stands.
struct Situation {
  const Exercise& exercise;
  const Work& work;
  const WorkJudgement& judged;
  std::size_t case_index;
  const TextOptions& options;
};

/// The problem, what became of a work that goes on, the circuit, and how to begin.
[[nodiscard]] std::string greeting_words(const Situation& situation, bool nothing_is_open);

/// The circuit of the case as it stands in the person's own reduction, and what is still asked.
[[nodiscard]] std::string standing_words(const Situation& situation);

/// What was right at once, what took more, what is kept though not right, what is still asked.
[[nodiscard]] std::string summary_words(const Situation& situation,
                                        const std::vector<Attempt>& attempts);

[[nodiscard]] std::string help_words(bool has_cases);

/// The labels of the cases, and how to go to another.
[[nodiscard]] std::string case_words(const Exercise& exercise);

/// Findings of the line just typed, a paragraph each.
[[nodiscard]] std::string findings_words(const Diagnostics& findings, const TextOptions& options);

/// A hint at the last line, which is not right.
[[nodiscard]] Hint mend_last(const WorkJudgement& judged);

/// The text with a line end at its end.
[[nodiscard]] std::string whole_lines(std::string text);

}  // namespace ohmfold

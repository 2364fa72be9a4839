// Solves and inspects problems and puts their answers together.
#include "cli/answers.h"

#include <cstdio>
#include <utility>

#include "cli/output.h"
#include "cli/terminal.h"
#include "ohmfold/inspect.h"

namespace ohmfold {

ExitCode tell_contradictions(const Trace& trace) {
  if (!trace.has_contradiction() && !trace.is_beyond_budget()) return ExitCode::solved;
  std::fputs(render_contradictions(trace).c_str(), stderr);
  return ExitCode::wrong_input;
}

Answers::Answers(const OutputChoice& choice, bool several)
    : choice_(choice), several_(several), text_options_(text_options(choice)) {}

ExitCode Answers::add(const Problem& problem, const SolveOptions& options) {
  return add(problem, options, {}, false);
}

ExitCode Answers::add(const Problem& problem, const SolveOptions& options,
                      const HandoutOptions& handout, bool drawn) {
  const Trace trace = solve(problem, options);
  append(choice_.format == Format::json ? render_json(trace, choice_.figures)
                                        : render_text(trace, text_options_, handout, drawn),
         problem.source_name);
  return tell_contradictions(trace);
}

ExitCode Answers::add_inspection(const Problem& problem) {
  const Inspection inspection = inspect(problem);
  append(choice_.format == Format::json ? render_inspection_json(inspection)
                                        : render_inspection_text(inspection, text_options_),
         problem.source_name);
  return tell_contradictions(inspection.trace);
}

void Answers::append(std::string answer, const std::string& source_name) {
  const bool first = text_.empty();
  if (!several_) {
    text_ = std::move(answer);
  } else if (choice_.format == Format::json) {
    if (answer.ends_with('\n')) answer.pop_back();
    text_ += (first ? "[\n" : ",\n") + answer;
  } else {
    text_ += (first ? "" : "\n") + source_name + ":\n\n" + answer;
  }
}

ExitCode Answers::deliver() const {
  if (text_.empty()) return ExitCode::solved;
  const bool open_array = several_ && choice_.format == Format::json;
  return ohmfold::deliver(open_array ? text_ + "\n]\n" : text_, choice_.file);
}

}  // namespace ohmfold

// `ohmfold draw`: a circuit file in, one figure out.
#include <string>
#include <vector>

#include "cli/answers.h"
#include "cli/circuit_files.h"
#include "cli/complain.h"
#include "cli/output.h"
#include "cli/terminal.h"
#include "ohmfold/draw.h"
#include "ohmfold/solve.h"

namespace ohmfold {
namespace {

/// Nobody reads a figure of more parts, and it would fill hundreds of megabytes.
constexpr std::size_t kMostParts = 10'000;

/// Leaves the case that is drawn. Of several without a choice that is the first, and it is said.
void keep_one_case(Problem& problem) {
  if (problem.cases.size() < 2) return;
  complain(problem.source_name + " has " + std::to_string(problem.cases.size()) +
           " cases; this is the first, '" + problem.cases.front().label +
           "'. --case chooses another");
  problem.cases.resize(1);
}

std::string steps_text(std::size_t steps) {
  if (steps == 0) return "no steps";
  return steps == 1 ? "1 step" : std::to_string(steps) + " steps";
}

std::string drawn(const Trace& trace, std::size_t steps, const DrawCommand& command) {
  switch (command.format) {
    case DrawingFormat::svg:
      return draw_svg(trace, 0, steps, command.drawing);
    case DrawingFormat::tikz:
      return draw_tikz(trace, 0, steps, command.drawing);
    case DrawingFormat::text:
      break;
  }
  const TextOptions text = text_options(command.output);
  return draw_text(trace, 0, steps, command.drawing, text.letters, text.colour);
}

ExitCode draw(Problem& problem, const DrawCommand& command) {
  if (problem.parts.size() > kMostParts) {
    complain(problem.source_name + " has " + std::to_string(problem.parts.size()) +
             " parts; figures are drawn of at most " + std::to_string(kMostParts));
    return ExitCode::wrong_input;
  }
  keep_one_case(problem);
  const Trace trace = solve(problem, {.pairs = command.pairs, .method = command.method});
  const ExitCode code = tell_contradictions(trace);
  const std::size_t steps = trace.cases.front().main.steps.size();
  const std::size_t after = command.after_last ? steps : command.after;
  if (after > steps) {
    complain("--after " + std::to_string(after) + " is too many: the circuit has " +
             steps_text(steps));
    return heavier(code, ExitCode::wrong_use);
  }
  return heavier(code, deliver(drawn(trace, after, command), command.output.file));
}

}  // namespace

ExitCode run(const DrawCommand& command) {
  const std::vector<std::string> labels =
      command.label ? std::vector<std::string>{*command.label} : std::vector<std::string>();
  return use_files({command.file}, labels, command.output.file,
                   [&](Problem& problem) { return draw(problem, command); });
}

}  // namespace ohmfold

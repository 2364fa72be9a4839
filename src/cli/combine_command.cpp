// `ohmfold combine`: a network written as one expression.
#include <optional>

#include "cli/answers.h"
#include "cli/command.h"
#include "cli/complain.h"
#include "cli/input.h"
#include "ohmfold/read.h"

namespace ohmfold {
namespace {

Outcome<SourceText> expression_text(const std::string& expression) {
  if (expression == "-") return read_input(expression);
  return {.value = SourceText{.name = "expression", .text = expression}, .diagnostics = {}};
}

}  // namespace

ExitCode run(const CombineCommand& command) {
  std::optional<Number> across;
  if (command.across) {
    const SourceText text{.name = "--across", .text = *command.across};
    const Outcome<Number> voltage = read_voltage(text);
    complain(voltage.diagnostics, text);
    if (!voltage) return ExitCode::wrong_use;
    across = voltage.value;
  }
  const Outcome<SourceText> source = expression_text(command.expression);
  if (!source) {
    complain(source.diagnostics, {.name = command.expression, .text = {}});
    return ExitCode::wrong_input;
  }
  const Outcome<Problem> problem = read_expression(*source.value, across);
  complain(problem.diagnostics, *source.value);
  if (!problem) return ExitCode::wrong_input;
  Answers answers(command.output, false);
  const ExitCode code = answers.add(*problem.value, {.pairs = command.pairs});
  return heavier(code, answers.deliver());
}

}  // namespace ohmfold

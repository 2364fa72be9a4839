// Circuit files in, answers out, with every complaint on the way.
#include "cli/circuit_files.h"

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "cli/complain.h"
#include "cli/input.h"
#include "cli/output.h"
#include "language/nearest.h"
#include "ohmfold/read.h"

namespace ohmfold {
namespace {

/// What to say of a label that the problem has no case for.
std::string no_such_case(const Problem& problem, const std::string& label) {
  const std::string finding = problem.source_name + " has no case '" + label + "'; ";
  std::vector<std::string_view> known;
  for (const Case& setting : problem.cases) {
    if (!setting.label.empty()) known.push_back(setting.label);
  }
  return finding + (known.empty() ? "it has no cases at all" : suggestion(label, known, "cases"));
}

/// Leaves the cases that are asked for, in the order of the file. Every unknown label is told.
ExitCode choose_cases(Problem& problem, const std::vector<std::string>& labels) {
  ExitCode code = ExitCode::solved;
  for (const std::string& label : labels) {
    if (std::ranges::find(problem.cases, label, &Case::label) == problem.cases.end()) {
      complain(no_such_case(problem, label));
      code = ExitCode::wrong_use;
    }
  }
  if (!labels.empty()) {
    std::erase_if(problem.cases, [&](const Case& setting) {
      return std::ranges::find(labels, setting.label) == labels.end();
    });
  }
  return code;
}

ExitCode use_file(const std::string& file, const std::vector<std::string>& cases,
                  const std::function<ExitCode(Problem&)>& use) {
  const Outcome<SourceText> source = read_input(file);
  if (!source) {
    complain(source.diagnostics, {.name = file, .text = {}});
    return ExitCode::wrong_input;
  }
  Outcome<Problem> problem = read_circuit(*source.value);
  complain(problem.diagnostics, *source.value);
  if (!problem) return ExitCode::wrong_input;
  const ExitCode chosen = choose_cases(*problem.value, cases);
  if (chosen != ExitCode::solved) return chosen;
  return use(*problem.value);
}

}  // namespace

ExitCode use_files(const std::vector<std::string>& files, const std::vector<std::string>& cases,
                   const std::string& output, const std::function<ExitCode(Problem&)>& use) {
  for (const std::string& file : files) {
    if (would_overwrite(output, file)) return ExitCode::wrong_use;
  }
  ExitCode code = ExitCode::solved;
  for (const std::string& file : files) code = heavier(code, use_file(file, cases, use));
  return code;
}

ExitCode answer_files(const CircuitFiles& given, const AnswerProblem& answer) {
  Answers answers(given.output, given.files.size() > 1);
  const ExitCode code = use_files(given.files, given.cases, given.output.file,
                                  [&](const Problem& problem) { return answer(problem, answers); });
  return heavier(code, answers.deliver());
}

}  // namespace ohmfold

// `ohmfold inspect`: circuit files in; out, whether they are series-parallel, and why.
#include "cli/circuit_files.h"

namespace ohmfold {

ExitCode run(const InspectCommand& command) {
  return answer_files(
      {command.files, command.cases, command.output},
      [](const Problem& problem, Answers& answers) { return answers.add_inspection(problem); });
}

}  // namespace ohmfold

// `ohmfold solve`: circuit files in, worked solutions out.
#include "cli/circuit_files.h"

namespace ohmfold {

ExitCode run(const SolveCommand& command) {
  return answer_files({command.files, command.cases, command.output}, [&](const Problem& problem,
                                                                          Answers& answers) {
    return answers.add(problem, {.pairs = command.pairs, .method = command.method});
  });
}

}  // namespace ohmfold

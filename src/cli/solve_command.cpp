// `ohmfold solve`: circuit files in, worked solutions out.
#include "cli/circuit_files.h"
#include "cli/handouts.h"

namespace ohmfold {

ExitCode run(const SolveCommand& command) {
  const SolveOptions options{.pairs = command.pairs, .method = command.method};
  if (is_handout(command.output.format)) return write_handout(command, options);
  return answer_files({command.files, command.cases, command.output}, [&](const Problem& problem,
                                                                          Answers& answers) {
    return answers.add(problem, options, command.handout, command.figures_in_text);
  });
}

}  // namespace ohmfold

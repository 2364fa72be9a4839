// `ohmfold hint`: a problem and, where there is one, a work in; out, a hint at what to do next.
#include "cli/command.h"
#include "cli/complain.h"
#include "cli/exercise_files.h"
#include "cli/output.h"
#include "cli/terminal.h"
#include "ohmfold/render.h"

namespace ohmfold {

ExitCode run(const HintCommand& command) {
  if (command.problem == "-" && command.work == "-") {
    complain("the problem and the work cannot both come from standard input");
    return ExitCode::wrong_use;
  }
  for (const std::string& file : {command.problem, command.work.value_or("-")}) {
    if (would_overwrite(command.output.file, file)) return ExitCode::wrong_use;
  }
  const std::optional<Exercise> exercise = read_exercise(command.problem);
  if (!exercise) return ExitCode::wrong_input;
  const std::optional<Work> work =
      command.work ? read_work_file(*command.work, *exercise->problem) : Work();
  if (!work) return ExitCode::wrong_input;
  const WorkJudgement judged = judge_work(*exercise, *work);
  const Hint hint = next_hint(*exercise, *work, judged);
  const ExitCode written = deliver(
      render_hint(*exercise, *work, judged, hint, command.level, text_options(command.output)),
      command.output.file);
  return heavier(hint.kind == HintKind::mend ? ExitCode::mistakes : ExitCode::solved, written);
}

}  // namespace ohmfold

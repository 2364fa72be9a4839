// `ohmfold check`: a problem and a work in; out, what there is to say about each line.
#include "cli/command.h"
#include "cli/complain.h"
#include "cli/exercise_files.h"
#include "cli/output.h"
#include "cli/terminal.h"
#include "ohmfold/render.h"

namespace ohmfold {

ExitCode run(const CheckCommand& command) {
  if (command.problem == "-" && command.work == "-") {
    complain("the problem and the work cannot both come from standard input");
    return ExitCode::wrong_use;
  }
  for (const std::string& file : {command.problem, command.work}) {
    if (would_overwrite(command.output.file, file)) return ExitCode::wrong_use;
  }
  const std::optional<Exercise> exercise = read_exercise(command.problem);
  if (!exercise) return ExitCode::wrong_input;
  const std::optional<Work> work = read_work_file(command.work, *exercise->problem);
  if (!work) return ExitCode::wrong_input;
  const WorkJudgement judged =
      judge_work(*exercise, *work, {.strict_rounding = command.strict_rounding});
  const ExitCode written =
      deliver(command.output.format == Format::json
                  ? render_judgement_json(*exercise, *work, judged)
                  : render_judgement_text(*exercise, *work, judged, text_options(command.output)),
              command.output.file);
  return heavier(judged.all_right() ? ExitCode::solved : ExitCode::mistakes, written);
}

}  // namespace ohmfold

// `ohmfold practise`: a person solves a problem in the terminal, one claim at a time.
#include <cstdio>
#include <filesystem>

#include "cli/command.h"
#include "cli/complain.h"
#include "cli/exercise_files.h"
#include "cli/line_input.h"
#include "cli/output.h"
#include "cli/practice.h"
#include "cli/terminal.h"
#include "cli/work_file.h"

namespace ohmfold {
namespace {

/// The problem's own name in the current folder: "lamps.work" for "problems/lamps.circuit".
std::string usual_work_file(const std::string& problem) {
  return std::filesystem::path(problem).filename().replace_extension(".work").string();
}

/// False where nobody reads any more.
bool say(const std::string& text) {
  return std::fputs(text.c_str(), stdout) >= 0 && std::fflush(stdout) == 0;
}

/// How the last saving went: until a later one succeeds, something is not kept.
ExitCode hold(Practice& practice, WorkFile& file) {
  LineInput input;
  ExitCode saved = ExitCode::solved;
  while (const std::optional<std::string> line = input.read(practice.prompt())) {
    const Practice::Reply reply = practice.take(*line);
    if (reply.changed) saved = file.save(practice.text());
    if (!say(reply.text) || reply.over) break;
  }
  return saved;
}

}  // namespace

ExitCode run(const PractiseCommand& command) {
  if (command.problem == "-") {
    complain("the problem comes from a file; claims are read from standard input");
    return ExitCode::wrong_use;
  }
  WorkFile file(command.work.value_or(usual_work_file(command.problem)));
  if (same_file(file.name(), command.problem)) {
    complain("the work would overwrite " + command.problem);
    return ExitCode::wrong_use;
  }
  const std::optional<Exercise> exercise = read_exercise(command.problem);
  if (!exercise) return ExitCode::wrong_input;
  const std::optional<SourceText> text = file.open();
  if (!text) return ExitCode::wrong_input;
  Outcome<Practice> practice = Practice::begin(*exercise, *text, text_options(command.output));
  complain(practice.diagnostics, *text);
  if (!practice) {
    complain(file.name() + " is left as it is; mend it, or name another file with --work");
    return ExitCode::wrong_input;
  }
  say("Your work is kept in " + file.name() + ".\n\n" + practice.value->greeting());
  const ExitCode saved = hold(*practice.value, file);
  say(practice.value->summary());
  return saved;
}

}  // namespace ohmfold

// `ohmfold mark`: a problem and the works of a class in; out, a table of them and what went wrong.
#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "cli/command.h"
#include "cli/complain.h"
#include "cli/exercise_files.h"
#include "cli/input.h"
#include "cli/output.h"
#include "cli/progress.h"
#include "cli/terminal.h"
#include "cli/work_folder.h"
#include "ohmfold/read.h"
#include "ohmfold/render.h"

namespace ohmfold {
namespace {

/// The first error in one line: "line 3: …".
std::string first_error(const Diagnostics& findings) {
  const auto error = std::ranges::find(findings, Severity::error, &Diagnostic::severity);
  const std::uint32_t line = error->where.line;
  return (line == 0 ? "" : "line " + std::to_string(line) + ": ") + message(*error);
}

MarkedWork mark(const NamedFile& file, const Exercise& exercise, const JudgeOptions& options) {
  const Outcome<SourceText> source = read_ordinary_file(file.path);
  if (!source) return unmarked_work(file.name, first_error(source.diagnostics));
  const Outcome<Work> work = read_work(*source.value, *exercise.problem);
  if (!work) return unmarked_work(file.name, first_error(work.diagnostics));
  return marked_work(file.name, exercise, *work.value, judge_work(exercise, *work.value, options));
}

std::string rendered(const ClassReport& report, const OutputChoice& output) {
  switch (output.format) {
    case Format::json:
      return render_class_report_json(report);
    case Format::csv:
      return render_class_report_csv(report);
    case Format::text:
    case Format::html:
    case Format::latex:
    case Format::markdown:
      break;
  }
  return render_class_report_text(report, text_options(output));
}

}  // namespace

ExitCode run(const MarkCommand& command) {
  if (std::ranges::find(command.works, "-") != command.works.end()) {
    complain("works to be marked come from files, not from standard input");
    return ExitCode::wrong_use;
  }
  if (would_overwrite(command.output.file, command.problem)) return ExitCode::wrong_use;
  const std::optional<std::vector<NamedFile>> files = work_files(command.works);
  if (!files) return ExitCode::wrong_input;
  for (const NamedFile& file : *files) {
    if (would_overwrite(command.output.file, file.path)) return ExitCode::wrong_use;
  }
  const std::optional<Exercise> exercise = read_exercise(command.problem);
  if (!exercise) return ExitCode::wrong_input;
  std::vector<MarkedWork> works;
  works.reserve(files->size());
  {
    Progress progress("works", files->size());
    for (const NamedFile& file : *files) {
      works.push_back(mark(file, *exercise, {.strict_rounding = command.strict_rounding}));
      progress.advance();
    }
  }
  const ClassReport report = class_report(*exercise, std::move(works));
  const ExitCode written = deliver(rendered(report, command.output), command.output.file);
  return heavier(report.all_right() ? ExitCode::solved : ExitCode::mistakes, written);
}

}  // namespace ohmfold

// Worked solutions as one document.
#include "cli/handouts.h"

#include <algorithm>
#include <filesystem>
#include <utility>
#include <vector>

#include "cli/answers.h"
#include "cli/circuit_files.h"
#include "cli/output.h"
#include "ohmfold/handout.h"

namespace ohmfold {
namespace {

/// The text of the document last, so that what it refers to is there before it.
std::vector<OutputFile> markdown_files(const std::vector<Trace>& traces,
                                       const SolveCommand& command) {
  const std::filesystem::path file = command.output.file;
  Markdown written = render_markdown(traces, file.stem().string(), command.handout);
  std::vector<OutputFile> files;
  for (SideFile& figure : written.figures) {
    const std::filesystem::path beside = file.parent_path() / figure.name;
    files.push_back({beside.string(), std::move(figure.text)});
  }
  files.push_back({file.string(), std::move(written.text)});
  return files;
}

ExitCode deliver_markdown(const std::vector<Trace>& traces, const SolveCommand& command) {
  const std::string& name = command.output.file;
  if (command.inline_figures || name.empty() || !is_ordinary(name)) {
    return deliver(render_markdown(traces, "", command.handout).text, name);
  }
  const std::vector<OutputFile> files = markdown_files(traces, command);
  for (const OutputFile& file : files) {
    const bool overwrites = std::ranges::any_of(
        command.files, [&](const std::string& input) { return would_overwrite(file.name, input); });
    if (overwrites) return ExitCode::wrong_use;
  }
  return deliver_all(files);
}

}  // namespace

bool is_handout(Format format) {
  return format == Format::html || format == Format::latex || format == Format::markdown;
}

ExitCode write_handout(const SolveCommand& command, const SolveOptions& options) {
  std::vector<Trace> traces;
  const ExitCode code =
      use_files(command.files, command.cases, command.output.file, [&](const Problem& problem) {
        traces.push_back(solve(problem, options));
        return tell_contradictions(traces.back());
      });
  if (traces.empty()) return code;
  if (command.output.format == Format::markdown) {
    return heavier(code, deliver_markdown(traces, command));
  }
  const std::string text = command.output.format == Format::html
                               ? render_html(traces, command.handout)
                               : render_latex(traces, command.handout);
  return heavier(code, deliver(text, command.output.file));
}

}  // namespace ohmfold

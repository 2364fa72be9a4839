// Worked solutions as one document: HTML, LaTeX, Markdown.
#pragma once

#include "cli/command.h"
#include "ohmfold/solve.h"

namespace ohmfold {

/// Are several problems one document in this format?
[[nodiscard]] bool is_handout(Format format);

/// Solves all files that can be read and writes them as one document in the command's format.
/// Markdown in a file has its figures as files beside it; elsewhere within the text. Requires a
/// handout.
[[nodiscard]] ExitCode write_handout(const SolveCommand& command, const SolveOptions& options);

}  // namespace ohmfold

// Writing an answer: to standard output, or to a file that is there whole or not at all.
#pragma once

#include <string>
#include <vector>

#include "cli/exit_code.h"

namespace ohmfold {

/// Writes `text` to the file `name`, or to standard output where `name` is empty. A file is written
/// aside and then renamed, so that nobody ever sees half of it; what is no ordinary file (a device,
/// a pipe) is written to directly. A failure is told on standard error; a reader who stopped
/// reading is none. Once it is there, a file stays, also where the machine stops.
[[nodiscard]] ExitCode deliver(const std::string& text, const std::string& name);

struct OutputFile {
  std::string name, text;
};

/// Writes files that belong together: all of them aside, and only where that went well are they
/// renamed, in their order. Each is an ordinary file, or not there yet (see is_ordinary).
[[nodiscard]] ExitCode deliver_all(const std::vector<OutputFile>& files);

/// Would writing to this name make an ordinary file, or replace one?
[[nodiscard]] bool is_ordinary(const std::string& name);

/// Are these names of one and the same ordinary file? False where one of them is of none.
[[nodiscard]] bool same_file(const std::string& first, const std::string& second);

/// Is `output` the same ordinary file as `input`, which is yet to be read? Then it is told.
[[nodiscard]] bool would_overwrite(const std::string& output, const std::string& input);

}  // namespace ohmfold

// Files and standard input as texts to read.
#pragma once

#include <cstddef>
#include <string>

#include "ohmfold/source.h"

namespace ohmfold {

/// The largest text that is read, in bytes. A circuit of ten million parts fits.
inline constexpr std::size_t kMostBytes = std::size_t{256} << 20;

/// The whole of the file `name`, or of standard input for "-". A file that cannot be read, or that
/// is longer than kMostBytes, is a Diagnostic without a place; never more than that is held.
[[nodiscard]] Outcome<SourceText> read_input(const std::string& name);

/// As above, for a file only: a folder, a device or a pipe, which might never end, is a Diagnostic.
[[nodiscard]] Outcome<SourceText> read_ordinary_file(const std::string& name);

}  // namespace ohmfold

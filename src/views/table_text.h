// A table in columns of plain text.
#pragma once

#include <string>
#include <vector>

#include "views/document.h"

namespace ohmfold::views {

/// The lines of the table: its headings, a rule, its rows; columns are two spaces apart. Where the
/// table is wider than `width`, the widest columns are narrowed and their cells wrapped, down to
/// their longest word.
[[nodiscard]] std::vector<std::string> table_lines(const Table& table, std::size_t width,
                                                   Letters letters);

}  // namespace ohmfold::views

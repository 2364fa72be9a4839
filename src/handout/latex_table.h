// Tables for LaTeX.
#pragma once

#include <string>

#include "views/document.h"

namespace ohmfold::handout {

/// A tabular, narrowed to the line where it is wider, or several below one another, each with the
/// headings, where the table is long: pages may break between them.
[[nodiscard]] std::string latex_table(const views::Table& table, int line_width);

}  // namespace ohmfold::handout

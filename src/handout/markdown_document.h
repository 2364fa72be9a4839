// A document as CommonMark.
#pragma once

#include <string>

#include "ohmfold/handout.h"
#include "views/document.h"

namespace ohmfold::handout {

/// Formulas and tables stand in blocks of code, which keep their columns; there is no HTML but
/// figures within the text. `stem` as in render_markdown. Cost: linear.
[[nodiscard]] Markdown markdown_document(const views::Document& document, const std::string& stem,
                                         SymbolSet symbols);

}  // namespace ohmfold::handout

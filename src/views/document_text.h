// A document as plain text for a terminal or a printer.
#pragma once

#include <string>

#include "ohmfold/draw.h"
#include "ohmfold/render.h"
#include "views/document.h"

namespace ohmfold::views {

/// Wrapped to the width of the options; ends with a line end. Of the options, `figures` is not
/// used: the document has its amounts. Figures must have terminal_sizes(); one that is wider than
/// the text is left out, with a line that says so.
[[nodiscard]] std::string document_text(const Document& document, const TextOptions& options,
                                        SymbolSet symbols = SymbolSet::rectangle);

}  // namespace ohmfold::views

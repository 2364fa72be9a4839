// A schematic as a tikzpicture that needs nothing but TikZ.
#pragma once

#include <string>

#include "drawing/schematic.h"
#include "ohmfold/draw.h"

namespace ohmfold::drawing {

/// `alone`: a whole document of class standalone's make with the article class; otherwise the
/// environment only, for a document that has tikz_preamble() before it.
[[nodiscard]] std::string tikz(const Schematic& schematic, SymbolSet symbols, bool alone);

/// Colours and styles, once for a document.
[[nodiscard]] std::string tikz_preamble();

}  // namespace ohmfold::drawing

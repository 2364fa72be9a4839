// A schematic as a tikzpicture that needs nothing but TikZ.
#pragma once

#include <string>

#include "drawing/schematic.h"
#include "ohmfold/draw.h"

namespace ohmfold::drawing {

/// `alone`: a whole document with one page of the drawing's size; otherwise the environment only,
/// for a document that has tikz_preamble() before it. A unit is 0.75 pt, so that sizes are those of
/// the drawing in SVG; beyond 16,000 units everything but letters shrinks to what TeX can hold.
[[nodiscard]] std::string tikz(const Schematic& schematic, SymbolSet symbols, bool alone);

/// Colours and styles, once for a document, behind \usepackage{tikz}. All names begin with
/// "circuit".
[[nodiscard]] std::string tikz_preamble();

}  // namespace ohmfold::drawing

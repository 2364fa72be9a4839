// A schematic for a terminal, in box-drawing characters or plain ASCII.
#pragma once

#include <string>

#include "drawing/schematic.h"
#include "ohmfold/decimal.h"
#include "ohmfold/draw.h"

namespace ohmfold::drawing {

/// The most columns times lines of a drawing: more than anybody could look at.
inline constexpr int kMostCells = 4'000'000;

/// Lines ended by line feeds, without spaces at their ends. Requires a schematic with
/// terminal_sizes(): lines along rows and columns. Empty where it has more than kMostCells.
///
/// A part that is next has the number of its step in brackets, one that has come double strokes; a
/// line that passes another is drawn as ")", joints of three or more lines as a dot.
[[nodiscard]] std::string box_text(const Schematic& schematic, SymbolSet symbols, Letters letters,
                                   bool colour);

}  // namespace ohmfold::drawing

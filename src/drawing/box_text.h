// A schematic for a terminal, in box-drawing characters or plain ASCII.
#pragma once

#include <string>

#include "drawing/schematic.h"
#include "ohmfold/decimal.h"
#include "ohmfold/draw.h"

namespace ohmfold::drawing {

/// Lines ended by line feeds, without spaces at their ends. Requires a schematic with
/// terminal_sizes().
[[nodiscard]] std::string box_text(const Schematic& schematic, SymbolSet symbols, Letters letters,
                                   bool colour);

}  // namespace ohmfold::drawing

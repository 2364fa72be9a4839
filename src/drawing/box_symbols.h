// The symbols of parts in character cells.
#pragma once

#include <string_view>
#include <vector>

#include "drawing/schematic.h"
#include "ohmfold/decimal.h"
#include "ohmfold/draw.h"

namespace ohmfold::drawing {

/// Text at a cell, seen from the middle of the symbol. Spaces leave what is below them; '_' stands
/// for a space that covers a line.
struct CellRow {
  int x = 0, y = 0;
  std::string_view text;
};

/// `direction` is one of the four along rows and columns. No symbol reaches farther than two cells
/// along its lead, one across; the signs of a battery stand beside its lead. Switches have no
/// double strokes.
[[nodiscard]] std::vector<CellRow> cell_symbol(SymbolKind kind, Spot direction, SymbolSet set,
                                               Letters letters, bool doubled);

}  // namespace ohmfold::drawing

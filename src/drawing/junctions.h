// Where lines of a schematic meet, end, or pass one another.
#pragma once

#include "drawing/schematic.h"

namespace ohmfold::drawing {

/// Puts dots where three or more lines of a point meet, and rings at its loose ends. Requires the
/// lines of all parts and points; `ends` has those of the parts that are joined at the point.
void mark_junctions(DrawnPoint& point, const std::vector<Spot>& ends);

/// Where a line crosses another in the middle of both, in the order of places. Cost: near-linear
/// but for the uprights that a lying line spans, and for slanted lines.
[[nodiscard]] std::vector<Crossing> crossings_of(const Schematic& schematic);

}  // namespace ohmfold::drawing

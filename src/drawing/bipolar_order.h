// An order of the corners from top to bottom in which each one between has one above and one below.
#pragma once

#include <cstdint>
#include <vector>

#include "drawing/planar_map.h"

namespace ohmfold::drawing {

/// The rank of each corner, from 0 for corner 0 to corners - 1 for corner 1: by `heights` (see
/// Core; may be empty) where they make such an order, or else by the distance from both, or else by
/// depth-first search. Requires that with an edge from corner 0 to corner 1, which is among the
/// edges, no corner is a cut. Tarjan, Two streamlined depth-first search algorithms, 1986. Cost: n
/// log n.
[[nodiscard]] std::vector<std::uint32_t> bipolar_order(std::uint32_t corners,
                                                       const std::vector<CornerPair>& edges,
                                                       const std::vector<int>& heights);

}  // namespace ohmfold::drawing

// Corners as horizontal wires that see each other: a column for each edge, so that uprights in
// these columns meet only the wires of their own corners.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "drawing/core.h"
#include "drawing/placement.h"
#include "drawing/planar_map.h"

namespace ohmfold::drawing {

struct Visibility {
  /// By corner, from top to bottom, all different: see bipolar_order.
  std::vector<std::uint32_t> rank;
  /// By edge of the core: where its upright stands; unused for an edge that was left out. With any
  /// rows that keep the order along edges nothing meets.
  std::vector<int> column;
  /// The edges that were taken, in order, then others that keep corners in order of their ranks.
  std::vector<CornerPair> edges;
};

/// Of the edges that are taken; nothing where they are not planar with one from corner 0 to corner
/// 1. That edge would stand left of all. Of two mirror images the one nearer to the order of the
/// edges. Tamassia and Tollis, A unified approach to visibility representations of planar graphs,
/// 1986. Cost: n log n.
[[nodiscard]] std::optional<Visibility> find_visibility(const Core& core,
                                                        const std::vector<bool>& taken);

/// The room that an edge needs: of a single part a line of one cell.
[[nodiscard]] inline int height_of(const CoreEdge& edge) {
  return edge.single ? kCell : edge.height;
}
[[nodiscard]] inline int width_of(const CoreEdge& edge) {
  return edge.single ? 0 : edge.width;
}

/// Draws the uprights of all edges and the wires of all corners. By corner: its row. By edge: its
/// column and where its box begins.
[[nodiscard]] CorePlan plan_of(const Core& core, const std::vector<int>& rows,
                               const std::vector<int>& columns, const std::vector<int>& tops);

}  // namespace ohmfold::drawing

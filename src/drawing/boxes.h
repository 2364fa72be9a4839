// How much room each shape takes, and how it is arranged.
#pragma once

#include <vector>

#include "drawing/core.h"
#include "drawing/structure.h"

namespace ohmfold::drawing {

/// A shape as a box with its ports at its top left and bottom left, in units of the grid.
struct BoxOf {
  int width = 0;  ///< from its leftmost upright line to its rightmost
  int height = 0;
  bool top_joined = true;  ///< false: nothing is drawn at its top, as of a phantom
  bool bottom_joined = true;
  /// A series whose first and last parts lie along the wires above and below, as in a ladder: how
  /// many of them; all others stand upright.
  int lying_above = 0, lying_below = 0;
};

struct Arrangement {
  std::vector<BoxOf> boxes;     ///< by shape
  std::vector<CorePlan> cores;  ///< by shape; empty but for cores
  int width = 0, height = 0;    ///< of the frame: the root's column at the left and all else
};

/// Where the columns of parallel shapes are, from the left port of all of them.
struct Columns {
  std::vector<int> at;  ///< by child: its left
  int width = 0;
};
/// `first`: where the first child's column is.
[[nodiscard]] Columns columns(const std::vector<std::uint32_t>& children,
                              const std::vector<BoxOf>& boxes, int first);

/// The shapes beside the root: the children of a parallel one, or the whole.
[[nodiscard]] std::vector<std::uint32_t> beside_root(const std::vector<Shape>& shapes);

/// How far the upright part of a series with lying parts stands from its entry.
[[nodiscard]] int reach(const BoxOf& box);

/// Puts the children of parallel shapes into the order in which they stand side by side, and gives
/// each shape its room. `heights` by vertex of the graph, or empty.
[[nodiscard]] Arrangement arrange(std::vector<Shape>& shapes, const DrawnGraph& graph,
                                  const std::vector<int>& heights, bool slanted);

}  // namespace ohmfold::drawing

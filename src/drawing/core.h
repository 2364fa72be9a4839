// What series and parallel do not bring down: a core of corners and edges, placed as a whole. Each
// edge stands for a part or for a box of parts that is placed already.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "drawing/geometry.h"

namespace ohmfold::drawing {

/// A box has its ports at its top left and its bottom left: (0, 0) and (0, height). All of it lies
/// in 0 <= x <= width, 0 <= y <= height, where width is that of its columns' lines less one cell
/// (0 for one part).
struct CoreEdge {
  std::uint32_t from = 0, to = 0;  ///< corners
  int width = 0, height = 0;       ///< in units of the grid
  bool single = true;              ///< one part: it may lie along any line
};

/// Without loops at a corner; two edges never join the same two corners. With an edge from corner 0
/// to corner 1 added it is three-connected or nearly so: no corner but these two has fewer than
/// three edges.
struct Core {
  std::uint32_t corners = 0;  ///< 0 is joined above, 1 below
  std::vector<CoreEdge> edges;
  std::vector<int> heights;  ///< by corner, 0 for the highest potential; may be empty
};

struct EdgePlace {
  Spot top;             ///< where the top left of its box is; its bottom port lies `height` below
  bool turned = false;  ///< does `from` lie below?
  Path line;            ///< of a single part: its line where it does not stand upright, from `from`
  std::size_t seat = 0;  ///< with a line: see PlacedPart
};

/// The core as a box of its own: the wires of corner 0 lead to (0, 0), those of corner 1 to
/// (0, height), and all leads to its boxes are among the wires of the corners. What holds of a
/// Placement holds of it.
struct CorePlan {
  int width = 0, height = 0;
  std::vector<std::vector<Segment>> wires;  ///< by corner
  std::vector<Spot> at;                     ///< by corner: where its name belongs
  std::vector<EdgePlace> edges;             ///< in the order of Core::edges
};

/// Twelve single parts along the edges of a cube, in oblique projection, as everybody draws it; two
/// lines that pass behind are crossed. Nothing where the core is no cube.
[[nodiscard]] std::optional<CorePlan> place_cube(const Core& core);

/// Each corner a horizontal wire, each edge upright between two of them, no line across another.
/// Nothing where the core with an edge from corner 0 to corner 1 is not planar. Visibility
/// representation: Tamassia and Tollis 1986; Rosenstiehl and Tarjan 1986. Cost: near-linear.
[[nodiscard]] std::optional<CorePlan> place_planar(const Core& core);

/// The same for any core: uprights may cross the wires of corners that lie between, outside their
/// boxes; few do.
[[nodiscard]] CorePlan place_crossing(const Core& core);

}  // namespace ohmfold::drawing

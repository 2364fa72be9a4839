// How a graph is built up between its top and its bottom: from edges in series and in parallel, and
// from cores that are neither.
#pragma once

#include <cstdint>
#include <vector>

#include "drawing/drawn_graph.h"

namespace ohmfold::drawing {

enum class ShapeKind : std::uint8_t {
  edge,
  series,    ///< children from top to bottom
  parallel,  ///< children in the order of their first parts
  core       ///< children along the links of a graph that is nowhere series or parallel
};

/// A link of a core, between corners; 0 is the top of the shape, 1 its bottom.
struct CoreLink {
  std::uint32_t from = 0, to = 0;
};

/// One node of the tree.
struct Shape {
  ShapeKind kind = ShapeKind::edge;
  std::uint32_t edge = 0;               ///< of the graph
  bool turned = false;                  ///< an edge: is its `a` at the bottom?
  std::uint32_t top = 0, bottom = 0;    ///< vertices of the graph
  std::vector<std::uint32_t> children;  ///< of a core: each from its link's `from` down to its `to`
  std::vector<CoreLink> links;
  std::vector<std::uint32_t> corners;  ///< of a core: vertices of the graph
};

/// The shapes, each before its children; the first is the whole graph without its root. Requires a
/// graph with at least one edge. Cost: near-linear for a series-parallel graph; inner cores are
/// looked for in cores of at most 60 corners. Method: reduction (Duffin, J. Math. Anal. Appl. 10
/// (1965) 303), then splitting at pairs of vertices.
[[nodiscard]] std::vector<Shape> structure(const DrawnGraph& graph);

}  // namespace ohmfold::drawing

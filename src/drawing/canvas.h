// Collects lines for a placement: wires by vertex, parts by edge.
#pragma once

#include <cstdint>
#include <vector>

#include "drawing/drawn_graph.h"
#include "drawing/placement.h"

namespace ohmfold::drawing {

class Canvas {
 public:
  Canvas(const Network& network, const DrawnGraph& graph)
      : network_(network),
        graph_(graph),
        points_(network.point_count()),
        known_(network.point_count(), false) {}

  /// A wire of the point that the vertex belongs to; none where it would be a spot.
  void wire(std::uint32_t vertex, Spot from, Spot to);
  /// Where the name of a point belongs, unless it has its place already.
  void name(std::uint32_t vertex, Spot at);
  /// An edge of the graph along a line from the vertex `a` to `b`.
  void edge(std::uint32_t edge, Path line, std::size_t seat = 0);
  void part(PartId part, Path line) { made_.parts.push_back({part, std::move(line), 0}); }
  void terminal(std::uint32_t vertex, Spot at) {
    made_.terminals.push_back({graph_.point_of[vertex], at});
  }

  /// Without the points at which nothing is drawn.
  [[nodiscard]] Placement placement() &&;

 private:
  PlacedPoint& point(std::uint32_t vertex) { return points_[graph_.point_of[vertex].index]; }

  const Network& network_;
  const DrawnGraph& graph_;
  Placement made_;
  std::vector<PlacedPoint> points_;
  std::vector<bool> known_;
};

}  // namespace ohmfold::drawing

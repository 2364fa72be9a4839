// Puts lines where they belong and everything in the order of its id.
#include "drawing/canvas.h"

#include <algorithm>
#include <utility>

namespace ohmfold::drawing {

void Canvas::wire(std::uint32_t vertex, Spot from, Spot to) {
  if (from != to) point(vertex).wires.push_back({from, to});
}

void Canvas::name(std::uint32_t vertex, Spot at) {
  const std::uint32_t index = graph_.point_of[vertex].index;
  if (known_[index]) return;
  known_[index] = true;
  points_[index].at = at;
}

void Canvas::edge(std::uint32_t edge, Path line, std::size_t seat) {
  const Edge& one = graph_.edges[edge];
  switch (one.kind) {
    case EdgeKind::part:
      made_.parts.push_back({one.part, std::move(line), seat});
      return;
    case EdgeKind::plain:
      for (std::size_t i = 0; i + 1 < line.size(); ++i) wire(one.a, line[i], line[i + 1]);
      return;
    case EdgeKind::phantom:
      return;
  }
}

Placement Canvas::placement() && {
  std::sort(made_.parts.begin(), made_.parts.end(),
            [](const PlacedPart& a, const PlacedPart& b) { return a.part < b.part; });
  std::vector<bool> joined(points_.size(), false);
  for (const PlacedPart& placed : made_.parts) {
    joined[network_.from(placed.part).index] = true;
    joined[network_.to(placed.part).index] = true;
  }
  for (const Terminal& terminal : made_.terminals) joined[terminal.point.index] = true;
  for (std::uint32_t i = 0; i < points_.size(); ++i) {
    if (!joined[i]) continue;
    points_[i].point = PointId{i};
    made_.points.push_back(std::move(points_[i]));
  }
  return std::move(made_);
}

}  // namespace ohmfold::drawing

// The walk that reaches every point.
#include "solve/potentials.h"

namespace ohmfold {

PotentialWalk walk_potentials(const Network& start, PointId ground) {
  PotentialWalk walk;
  walk.points.resize(start.point_count());
  std::vector<bool> reached(start.point_count(), false);
  std::uint32_t piece = 0;
  const auto walk_from = [&](PointId reference) {
    reached[reference.index] = true;
    walk.points[reference.index].piece = piece;
    walk.order.push_back(reference);
    for (std::size_t next = walk.order.size() - 1; next < walk.order.size(); ++next) {
      const PointId point = walk.order[next];
      start.for_each_at(point, [&](PartId part) {
        const PointId other = start.across(part, point);
        if (reached[other.index] || is_gap(start.kind(part))) return;
        const ElementKind kind = start.kind(part);
        if (kind == ElementKind::port || kind == ElementKind::current_source) return;
        reached[other.index] = true;
        walk.points[other.index] = {part, point, piece};
        walk.order.push_back(other);
      });
    }
    ++piece;
  };
  if (start.point_count() == 0) return walk;
  walk_from(ground);
  for (std::uint32_t i = 0; i < start.point_count(); ++i) {
    if (!reached[i]) walk_from(PointId{i});
  }
  return walk;
}

}  // namespace ohmfold

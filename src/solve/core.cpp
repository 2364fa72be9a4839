// Copying what is alive, and finding the way back to it.
#include "solve/core.h"

#include <algorithm>

#include "ohmfold/error.h"

namespace ohmfold {

Core::Core(const Network& whole)
    : whole_parts_(static_cast<std::uint32_t>(whole.part_count())),
      whole_points_(static_cast<std::uint32_t>(whole.point_count())) {
  for (std::uint32_t i = 0; i < whole.part_count(); ++i) {
    if (whole.is_alive(PartId{i})) parts_.push_back(PartId{i});
  }
  for (const PartId part : parts_) {
    points_.push_back(whole.from(part));
    points_.push_back(whole.to(part));
  }
  std::sort(points_.begin(), points_.end());
  points_.erase(std::unique(points_.begin(), points_.end()), points_.end());
  const auto number = [&](PointId point) {
    const auto at = std::lower_bound(points_.begin(), points_.end(), point);
    return PointId{static_cast<std::uint32_t>(at - points_.begin())};
  };
  network_ = Network(points_.size());
  for (const PartId part : parts_) {
    const bool source = is_source(whole.kind(part));
    ensure(source || whole.kind(part) == ElementKind::resistor, "a core of more than resistors");
    network_.add(source ? ElementKind::port : ElementKind::resistor, number(whole.from(part)),
                 number(whole.to(part)), whole.resistance(part));
  }
}

PartId Core::in_whole(PartId part) const {
  if (part.index < parts_.size()) return parts_[part.index];
  return {whole_parts_ + part.index - static_cast<std::uint32_t>(parts_.size())};
}

PointId Core::in_whole(PointId point) const {
  if (!point.exists()) return point;
  if (point.index < points_.size()) return points_[point.index];
  return {whole_points_ + point.index - static_cast<std::uint32_t>(points_.size())};
}

Place Core::in_whole(const Place& place) const {
  Place there{{}, in_whole(place.first), in_whole(place.second)};
  for (const PartId part : place.parts) there.parts.push_back(in_whole(part));
  for (const PointId point : place.points) there.points.push_back(in_whole(point));
  return there;
}

}  // namespace ohmfold

// The lines of a schematic as they are stroked.
#include "drawing/lines.h"

#include <algorithm>
#include <cstdlib>

namespace ohmfold::drawing {

namespace {

/// Is `spot` on the straight line from `from` to `to`, but not at its ends?
bool lies_within(FineSpot spot, FineSpot from, FineSpot to) {
  const Milli cross = (to.x - from.x) * (spot.y - from.y) - (to.y - from.y) * (spot.x - from.x);
  // Ends of leads at slanted symbols are rounded: within two hundredths of a unit they count as on
  // the line.
  const Milli reach = std::max(std::abs(to.x - from.x), std::abs(to.y - from.y));
  if (std::abs(cross) > 20 * reach) return false;
  const Milli along = (spot.x - from.x) * (to.x - from.x) + (spot.y - from.y) * (to.y - from.y);
  const Milli back = (to.x - spot.x) * (to.x - from.x) + (to.y - spot.y) * (to.y - from.y);
  return along > 0 && back > 0;
}

bool is_parallel(const Segment& over, FineSpot from, FineSpot to) {
  const Milli x = over.to.x - over.from.x;
  const Milli y = over.to.y - over.from.y;
  const Milli cross = x * (to.y - from.y) - y * (to.x - from.x);
  const Milli dot = x * (to.x - from.x) + y * (to.y - from.y);
  return std::abs(cross) * 50 < std::abs(dot);
}

}  // namespace

std::vector<std::vector<FineSpot>> leads(const DrawnPart& part, int half) {
  std::vector<FineSpot> first;
  if (half == 0) {
    for (const Spot corner : part.path) first.push_back(fine(corner));
    return {first};
  }
  std::size_t seat = 0;
  while (seat + 2 < part.path.size()) {
    const FineSpot from = fine(part.path[seat]);
    const FineSpot to = fine(part.path[seat + 1]);
    if (lies_within(fine(part.middle), from, to)) break;
    ++seat;
  }
  const Turn turn = turn_to(part.direction);
  std::vector<FineSpot> second;
  for (std::size_t i = 0; i <= seat; ++i) first.push_back(fine(part.path[i]));
  first.push_back(placed({-half * kMilli, 0}, part.middle, turn));
  second.push_back(placed({half * kMilli, 0}, part.middle, turn));
  for (std::size_t i = seat + 1; i < part.path.size(); ++i) second.push_back(fine(part.path[i]));
  return {first, second};
}

Arcs::Arcs(const std::vector<Crossing>& crossings) {
  for (const Crossing& crossing : crossings) {
    if (crossing.over.from.y == crossing.over.to.y) {
      by_row_.push_back(crossing);
    } else if (crossing.over.from.x == crossing.over.to.x) {
      by_column_.push_back(crossing);
    } else {
      slanted_.push_back(crossing);
    }
  }
  std::sort(by_row_.begin(), by_row_.end(), [](const Crossing& a, const Crossing& b) {
    return Spot{a.at.y, a.at.x} < Spot{b.at.y, b.at.x};
  });
  std::sort(by_column_.begin(), by_column_.end(),
            [](const Crossing& a, const Crossing& b) { return a.at < b.at; });
}

std::vector<Spot> Arcs::crossings_on(FineSpot from, FineSpot to) const {
  const bool horizontal = from.y == to.y;
  const bool upright = from.x == to.x;
  const std::vector<Crossing>& among = horizontal ? by_row_ : upright ? by_column_ : slanted_;
  auto begin = among.begin();
  auto end = among.end();
  if (horizontal) {
    begin = std::partition_point(begin, end, [&](const Crossing& c) {
      return c.at.y * kMilli < from.y ||
             (c.at.y * kMilli == from.y && c.at.x * kMilli <= std::min(from.x, to.x));
    });
    end = std::partition_point(begin, end, [&](const Crossing& c) {
      return c.at.y * kMilli == from.y && c.at.x * kMilli < std::max(from.x, to.x);
    });
  } else if (upright) {
    begin = std::partition_point(begin, end, [&](const Crossing& c) {
      return c.at.x * kMilli < from.x ||
             (c.at.x * kMilli == from.x && c.at.y * kMilli <= std::min(from.y, to.y));
    });
    end = std::partition_point(begin, end, [&](const Crossing& c) {
      return c.at.x * kMilli == from.x && c.at.y * kMilli < std::max(from.y, to.y);
    });
  }
  std::vector<Spot> found;
  for (auto crossing = begin; crossing != end; ++crossing) {
    if (is_parallel(crossing->over, from, to) && lies_within(fine(crossing->at), from, to)) {
      found.push_back(crossing->at);
    }
  }
  const auto along = [&](Spot spot) {
    return (spot.x * kMilli - from.x) * (to.x - from.x) +
           (spot.y * kMilli - from.y) * (to.y - from.y);
  };
  std::sort(found.begin(), found.end(), [&](Spot a, Spot b) { return along(a) < along(b); });
  return found;
}

Line Arcs::through(const std::vector<FineSpot>& spots) const {
  Line line{spots.front(), {}};
  for (std::size_t i = 0; i + 1 < spots.size(); ++i) {
    const FineSpot from = spots[i];
    const FineSpot to = spots[i + 1];
    const Spot direction{static_cast<int>((to.x - from.x) / 10),
                         static_cast<int>((to.y - from.y) / 10)};
    // Arcs bulge upwards, of upright lines to the right, whichever way a line is gone along.
    const bool clockwise = direction.x > 0 || (direction.x == 0 && direction.y > 0);
    const Turn turn = turn_to(direction);
    for (const Spot at : crossings_on(from, to)) {
      line.pieces.push_back({placed({-kArc * kMilli, 0}, at, turn)});
      line.pieces.push_back({placed({kArc * kMilli, 0}, at, turn), true, clockwise});
    }
    line.pieces.push_back({to});
  }
  return line;
}

}  // namespace ohmfold::drawing

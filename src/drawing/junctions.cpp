// Where lines of a schematic meet, end, or pass one another.
#include "drawing/junctions.h"

#include <algorithm>
#include <cstdlib>
#include <optional>
#include <tuple>

#include "drawing/whole.h"
#include "drawing/wires.h"

namespace ohmfold::drawing {

namespace {

/// Where two lines cross in the middle of both.
std::optional<Spot> crossing_of(const Segment& a, const Segment& b) {
  const Spot along = a.to - a.from;
  const Spot other = b.to - b.from;
  const std::int64_t turn = cross(along, other);
  const std::int64_t from_a = cross(b.from - a.from, other);  // over turn: how far along a
  const std::int64_t from_b = cross(b.from - a.from, along);
  const auto is_within = [&](std::int64_t part) {
    return turn > 0 ? part > 0 && part < turn : part < 0 && part > turn;
  };
  if (turn == 0 || !is_within(from_a) || !is_within(from_b)) return std::nullopt;
  return a.from + Spot{static_cast<int>(rounded_quotient(along.x * from_a, turn)),
                       static_cast<int>(rounded_quotient(along.y * from_a, turn))};
}

int steepness(const Segment& one) {
  return std::abs(one.to.y - one.from.y) - std::abs(one.to.x - one.from.x);
}

class Passing {
 public:
  explicit Passing(const Schematic& schematic) {
    for (const DrawnPart& part : schematic.parts) {
      for (std::size_t i = 0; i + 1 < part.path.size(); ++i) {
        add({part.path[i], part.path[i + 1]});
      }
    }
    for (const DrawnPoint& point : schematic.points) {
      for (const Segment& wire : point.wires) add(wire);
    }
    std::sort(uprights_.begin(), uprights_.end(),
              [](const Segment& a, const Segment& b) { return a.from.x < b.from.x; });
  }

  std::vector<Crossing> all() {
    for (const Segment& lying : lying_) {
      const auto [left, right] = std::minmax(lying.from.x, lying.to.x);
      auto at = std::lower_bound(uprights_.begin(), uprights_.end(), left,
                                 [](const Segment& one, int x) { return one.from.x < x; });
      for (; at != uprights_.end() && at->from.x <= right; ++at) compare(*at, lying);
    }
    for (std::size_t i = 0; i < slanted_.size(); ++i) {
      for (const Segment& one : uprights_) compare(one, slanted_[i]);
      for (const Segment& one : lying_) compare(slanted_[i], one);
      for (std::size_t j = 0; j < i; ++j) compare(slanted_[i], slanted_[j]);
    }
    const auto place = [](const Crossing& one) {
      return std::tie(one.at, one.over.from, one.over.to);
    };
    std::sort(found_.begin(), found_.end(),
              [&](const Crossing& a, const Crossing& b) { return place(a) < place(b); });
    return std::move(found_);
  }

 private:
  void add(const Segment& one) {
    if (one.from.x == one.to.x) {
      uprights_.push_back(one);
    } else if (one.from.y == one.to.y) {
      lying_.push_back(one);
    } else {
      slanted_.push_back(one);
    }
  }

  void compare(const Segment& one, const Segment& other) {
    const std::optional<Spot> at = crossing_of(one, other);
    if (at) found_.push_back({*at, steepness(one) >= steepness(other) ? one : other});
  }

  std::vector<Segment> uprights_, lying_, slanted_;
  std::vector<Crossing> found_;
};

}  // namespace

void mark_junctions(DrawnPoint& point, const std::vector<Spot>& ends) {
  const WireGraph graph(point.wires, ends);
  for (std::uint32_t i = 0; i < graph.spots().size(); ++i) {
    const std::size_t lines = graph.lines_at(i);
    if (lines > 2) point.dots.push_back(graph.spots()[i]);
    if (lines == 1) point.rings.push_back(graph.spots()[i]);
  }
}

std::vector<Crossing> crossings_of(const Schematic& schematic) {
  return Passing(schematic).all();
}

}  // namespace ohmfold::drawing

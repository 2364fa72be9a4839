// What is drawn already, in buckets of a grid.
#include "drawing/occupied.h"

#include <algorithm>

namespace ohmfold::drawing {

namespace {

int bucket(int at, int cell) {
  return at >= 0 ? at / cell : -((cell - 1 - at) / cell);
}

std::uint64_t key(int column, int row) {
  return (std::uint64_t{static_cast<std::uint32_t>(column)} << 32U) |
         static_cast<std::uint32_t>(row);
}

}  // namespace

bool meet(const Box& one, const Box& other) {
  return one.min.x <= other.max.x && other.min.x <= one.max.x && one.min.y <= other.max.y &&
         other.min.y <= one.max.y;
}

bool meet(const Box& box, const Segment& segment) {
  const auto [left, right] = std::minmax(segment.from.x, segment.to.x);
  const auto [top, bottom] = std::minmax(segment.from.y, segment.to.y);
  if (!meet(box, Box{{left, top}, {right, bottom}})) return false;
  // The box lies wholly at one side of the line where all of its corners do.
  const Spot along = segment.to - segment.from;
  bool at_left = false;
  bool at_right = false;
  for (const int x : {box.min.x, box.max.x}) {
    for (const int y : {box.min.y, box.max.y}) {
      const Spot corner = Spot{x, y} - segment.from;
      const std::int64_t side = cross(along, corner);
      at_left = at_left || side <= 0;
      at_right = at_right || side >= 0;
    }
  }
  return at_left && at_right;
}

std::int64_t square_of_distance(const Box& one, const Box& other) {
  const auto gap = [](int min, int max, int other_min, int other_max) {
    return std::int64_t{std::max({0, other_min - max, min - other_max})};
  };
  const std::int64_t x = gap(one.min.x, one.max.x, other.min.x, other.max.x);
  const std::int64_t y = gap(one.min.y, one.max.y, other.min.y, other.max.y);
  return x * x + y * y;
}

template <class Visit>
void Occupied::for_each_bucket(const Box& box, Visit visit) const {
  for (int x = bucket(box.min.x, cell_); x <= bucket(box.max.x, cell_); ++x) {
    for (int y = bucket(box.min.y, cell_); y <= bucket(box.max.y, cell_); ++y) visit(key(x, y));
  }
}

void Occupied::add(const Segment& segment, std::uint32_t owner) {
  const auto [left, right] = std::minmax(segment.from.x, segment.to.x);
  const auto [top, bottom] = std::minmax(segment.from.y, segment.to.y);
  add({{{left, top}, {right, bottom}}, segment, left != right && top != bottom, owner});
}

void Occupied::add(const Thing& thing) {
  const auto index = static_cast<std::uint32_t>(things_.size());
  things_.push_back(thing);
  for_each_bucket(thing.box, [&](std::uint64_t at) { buckets_[at].push_back(index); });
}

template <class Disturbs>
bool Occupied::none_near(const Box& box, std::uint32_t except, Disturbs disturbs) const {
  bool none = true;
  for_each_bucket(box, [&](std::uint64_t at) {
    const auto found = buckets_.find(at);
    if (!none || found == buckets_.end()) return;
    none = std::none_of(found->second.begin(), found->second.end(), [&](std::uint32_t index) {
      const Thing& thing = things_[index];
      return (except == kNobody || thing.owner != except) && disturbs(thing);
    });
  });
  return none;
}

bool Occupied::is_free(const Box& box, std::uint32_t except) const {
  return none_near(box, except, [&](const Thing& thing) {
    return thing.slanted ? meet(box, thing.line) : meet(box, thing.box);
  });
}

bool Occupied::is_clear(const Box& box, int distance, std::uint32_t except) const {
  const Box wide = grown(box, distance);
  const std::int64_t square = std::int64_t{distance} * distance;
  return none_near(wide, except, [&](const Thing& thing) {
    return thing.slanted ? meet(wide, thing.line) : square_of_distance(box, thing.box) < square;
  });
}

}  // namespace ohmfold::drawing

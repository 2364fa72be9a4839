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
      const std::int64_t side = std::int64_t{along.x} * corner.y - std::int64_t{along.y} * corner.x;
      at_left = at_left || side <= 0;
      at_right = at_right || side >= 0;
    }
  }
  return at_left && at_right;
}

template <class Visit>
void Occupied::for_each_bucket(const Box& box, Visit visit) const {
  for (int x = bucket(box.min.x, cell_); x <= bucket(box.max.x, cell_); ++x) {
    for (int y = bucket(box.min.y, cell_); y <= bucket(box.max.y, cell_); ++y) visit(key(x, y));
  }
}

void Occupied::add(const Segment& segment) {
  const auto [left, right] = std::minmax(segment.from.x, segment.to.x);
  const auto [top, bottom] = std::minmax(segment.from.y, segment.to.y);
  add({{{left, top}, {right, bottom}}, segment, left != right && top != bottom});
}

void Occupied::add(const Thing& thing) {
  const auto index = static_cast<std::uint32_t>(things_.size());
  things_.push_back(thing);
  for_each_bucket(thing.box, [&](std::uint64_t at) { buckets_[at].push_back(index); });
}

bool Occupied::is_free(const Box& box) const {
  bool free = true;
  for_each_bucket(box, [&](std::uint64_t at) {
    const auto found = buckets_.find(at);
    if (!free || found == buckets_.end()) return;
    free = std::none_of(found->second.begin(), found->second.end(), [&](std::uint32_t index) {
      const Thing& thing = things_[index];
      return thing.slanted ? meet(box, thing.line) : meet(box, thing.box);
    });
  });
  return free;
}

}  // namespace ohmfold::drawing

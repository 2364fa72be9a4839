// The wires of one point as a graph of spots.
#include "drawing/wires.h"

#include <algorithm>
#include <utility>

namespace ohmfold::drawing {

namespace {

bool goes_straight_on(Spot before, Spot at, Spot after) {
  return cross(at - before, after - at) == 0 && dot(at - before, after - at) > 0;
}

Spot turned(Spot spot) {
  return {spot.y, spot.x};
}

}  // namespace

bool lies_on(Spot spot, const Segment& segment) {
  return cross(segment.to - segment.from, spot - segment.from) == 0 &&
         dot(segment.from - spot, segment.to - spot) <= 0;
}

Path without_straight_corners(const Path& path) {
  Path made;
  for (const Spot spot : path) {
    if (!made.empty() && made.back() == spot) continue;
    if (made.size() > 1 && goes_straight_on(made[made.size() - 2], made.back(), spot)) {
      made.pop_back();
    }
    made.push_back(spot);
  }
  return made;
}

WireGraph::WireGraph(const std::vector<Segment>& wires, const std::vector<Spot>& ends) {
  spots_ = ends;
  for (const Segment& wire : wires) {
    spots_.push_back(wire.from);
    spots_.push_back(wire.to);
  }
  std::sort(spots_.begin(), spots_.end());
  spots_.erase(std::unique(spots_.begin(), spots_.end()), spots_.end());
  for (const Spot spot : spots_) by_row_.push_back(turned(spot));
  std::sort(by_row_.begin(), by_row_.end());
  near_.resize(spots_.size());
  parts_.resize(spots_.size());
  for (const Spot end : ends) ++parts_[index_of(end)];
  for (const Segment& wire : wires) cut(wire);
  for (auto& others : near_) {
    std::sort(others.begin(), others.end());
    others.erase(std::unique(others.begin(), others.end()), others.end());
  }
}

std::uint32_t WireGraph::index_of(Spot spot) const {
  return static_cast<std::uint32_t>(std::lower_bound(spots_.begin(), spots_.end(), spot) -
                                    spots_.begin());
}

void WireGraph::cut(const Segment& wire) {
  const auto [low, high] = std::minmax(wire.from, wire.to);
  std::vector<Spot> on;
  if (low.y == high.y) {
    auto at = std::lower_bound(by_row_.begin(), by_row_.end(), turned(low));
    for (; at != by_row_.end() && *at <= turned(high); ++at) on.push_back(turned(*at));
  } else {
    auto at = std::lower_bound(spots_.begin(), spots_.end(), low);
    for (; at != spots_.end() && *at <= high; ++at) {
      if (lies_on(*at, wire)) on.push_back(*at);
    }
  }
  for (std::size_t i = 1; i < on.size(); ++i) {
    const std::uint32_t a = index_of(on[i - 1]);
    const std::uint32_t b = index_of(on[i]);
    near_[a].push_back(b);
    near_[b].push_back(a);
  }
}

std::optional<Path> WireGraph::path(Spot from, Spot to) const {
  constexpr std::uint32_t kUnseen = UINT32_MAX;
  std::vector<std::uint32_t> towards(spots_.size(), kUnseen);
  std::vector<std::uint32_t> queue{index_of(to)};
  towards[queue.front()] = queue.front();
  for (std::size_t i = 0; i < queue.size(); ++i) {
    for (const std::uint32_t next : near_[queue[i]]) {
      if (towards[next] != kUnseen) continue;
      towards[next] = queue[i];
      queue.push_back(next);
    }
  }
  std::uint32_t at = index_of(from);
  if (towards[at] == kUnseen) return std::nullopt;
  Path path{from};
  while (towards[at] != at) {
    at = towards[at];
    path.push_back(spots_[at]);
  }
  return without_straight_corners(path);
}

std::vector<Segment> WireGraph::pruned() const {
  std::vector<std::size_t> left(spots_.size());
  std::vector<std::uint32_t> loose;
  for (std::uint32_t i = 0; i < spots_.size(); ++i) {
    left[i] = lines_at(i);
    if (left[i] == 1 && parts_[i] == 0) loose.push_back(i);
  }
  std::vector<bool> gone(spots_.size(), false);
  while (!loose.empty()) {
    const std::uint32_t end = loose.back();
    loose.pop_back();
    gone[end] = true;
    for (const std::uint32_t next : near_[end]) {
      if (gone[next]) continue;
      --left[next];
      if (left[next] == 1 && parts_[next] == 0) loose.push_back(next);
    }
  }
  return joined(gone);
}

// From each spot where a straight run begins, along it to its end. It ends where wires meet: two
// that ran through one spot would only cross there.
std::vector<Segment> WireGraph::joined(const std::vector<bool>& gone) const {
  const auto is_meeting = [&](std::uint32_t at) {
    return std::count_if(near_[at].begin(), near_[at].end(),
                         [&](std::uint32_t next) { return !gone[next]; }) > 2;
  };
  const auto next_in_line = [&](std::uint32_t before, std::uint32_t at) {
    if (is_meeting(at)) return at;
    for (const std::uint32_t next : near_[at]) {
      if (!gone[next] && goes_straight_on(spots_[before], spots_[at], spots_[next])) return next;
    }
    return at;
  };
  std::vector<Segment> wires;
  for (std::uint32_t i = 0; i < spots_.size(); ++i) {
    if (gone[i]) continue;
    for (std::uint32_t next : near_[i]) {
      const bool begins = !gone[next] && i < next && next_in_line(next, i) == i;
      if (!begins) continue;
      std::uint32_t before = i;
      for (std::uint32_t on = next_in_line(before, next); on != next;
           on = next_in_line(before, next)) {
        before = next;
        next = on;
      }
      wires.push_back({spots_[i], spots_[next]});
    }
  }
  return wires;
}

}  // namespace ohmfold::drawing

// Rewriting the lines of a placement, step by step.
#include "drawing/redraw.h"

#include <algorithm>
#include <cstdlib>
#include <utility>

#include "drawing/wires.h"

namespace ohmfold::drawing {

namespace {

/// With more parts than this, a symbol takes the seat of one before it without looking for better.
constexpr std::size_t kMostCompared = 400;

int length(const Segment& one) {
  return std::abs(one.to.x - one.from.x) + std::abs(one.to.y - one.from.y);
}

Spot doubled_middle(const Segment& one) {
  return one.from + one.to;
}

Segment seat_segment(const PlacedPart& part) {
  return {part.path[part.seat], part.path[part.seat + 1]};
}

/// Does the segment come into the square round a spot? In half units; a slanted one counts as its
/// whole box.
bool comes_near(const Segment& one, Spot middle, int reach) {
  const auto [left, right] = std::minmax({2 * one.from.x, 2 * one.to.x});
  const auto [top, bottom] = std::minmax({2 * one.from.y, 2 * one.to.y});
  return left < middle.x + reach && right > middle.x - reach && top < middle.y + reach &&
         bottom > middle.y - reach;
}

/// Puts the ends of a stretch of the path in as corners; gives the index of the first.
std::size_t put_in(Path& path, Segment stretch) {
  for (std::size_t i = 0; i + 1 < path.size(); ++i) {
    const Segment leg{path[i], path[i + 1]};
    if (!lies_on(stretch.from, leg) || !lies_on(stretch.to, leg)) continue;
    if (length({leg.from, stretch.to}) < length({leg.from, stretch.from})) {
      std::swap(stretch.from, stretch.to);
    }
    Path made(path.begin(), path.begin() + static_cast<std::ptrdiff_t>(i) + 1);
    if (made.back() != stretch.from) made.push_back(stretch.from);
    const std::size_t seat = made.size() - 1;
    made.push_back(stretch.to);
    if (stretch.to == leg.to) ++i;
    made.insert(made.end(), path.begin() + static_cast<std::ptrdiff_t>(i) + 1, path.end());
    path = std::move(made);
    return seat;
  }
  return 0;
}

}  // namespace

Spot doubled_seat(const PlacedPart& part) {
  return doubled_middle(seat_segment(part));
}

void Redrawing::lay(const Network& network, Placement placement) {
  lines_.assign(network.part_count(), {});
  points_.assign(network.point_count(), {});
  halves_.assign(network.point_count(), {});
  merged_into_.clear();
  for (std::uint32_t i = 0; i < network.point_count(); ++i) {
    merged_into_.push_back(network.representative(PointId{i}));
  }
  touched_.clear();
  drawn_ = 0;
  terminals_ = std::move(placement.terminals);
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    lines_[i].from = network.from(PartId{i});
    lines_[i].to = network.to(PartId{i});
  }
  for (PlacedPoint& placed : placement.points) points_[placed.point.index] = std::move(placed);
  for (PlacedPart& placed : placement.parts) {
    const PartId part = placed.part;
    put(part, network.from(part), network.to(part), std::move(placed.path), placed.seat);
  }
}

const PlacedPart* Redrawing::line(PartId part) const {
  if (part.index >= lines_.size() || lines_[part.index].placed.path.empty()) return nullptr;
  return &lines_[part.index].placed;
}

std::pair<PointId, PointId> Redrawing::points_of(PartId part) const {
  return {representative(lines_[part.index].from), representative(lines_[part.index].to)};
}

PointId Redrawing::representative(PointId point) const {
  while (merged_into_[point.index] != point) point = merged_into_[point.index];
  return point;
}

PlacedPoint& Redrawing::point(PointId id) {
  return points_[representative(id).index];
}

void Redrawing::put(PartId part, PointId from, PointId to, Path path, std::size_t seat) {
  if (lines_.size() <= part.index) lines_.resize(part.index + 1);
  lines_[part.index] = {{part, std::move(path), seat}, from, to};
  halves_[representative(from).index].push_back(2 * part.index);
  halves_[representative(to).index].push_back(2 * part.index + 1);
  ++drawn_;
}

void Redrawing::take(PartId part) {
  if (!is_drawn(part)) return;
  touch(lines_[part.index].from);
  touch(lines_[part.index].to);
  lines_[part.index].placed.path.clear();
  --drawn_;
}

void Redrawing::touch(PointId point) {
  touched_.push_back(point);
}

void Redrawing::merge(PointId one, PointId two) {
  one = representative(one);
  two = representative(two);
  if (one == two) return;
  if (two < one) std::swap(one, two);
  PlacedPoint& kept = points_[one.index];
  PlacedPoint& gone = points_[two.index];
  if (!kept.point.exists() && gone.point.exists()) kept = {one, {}, gone.at};
  kept.wires.insert(kept.wires.end(), gone.wires.begin(), gone.wires.end());
  gone = {};
  auto& halves = halves_[one.index];
  halves.insert(halves.end(), halves_[two.index].begin(), halves_[two.index].end());
  halves_[two.index].clear();
  merged_into_[two.index] = one;
  touch(one);
}

// A second wire beside one that joins the points already would close a ring: it goes.
void Redrawing::becomes_wire(PartId part) {
  if (!is_drawn(part)) return;
  const Path path = lines_[part.index].placed.path;
  const PointId from = lines_[part.index].from;
  const PointId to = lines_[part.index].to;
  take(part);
  if (representative(from) == representative(to)) return;
  merge(from, to);
  auto& wires = point(from).wires;
  for (std::size_t i = 0; i + 1 < path.size(); ++i) wires.push_back({path[i], path[i + 1]});
}

bool Redrawing::apply(const Step& step) {
  switch (step.rule) {
    case RuleName::gap:
    case RuleName::shorted:
    case RuleName::dead_end:
      for (const PartId part : step.takes) take(part);
      return step.adds.empty() && step.merges.empty();
    case RuleName::ideal_wire:
      for (const PartId part : step.takes) becomes_wire(part);
      for (std::size_t i = 0; i + 1 < step.merges.size(); ++i) {
        const bool apart = step.merging == Merging::by_twos && i % 2 == 1;
        if (!apart) merge(step.merges[i], step.merges[i + 1]);
      }
      return true;
    case RuleName::series:
      return step.adds.size() <= 1 && join_chain(step);
    case RuleName::parallel:
      if (step.adds.size() > 1) return false;
      keep_one(step);
      return is_drawn(step.makes);
    case RuleName::equal_potentials:
    case RuleName::delta_star:
    case RuleName::star_delta:
    case RuleName::node_elimination:
    case RuleName::batteries:
      return false;
  }
  return false;
}

bool Redrawing::join_chain(const Step& step) {
  const PointId first = representative(step.first);
  const PointId second = representative(step.second);
  PointId at = first;
  Path path;
  std::vector<Segment> seats;
  for (const PartId part : step.takes) {
    if (!is_drawn(part)) return false;
    const DrawnLine& own = lines_[part.index];
    const bool along = representative(own.from) == at;
    if (!along && representative(own.to) != at) return false;
    Path next = own.placed.path;
    if (!along) std::reverse(next.begin(), next.end());
    if (!path.empty()) {
      const WireGraph wires(points_[at.index].wires, {path.back(), next.front()});
      const std::optional<Path> between = wires.path(path.back(), next.front());
      if (!between) return false;
      path.insert(path.end(), between->begin(), between->end());
    }
    path.insert(path.end(), next.begin(), next.end());
    seats.push_back(seat_segment(own.placed));
    at = representative(along ? own.to : own.from);
    if (part != step.takes.back()) {
      if (at == first || at == second) return false;
    }
  }
  if (at != second) return false;
  for (const PartId part : step.takes) {
    for (const PointId end : {lines_[part.index].from, lines_[part.index].to}) {
      const PointId inner = representative(end);
      if (inner != first && inner != second) points_[inner.index] = {};
    }
    take(part);
  }
  path = without_straight_corners(path);
  const std::size_t seat = seat_of(path, seats);
  put(step.makes, first, second, std::move(path), seat);
  return true;
}

// In the middle of the longest upright stretch, or else of the longest one that lies; where that is
// not free, where one of the symbols before stood: there it was.
std::size_t Redrawing::seat_of(Path& path, const std::vector<Segment>& seats) const {
  const auto is_upright = [](const Segment& one) { return one.from.x == one.to.x; };
  std::vector<std::size_t> order;
  for (std::size_t i = 0; i + 1 < path.size(); ++i) {
    if (length({path[i], path[i + 1]}) >= kCell) order.push_back(i);
  }
  const auto leg = [&](std::size_t i) { return Segment{path[i], path[i + 1]}; };
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    const bool upright = is_upright(leg(a));
    if (upright != is_upright(leg(b))) return upright;
    return length(leg(a)) > length(leg(b));
  });
  const auto is_free = [&](std::size_t i) {
    for (std::size_t other = 0; other + 1 < path.size(); ++other) {
      if (other != i && comes_near(leg(other), doubled_middle(leg(i)), kCell)) return false;
    }
    return is_clear(leg(i));
  };
  if (drawn_ <= kMostCompared) {
    const auto found = std::find_if(order.begin(), order.end(), is_free);
    if (found != order.end()) return *found;
  }
  const auto better = [&](const Segment& a, const Segment& b) {
    return is_upright(a) && !is_upright(b);
  };
  return put_in(path, *std::min_element(seats.begin(), seats.end(), better));
}

bool Redrawing::is_clear(const Segment& seat) const {
  const Spot middle = doubled_middle(seat);
  for (const DrawnLine& line : lines_) {
    const Path& path = line.placed.path;
    if (path.empty()) continue;
    for (std::size_t i = 0; i + 1 < path.size(); ++i) {
      if (comes_near({path[i], path[i + 1]}, middle, kCell)) return false;
    }
    const Spot other = doubled_seat(line.placed) - middle;
    if (std::max(std::abs(other.x), std::abs(other.y)) < 2 * kCell) return false;
  }
  for (const PlacedPoint& placed : points_) {
    for (const Segment& wire : placed.wires) {
      if (comes_near(wire, middle, kCell)) return false;
    }
  }
  return true;
}

void Redrawing::keep_one(const Step& step) {
  const PointId first = representative(step.first);
  const DrawnLine* kept = nullptr;
  for (const PartId part : step.takes) {
    if (!is_drawn(part)) continue;
    const DrawnLine& one = lines_[part.index];
    if (kept == nullptr || one.placed.path.size() < kept->placed.path.size()) kept = &one;
  }
  if (kept == nullptr) return;
  PlacedPart placed = kept->placed;
  if (representative(kept->from) != first) {
    std::reverse(placed.path.begin(), placed.path.end());
    placed.seat = placed.path.size() - 2 - placed.seat;
  }
  for (const PartId part : step.takes) take(part);
  put(step.makes, first, representative(step.second), std::move(placed.path), placed.seat);
}

std::vector<Spot> Redrawing::ends_at(PointId point) {
  auto& halves = halves_[point.index];
  const auto is_gone = [&](std::uint32_t half) { return !is_drawn(PartId{half / 2}); };
  halves.erase(std::remove_if(halves.begin(), halves.end(), is_gone), halves.end());
  std::vector<Spot> ends;
  for (const std::uint32_t half : halves) {
    const Path& path = lines_[half / 2].placed.path;
    ends.push_back(half % 2 == 0 ? path.front() : path.back());
  }
  for (const Terminal& terminal : terminals_) {
    if (representative(terminal.point) == point) ends.push_back(terminal.at);
  }
  return ends;
}

void Redrawing::tidy(PointId point) {
  PlacedPoint& placed = points_[point.index];
  if (!placed.point.exists()) return;
  const std::vector<Spot> ends = ends_at(point);
  if (ends.empty()) {
    placed = {};
    return;
  }
  placed.wires = WireGraph(placed.wires, ends).pruned();
  const auto holds = [&](const Segment& wire) { return lies_on(placed.at, wire); };
  if (placed.at == ends.front() || std::any_of(placed.wires.begin(), placed.wires.end(), holds)) {
    return;
  }
  // Where its name stood nothing is left: the nearest spot takes it.
  const auto distance = [&](Spot spot) { return length({spot, placed.at}); };
  std::vector<Spot> spots = ends;
  for (const Segment& wire : placed.wires) {
    spots.push_back(wire.from);
    spots.push_back(wire.to);
  }
  placed.at = *std::min_element(spots.begin(), spots.end(), [&](Spot a, Spot b) {
    return std::make_pair(distance(a), a) < std::make_pair(distance(b), b);
  });
}

void Redrawing::tidy() {
  for (PointId& point : touched_) point = representative(point);
  std::sort(touched_.begin(), touched_.end());
  touched_.erase(std::unique(touched_.begin(), touched_.end()), touched_.end());
  for (const PointId point : touched_) tidy(point);
  touched_.clear();
}

Placement Redrawing::placement() const {
  Placement made;
  for (const DrawnLine& line : lines_) {
    if (!line.placed.path.empty()) made.parts.push_back(line.placed);
  }
  for (const PlacedPoint& placed : points_) {
    if (placed.point.exists()) made.points.push_back(placed);
  }
  made.terminals = terminals_;
  for (Terminal& terminal : made.terminals) terminal.point = representative(terminal.point);
  return made;
}

}  // namespace ohmfold::drawing

// Lays out a network whose file says where points lie: spots first, then lines through a maze.
#include "drawing/hints.h"

#include <algorithm>
#include <cstdlib>
#include <numeric>
#include <set>
#include <tuple>

#include "drawing/hint_spots.h"
#include "drawing/maze.h"

namespace ohmfold::drawing {
namespace {

constexpr int kMargin = 12;                 // round all points, in steps of the lattice
constexpr std::size_t kEffort = 4'000'000;  // places that all searches may look at
constexpr std::size_t kMostParts = 400;     // nobody places more by hand
constexpr std::size_t kMostAttempts = 12;

/// What is to be drawn: parts between points, both by number.
struct Task {
  std::vector<PartId> parts;
  std::vector<PointId> points;
  Joined joined;  ///< by part
  Joined ports;
  std::vector<Spot> spots;
};

Task task_of(const Network& network) {
  Task task;
  std::vector<PartId> ports;
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    const PartId part{i};
    if (!network.is_alive(part) || network.kind(part) == ElementKind::taken_out) continue;
    (network.kind(part) == ElementKind::port ? ports : task.parts).push_back(part);
    task.points.push_back(network.from(part));
    task.points.push_back(network.to(part));
  }
  std::sort(task.points.begin(), task.points.end());
  task.points.erase(std::unique(task.points.begin(), task.points.end()), task.points.end());
  const auto number = [&](PointId point) {
    const auto at = std::lower_bound(task.points.begin(), task.points.end(), point);
    return static_cast<std::uint32_t>(at - task.points.begin());
  };
  const auto ends = [&](PartId part) {
    return std::pair(number(network.from(part)), number(network.to(part)));
  };
  for (const PartId part : task.parts) task.joined.push_back(ends(part));
  for (const PartId port : ports) task.ports.push_back(ends(port));
  return task;
}

/// How many of the points have a hint.
std::size_t hinted_points(const std::vector<PointId>& points, const Network& network,
                          const std::vector<PlaceHint>& hints) {
  std::set<PointId> hinted;
  for (const PlaceHint& hint : hints) {
    if (hint.point.index >= network.point_count()) continue;
    const PointId point = network.representative(hint.point);
    if (std::binary_search(points.begin(), points.end(), point)) hinted.insert(point);
  }
  return hinted.size();
}

/// Parts whose points are in one row or column first, near ones before far ones.
std::vector<std::size_t> order_of(const Task& task) {
  std::vector<std::size_t> order(task.parts.size());
  std::iota(order.begin(), order.end(), 0U);
  const auto key = [&](std::size_t part) {
    const auto [from, to] = task.joined[part];
    const Spot apart = task.spots[to] - task.spots[from];
    const bool is_aligned = from != to && (apart.x == 0 || apart.y == 0);
    return std::tuple(!is_aligned, std::abs(apart.x) + std::abs(apart.y));
  };
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return key(a) < key(b); });
  return order;
}

constexpr Spot scaled(Spot spot) {
  return {spot.x * kLattice, spot.y * kLattice};
}

/// All lines drawn, or the place in the order of the part that found no way.
struct Attempt {
  std::optional<Placement> placement;
  std::optional<std::size_t> stuck;
  std::size_t effort_left = 0;
};

Attempt attempt(const Task& task, const std::vector<std::size_t>& order, std::size_t effort) {
  Spot size;
  std::vector<Spot> spots;
  for (const Spot spot : task.spots) {
    spots.push_back(spot + Spot{kMargin, kMargin});
    size = {std::max(size.x, spot.x), std::max(size.y, spot.y)};
  }
  Maze maze(size + Spot{2 * kMargin + 1, 2 * kMargin + 1}, spots, effort);
  Placement placement;
  placement.parts.resize(task.parts.size());
  for (std::size_t i = 0; i < order.size(); ++i) {
    const auto [from, to] = task.joined[order[i]];
    const std::optional<Segment> line = maze.join(from, to);
    if (!line) return {{}, i, maze.effort_left()};
    placement.parts[order[i]] = {task.parts[order[i]], {scaled(line->from), scaled(line->to)}, 0};
  }
  for (const auto& [from, to] : task.ports) {
    for (const std::uint32_t point : {from, to}) {
      const std::optional<Spot> end = maze.lead_out(point);
      if (!end) return {{}, {}, maze.effort_left()};
      placement.terminals.push_back({task.points[point], scaled(*end)});
    }
  }
  const std::vector<std::vector<Segment>> wires = maze.wires();
  for (std::size_t i = 0; i < task.points.size(); ++i) {
    PlacedPoint point{task.points[i], {}, scaled(spots[i])};
    for (const Segment& wire : wires[i])
      point.wires.push_back({scaled(wire.from), scaled(wire.to)});
    placement.points.push_back(std::move(point));
  }
  return {std::move(placement), {}, maze.effort_left()};
}

}  // namespace

std::optional<Placement> lay_out_by_hints(const Network& network, const LayoutOptions& options,
                                          const Placement& automatic) {
  Task task = task_of(network);
  if (task.parts.empty() || task.parts.size() > kMostParts) return {};
  // One place alone relates to nothing.
  if (hinted_points(task.points, network, options.hints) == 1) return automatic;
  std::optional<std::vector<Spot>> spots =
      hinted_spots(task.points, task.joined, network, options.hints);
  if (!spots) return {};
  task.spots = std::move(*spots);
  std::vector<std::size_t> order = order_of(task);
  std::size_t effort = kEffort;
  for (std::size_t tries = 0; tries < kMostAttempts && effort > 0; ++tries) {
    Attempt result = attempt(task, order, effort);
    if (result.placement) return std::move(result.placement);
    if (!result.stuck) return {};
    // The part that found no way goes first next time.
    const auto stuck = order.begin() + static_cast<std::ptrdiff_t>(*result.stuck);
    std::rotate(order.begin(), stuck, stuck + 1);
    effort = result.effort_left;
  }
  return {};
}

}  // namespace ohmfold::drawing

// Breadth-first walks that find four corners around an edge.
#include "bridge/corners.h"

#include <algorithm>

namespace ohmfold {

CornerSearch::CornerSearch(const Network& graph)
    : graph_(graph),
      arrivals_(2 * graph.point_count()),
      before_(graph.point_count()),
      sides_(graph.point_count(), Side::neither),
      is_chosen_(graph.part_count(), false) {}

Corners CornerSearch::around(PartId edge) {
  Corners corners;
  corners.edge = edge;
  corners.first = some_path(edge);
  mark_path(corners);
  const std::vector<PartId> way = second_way(edge);
  const std::vector<PartId> first = corners.first;
  if (!way.empty()) part_ways(corners, way);
  unmark(first);
  unmark(way);
  if (!corners.second.empty()) find_link(corners);
  return corners;
}

void CornerSearch::begin_walk() {
  ++round_;
  open_.clear();
}

bool CornerSearch::reach(Place place, Place from, PartId by) {
  Arrival& arrival = arrivals_[place];
  if (arrival.round == round_) return false;
  arrival = {round_, from, by};
  open_.push_back(place);
  return true;
}

std::vector<PartId> CornerSearch::trail(PointId to) const {
  std::vector<PartId> edges;
  for (Place place = free_at(to); arrivals_[place].by.exists(); place = arrivals_[place].from) {
    edges.push_back(arrivals_[place].by);
  }
  std::reverse(edges.begin(), edges.end());
  return edges;
}

std::vector<PartId> CornerSearch::some_path(PartId edge) {
  begin_walk();
  reach(free_at(graph_.from(edge)));
  const Place goal = free_at(graph_.to(edge));
  for (std::size_t i = 0; arrivals_[goal].round != round_; ++i) {
    const Place place = open_.at(i);
    graph_.for_each_at(point_of(place), [&](PartId next) {
      if (next != edge) reach(free_at(graph_.across(next, point_of(place))), place, next);
    });
  }
  return trail(graph_.to(edge));
}

void CornerSearch::mark_path(const Corners& corners) {
  PointId at = graph_.from(corners.edge);
  for (const PartId edge : corners.first) {
    at = graph_.across(edge, at);
    is_chosen_[edge.index] = true;
    if (at != graph_.to(corners.edge)) before_[at.index] = edge;
  }
}

void CornerSearch::unmark(const std::vector<PartId>& edges) {
  for (const PartId edge : edges) {
    is_chosen_[edge.index] = false;
    before_[graph_.from(edge).index] = before_[graph_.to(edge).index] = PartId{};
  }
}

// One step of the second walk from a place; true where it came to the edge's second end.
bool CornerSearch::go_on(Place place, PartId edge) {
  const PointId start = graph_.from(edge);
  const PointId goal = graph_.to(edge);
  const PointId point = point_of(place);
  if (is_inner(point)) {
    const PartId back = before_[point.index];
    const PointId previous = graph_.across(back, point);
    if (previous != start) reach(free_at(previous), place, back);
  }
  if (place == held_at(point)) return false;
  bool arrived = false;
  graph_.for_each_at(point, [&](PartId next) {
    const PointId beyond = graph_.across(next, point);
    if (next == edge || is_chosen_[next.index] || beyond == start) return;
    reach(is_inner(beyond) ? held_at(beyond) : free_at(beyond), place, next);
    arrived = arrived || beyond == goal;
  });
  return arrived;
}

// The edges of a walk to the second end that shares no point with the first path, but for goes
// back along it.
std::vector<PartId> CornerSearch::second_way(PartId edge) {
  begin_walk();
  reach(free_at(graph_.from(edge)));
  // NOLINTNEXTLINE(modernize-loop-convert): the list grows on the way
  for (std::size_t i = 0; i < open_.size(); ++i) {
    if (go_on(open_[i], edge)) return trail(graph_.to(edge));
  }
  return {};
}

// What the first path and the second way both run along belongs to neither of the two paths.
void CornerSearch::part_ways(Corners& corners, const std::vector<PartId>& way) {
  for (const PartId edge : way) is_chosen_[edge.index] = !is_chosen_[edge.index];
  std::vector<PartId> begins;
  graph_.for_each_at(graph_.from(corners.edge), [&](PartId edge) {
    if (is_chosen_[edge.index]) begins.push_back(edge);
  });
  std::sort(begins.begin(), begins.end());
  corners.first = follow_chosen(corners.edge, begins.front());
  corners.second = follow_chosen(corners.edge, begins.back());
}

std::vector<PartId> CornerSearch::follow_chosen(PartId edge, PartId first) const {
  std::vector<PartId> path{first};
  PointId at = graph_.across(first, graph_.from(edge));
  while (at != graph_.to(edge)) {
    const PartId last = path.back();
    graph_.for_each_at(at, [&](PartId next) {
      if (is_chosen_[next.index] && next != last) path.push_back(next);
    });
    at = graph_.across(path.back(), at);
  }
  return path;
}

void CornerSearch::set_sides(const Corners& corners, Side first, Side second) {
  const auto set = [&](const std::vector<PartId>& path, Side side) {
    PointId at = graph_.from(corners.edge);
    for (std::size_t i = 0; i + 1 < path.size(); ++i) {
      at = graph_.across(path[i], at);
      sides_[at.index] = side;
      if (side == Side::first) reach(free_at(at));
    }
  };
  set(corners.first, first);
  set(corners.second, second);
}

void CornerSearch::find_link(Corners& corners) {
  begin_walk();
  set_sides(corners, Side::first, Side::second);
  for (std::size_t i = 0; i < open_.size() && corners.link.empty(); ++i) {
    const Place place = open_[i];
    graph_.for_each_at(point_of(place), [&](PartId next) {
      const PointId beyond = graph_.across(next, point_of(place));
      const bool is_end = beyond == graph_.from(corners.edge) || beyond == graph_.to(corners.edge);
      if (is_end || !corners.link.empty() || !reach(free_at(beyond), place, next)) return;
      if (sides_[beyond.index] != Side::second) return;
      corners.link = trail(beyond);
      corners.on_second = beyond;
    });
  }
  set_sides(corners, Side::neither, Side::neither);
  PointId at = corners.on_second;
  for (std::size_t i = corners.link.size(); i > 0; --i) {
    at = graph_.across(corners.link[i - 1], at);
  }
  corners.on_first = at;
}

}  // namespace ohmfold

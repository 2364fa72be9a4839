// Parts that lie on no closed path through a source: no current can come back from there.
#include <algorithm>
#include <unordered_map>

#include "circuit/blocks.h"
#include "rules/rules.h"
#include "rules/visited.h"

namespace ohmfold {
namespace {

std::vector<PartId> living(const Network& network) {
  std::vector<PartId> parts;
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    if (network.is_alive(PartId{i})) parts.push_back(PartId{i});
  }
  return parts;
}

// The points of a place at which other living parts are joined too, each once, in file order.
std::vector<PointId> boundary(const Network& network, const Place& place) {
  std::unordered_map<std::uint32_t, std::size_t> own;  // ends of the place's parts at each point
  for (const PartId part : place.parts) {
    ++own[network.from(part).index];
    ++own[network.to(part).index];
  }
  std::vector<PointId> points;
  for (const auto& [point, ends] : own) {
    if (network.degree(PointId{point}) > ends) points.push_back(PointId{point});
  }
  std::sort(points.begin(), points.end());
  return points;
}

// `allowed`, unless one of the place's parts lies on a closed path through a source within
// `around`.
Verdict unless_fed(const Network& network, const Place& place, const std::vector<PartId>& around,
                   Verdict allowed) {
  Visited in_place(place.parts.size());
  for (const PartId part : place.parts) in_place.insert(part.index);
  const std::vector<bool> fed = fed_by_source(network, around);
  for (std::size_t i = 0; i < around.size(); ++i) {
    if (fed[i] && !in_place.insert(around[i].index)) return {false, {LiesOnALoop{around[i]}}};
  }
  return allowed;
}

Verdict judge(const Network& network, const Place& place) {
  if (place.parts.empty()) return {false, {TooFewParts{}}};
  const std::vector<PointId> points = boundary(network, place);
  // What hangs from one point, or from none, is judged by itself: whatever the rest is, no closed
  // path leaves the piece and comes back without passing that point twice.
  if (points.empty()) return unless_fed(network, place, place.parts, {true, {JoinedToNothing{}}});
  if (points.size() == 1) {
    return unless_fed(network, place, place.parts, {true, {HangsFrom{points.front()}}});
  }
  Verdict links{true, {}};
  for (const PartId part : place.parts) links.facts.emplace_back(IsOnlyLink{part});
  return unless_fed(network, place, living(network), std::move(links));
}

// Puts the parts that carry nothing into places: those that hang together without passing a
// point where a fed part is joined.
class Grouping {
 public:
  Grouping(const Network& network, const std::vector<PartId>& parts)
      : network_(network), is_fed_point_(network.point_count()), is_dead_(network.part_count()) {
    const std::vector<bool> fed = fed_by_source(network, parts);
    bool any_source_fed = false;
    for (std::size_t i = 0; i < parts.size(); ++i) {
      any_source_fed = any_source_fed || (fed[i] && is_source(network.kind(parts[i])));
    }
    for (std::size_t i = 0; i < parts.size(); ++i) {
      // Where no source feeds anything, the sources stay: the rest is seen from them.
      const bool stays = !any_source_fed && is_source(network.kind(parts[i]));
      const bool is_port = network.kind(parts[i]) == ElementKind::port;
      if (fed[i] || stays || is_port) {
        is_fed_point_[network.from(parts[i]).index] = true;
        is_fed_point_[network.to(parts[i]).index] = true;
      } else {
        is_dead_[parts[i].index] = true;
      }
    }
  }

  [[nodiscard]] bool is_dead(PartId part) const { return is_dead_[part.index]; }

  // Takes the piece around `start` out of the dead parts.
  Place take(PartId start) {
    Place place;
    std::vector<PartId> open{start};
    is_dead_[start.index] = false;
    Visited reached(8);
    while (!open.empty()) {
      const PartId part = open.back();
      open.pop_back();
      place.parts.push_back(part);
      for (const PointId point : {network_.from(part), network_.to(part)}) {
        if (is_fed_point_[point.index] || !reached.insert(point.index)) continue;
        network_.for_each_at(point, [&](PartId next) {
          if (!is_dead_[next.index]) return;
          is_dead_[next.index] = false;
          open.push_back(next);
        });
      }
    }
    std::sort(place.parts.begin(), place.parts.end());
    return place;
  }

 private:
  const Network& network_;
  std::vector<bool> is_fed_point_;  // by point
  std::vector<bool> is_dead_;       // by part; parts that carry nothing and are in no place yet
};

std::vector<Place> find(const Network& network, const Frontier& frontier) {
  const std::vector<PartId> parts = living(network);
  Grouping grouping(network, parts);
  std::vector<Place> places;
  Place links;  // all together, so that the whole network is looked at once for all of them
  for (const PartId part : frontier.parts) {
    if (!grouping.is_dead(part)) continue;
    Place place = grouping.take(part);
    const std::vector<PointId> points = boundary(network, place);
    if (points.size() > 1) {
      links.parts.insert(links.parts.end(), place.parts.begin(), place.parts.end());
      continue;
    }
    if (!points.empty()) place.first = place.second = points.front();
    if (judge(network, place).allowed) places.push_back(std::move(place));
  }
  std::sort(links.parts.begin(), links.parts.end());
  if (!links.parts.empty() && judge(network, links).allowed) places.push_back(std::move(links));
  return places;
}

Edit apply(const Network& /*network*/, Place place) {
  Edit edit;
  edit.removes = std::move(place.parts);
  edit.back = {Law::zero_current, Law::ohm_voltage};
  return edit;
}

}  // namespace

Rule dead_end_rule() {
  return {RuleName::dead_end, Tier::clean_up, find, judge, apply};
}

}  // namespace ohmfold

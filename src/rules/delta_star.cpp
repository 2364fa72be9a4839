// Delta to star: A. E. Kennelly, Electrical World 34 (1899) 413 (from memory).
#include "rules/delta_star.h"

#include <algorithm>
#include <array>

#include "rules/rules.h"
#include "rules/star.h"

namespace ohmfold {
namespace {

constexpr std::size_t kMostFound = 10'000;

bool is_link(const Network& network, PartId part) {
  return network.kind(part) == ElementKind::resistor && network.from(part) != network.to(part);
}

bool ends_at(const Network& network, PartId part, PointId point) {
  return network.from(part) == point || network.to(part) == point;
}

std::array<PointId, 3> corners_of(const Network& network, const Place& place) {
  const PointId a = network.from(place.parts[0]);
  const PointId b = network.to(place.parts[0]);
  const PartId second = place.parts[1];
  const PointId c = network.across(second, ends_at(network, second, a) ? a : b);
  std::array corners{a, b, c};
  std::sort(corners.begin(), corners.end());
  return corners;
}

Verdict judge(const Network& network, const Place& place) {
  if (place.parts.size() != 3) return {false, {WrongNumber{3, false}}};
  for (const PartId part : place.parts) {
    if (network.kind(part) != ElementKind::resistor) return {false, {NotAResistor{part}}};
    if (!is_link(network, part)) return {false, {BothEndsOn{part, network.from(part)}}};
  }
  const PartId first = place.parts[0];
  const PartId second = place.parts[1];
  const PartId third = place.parts[2];
  const bool at_from = ends_at(network, second, network.from(first));
  const bool at_to = ends_at(network, second, network.to(first));
  if (at_from == at_to) return {false, {FormNoDelta{second}}};
  const PointId shared = at_from ? network.from(first) : network.to(first);
  const PointId own = network.across(first, shared);
  const PointId other = network.across(second, shared);
  if (!ends_at(network, third, own) || !ends_at(network, third, other)) {
    return {false, {FormNoDelta{third}}};
  }
  const auto corners = corners_of(network, place);
  return {true, {FormDelta{corners[0], corners[1], corners[2]}}};
}

std::vector<Place> find(const Network& network, const Frontier& frontier) {
  return without_shared_parts(deltas_with(network, frontier.parts, kMostFound));
}

Edit apply(const Network& network, Place place) {
  const PointId middle{static_cast<std::uint32_t>(network.point_count())};
  Number sum(0);
  for (const PartId part : place.parts) sum += network.resistance(part).lowest_terms();
  Edit edit;
  edit.new_points = 1;
  for (const PointId corner : corners_of(network, place)) {
    Number arm = Number(1) / sum;
    for (const PartId part : place.parts) {
      if (ends_at(network, part, corner)) arm = arm * network.resistance(part).lowest_terms();
    }
    edit.adds.push_back({corner, middle, Ratio(arm)});
  }
  edit.removes = std::move(place.parts);
  edit.formula = Formula::star_arm;
  edit.back = {Law::two_arms, Law::ohm_current};
  return edit;
}

}  // namespace

std::vector<Place> deltas_with(const Network& network, const std::vector<PartId>& parts,
                               std::size_t most) {
  std::vector<Place> places;
  for (const PartId part : parts) {
    if (!network.is_alive(part) || !is_link(network, part)) continue;
    const PointId from = network.from(part);
    const PointId to = network.to(part);
    network.for_each_at(from, [&](PartId second) {
      if (second == part || !is_link(network, second)) return;
      const PointId corner = network.across(second, from);
      if (corner == to || places.size() >= most) return;
      network.for_each_at(to, [&](PartId third) {
        if (!is_link(network, third) || network.across(third, to) != corner) return;
        Place place{{part, second, third}, {}, {}};
        std::sort(place.parts.begin(), place.parts.end());
        places.push_back(std::move(place));
      });
    });
  }
  const auto in_file_order = [](const Place& a, const Place& b) { return a.parts < b.parts; };
  std::sort(places.begin(), places.end(), in_file_order);
  const auto same = [](const Place& a, const Place& b) { return a.parts == b.parts; };
  places.erase(std::unique(places.begin(), places.end(), same), places.end());
  return places;
}

Rule delta_star_rule() {
  return {RuleName::delta_star, Tier::transform, find, judge, apply};
}

}  // namespace ohmfold

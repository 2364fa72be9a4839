// Stars, and the meshes that replace them.
#include "rules/star.h"

#include <algorithm>
#include <unordered_set>

#include "rules/what_else.h"

namespace ohmfold {
namespace {

bool is_resistor(const Network& network, PartId part) {
  return network.kind(part) == ElementKind::resistor;
}

// The point at which all parts meet, or none. Requires two parts or more.
PointId middle_of(const Network& network, const Place& place) {
  for (const PointId point : {network.from(place.parts[0]), network.to(place.parts[0])}) {
    const bool all_meet = std::all_of(place.parts.begin(), place.parts.end(), [&](PartId part) {
      return network.from(part) == point || network.to(part) == point;
    });
    const bool is_wished = !place.first.exists() || place.first == point;
    if (all_meet && is_wished) return point;
  }
  return {};
}

}  // namespace

Verdict judge_star(const Network& network, const Place& place, ArmCount count) {
  if (!count.allows(place.parts.size())) {
    return {false, {WrongNumber{count.least, count.most > count.least}}};
  }
  for (const PartId part : place.parts) {
    if (!is_resistor(network, part)) return {false, {NotAResistor{part}}};
    if (network.from(part) == network.to(part)) {
      return {false, {BothEndsOn{part, network.from(part)}}};
    }
  }
  const PointId middle = middle_of(network, place);
  if (!middle.exists()) return {false, {ShareNoPoint{place.parts[0], place.parts[1]}}};
  if (network.degree(middle) != place.parts.size()) {
    return {false, {what_else(network, middle, place.parts, AllMeetAt{middle})}};
  }
  std::vector<std::pair<PointId, PartId>> ends;
  for (const PartId part : place.parts) ends.emplace_back(network.across(part, middle), part);
  std::sort(ends.begin(), ends.end());
  for (std::size_t i = 1; i < ends.size(); ++i) {
    if (ends[i - 1].first != ends[i].first) continue;
    return {false, {EndTogether{ends[i - 1].second, ends[i].second, ends[i].first}}};
  }
  return {true, {AllMeetAt{middle}}};
}

std::vector<Place> stars_at(const Network& network, const std::vector<PointId>& points,
                            ArmCount count) {
  std::vector<Place> places;
  for (const PointId point : points) {
    if (!count.allows(network.degree(point))) continue;
    Place place{{}, point, {}};
    network.for_each_at(point, [&](PartId part) { place.parts.push_back(part); });
    std::sort(place.parts.begin(), place.parts.end());
    if (judge_star(network, place, count).allowed) places.push_back(std::move(place));
  }
  return places;
}

std::vector<Place> without_shared_parts(std::vector<Place> places) {
  std::unordered_set<std::uint32_t> used;
  std::vector<Place> kept;
  for (Place& place : places) {
    const bool is_shared = std::any_of(place.parts.begin(), place.parts.end(),
                                       [&](PartId part) { return used.contains(part.index); });
    if (is_shared) continue;
    for (const PartId part : place.parts) used.insert(part.index);
    kept.push_back(std::move(place));
  }
  return kept;
}

Edit mesh_for(const Network& network, Place place, Formula formula) {
  const PointId middle = middle_of(network, place);
  std::sort(place.parts.begin(), place.parts.end());
  std::vector<Number> arms;
  std::vector<PointId> ends;
  Number conductance(0);
  for (const PartId part : place.parts) {
    arms.push_back(network.resistance(part).lowest_terms());
    ends.push_back(network.across(part, middle));
    conductance += Number(1) / arms.back();
  }
  Edit edit;
  for (std::size_t i = 0; i < arms.size(); ++i) {
    for (std::size_t j = i + 1; j < arms.size(); ++j) {
      edit.adds.push_back({ends[i], ends[j], Ratio(arms[i] * arms[j] * conductance)});
    }
  }
  edit.removes = std::move(place.parts);
  edit.formula = formula;
  edit.back = {Law::sides_at_end, Law::ohm_voltage};
  return edit;
}

}  // namespace ohmfold

// Resistors in parallel: joined to the same two points, they have one voltage.
#include <algorithm>

#include "rules/combined.h"
#include "rules/rules.h"
#include "rules/visited.h"

namespace ohmfold {
namespace {

Verdict judge(const Network& network, const Place& place) {
  if (place.parts.size() < 2) return {false, {TooFewParts{}}};
  for (const PartId part : place.parts) {
    if (network.kind(part) != ElementKind::resistor) return {false, {NotAResistor{part}}};
  }
  const PartId first = place.parts.front();
  const PointId one = network.from(first);
  const PointId two = network.to(first);
  if (one == two) return {false, {BothEndsOn{first, one}}};
  for (const PartId part : place.parts) {
    const PointId a = network.from(part);
    const PointId b = network.to(part);
    if ((a == one && b == two) || (a == two && b == one)) continue;
    // Name the ends that differ: those that are not shared, where one is.
    const bool shares_one = a == one || b == one;
    const PointId mine = shares_one ? two : one;
    const PointId other = (a == one || a == two) ? b : a;
    return {false, {EndsDiffer{first, part, mine, other}}};
  }
  return {true, {JoinSameTwoPoints{one, two}}};
}

std::vector<Place> find(const Network& network, const Frontier& frontier) {
  std::vector<Place> places;
  Visited visited(frontier.parts.size() / 4);
  constexpr std::size_t kAhead = 12;
  for (std::size_t i = 0; i < frontier.parts.size(); ++i) {
    if (i + kAhead < frontier.parts.size()) network.expect(frontier.parts[i + kAhead]);
    const PartId part = frontier.parts[i];
    if (!network.is_alive(part) || !network.has_twin(part)) continue;
    if (network.kind(part) != ElementKind::resistor || !visited.insert(part.index)) continue;
    Place place;
    place.parts.reserve(2);
    network.for_each_twin(part, [&](PartId twin) {
      if (network.kind(twin) != ElementKind::resistor) return;
      visited.insert(twin.index);
      place.parts.push_back(twin);
    });
    std::sort(place.parts.begin(), place.parts.end());
    place.first = network.from(place.parts.front());
    place.second = network.to(place.parts.front());
    if (place.parts.size() > 1 && place.first != place.second) places.push_back(std::move(place));
  }
  return places;
}

Edit apply(const Network& network, Place place) {
  std::sort(place.parts.begin(), place.parts.end());
  const PartId first = place.parts.front();
  return combined(network, std::move(place.parts), network.from(first), network.to(first),
                  Formula::reciprocal_sum);
}

}  // namespace

Rule parallel_rule() {
  return {RuleName::parallel, Tier::combine, find, judge, apply};
}

}  // namespace ohmfold

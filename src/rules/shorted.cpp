// A resistor with both ends on one point: no voltage, no current.
#include "rules/rules.h"

namespace ohmfold {
namespace {

Verdict judge(const Network& network, const Place& place) {
  Verdict verdict{!place.parts.empty(), {}};
  for (const PartId part : place.parts) {
    if (network.kind(part) != ElementKind::resistor) return {false, {NotAResistor{part}}};
    const PointId first = network.from(part);
    const PointId second = network.to(part);
    if (first != second) return {false, {EndsApart{part, first, second}}};
    verdict.facts.emplace_back(BothEndsOn{part, first});
  }
  return verdict;
}

std::vector<Place> find(const Network& network, const Frontier& frontier) {
  std::vector<Place> places;
  for (const PartId part : frontier.parts) {
    if (!network.is_alive(part) || network.from(part) != network.to(part)) continue;
    if (network.kind(part) != ElementKind::resistor) continue;
    places.push_back({{part}, network.from(part), network.to(part)});
  }
  return places;
}

Edit apply(const Network& /*network*/, Place place) {
  Edit edit;
  edit.removes = std::move(place.parts);
  edit.back = {Law::zero_voltage, Law::zero_current};
  return edit;
}

}  // namespace

Rule shorted_rule() {
  return {RuleName::shorted, Tier::clean_up, find, judge, apply};
}

}  // namespace ohmfold

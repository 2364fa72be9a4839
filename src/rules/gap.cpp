// Open switches, voltmeters and parts taken out: nothing is joined there.
#include "rules/rules.h"

namespace ohmfold {
namespace {

Verdict judge(const Network& network, const Place& place) {
  Verdict verdict{!place.parts.empty(), {}};
  for (const PartId part : place.parts) {
    switch (network.kind(part)) {
      case ElementKind::open_switch:
        verdict.facts.emplace_back(IsOpenSwitch{part});
        break;
      case ElementKind::voltmeter:
        verdict.facts.emplace_back(IsVoltmeter{part});
        break;
      case ElementKind::taken_out:
        verdict.facts.emplace_back(IsTakenOut{part});
        break;
      case ElementKind::switched_off:
        verdict.facts.emplace_back(IsSwitchedOff{part});
        break;
      default:
        return {false, {IsNotAGap{part}}};
    }
  }
  return verdict;
}

std::vector<Place> find(const Network& network, const Frontier& frontier) {
  std::vector<Place> places;
  for (const PartId part : frontier.parts) {
    if (!network.is_alive(part) || !is_gap(network.kind(part))) continue;
    places.push_back({{part}, network.from(part), network.to(part)});
  }
  return places;
}

Edit apply(const Network& /*network*/, Place place) {
  Edit edit;
  edit.removes = std::move(place.parts);
  edit.back = {Law::zero_current, Law::voltage_loop};
  return edit;
}

}  // namespace

Rule gap_rule() {
  return {RuleName::gap, Tier::clean_up, find, judge, apply};
}

}  // namespace ohmfold

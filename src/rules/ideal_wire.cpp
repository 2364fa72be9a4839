// Ideal wires, closed switches and ammeters: a cluster of points joined by them is one point.
#include <algorithm>

#include "rules/rules.h"
#include "rules/visited.h"

namespace ohmfold {
namespace {

Verdict judge(const Network& network, const Place& place) {
  Verdict verdict{!place.parts.empty(), {}};
  for (const PartId part : place.parts) {
    switch (network.kind(part)) {
      case ElementKind::wire:
        verdict.facts.emplace_back(IsWire{part});
        break;
      case ElementKind::closed_switch:
        verdict.facts.emplace_back(IsClosedSwitch{part});
        break;
      case ElementKind::ammeter:
        verdict.facts.emplace_back(IsAmmeter{part});
        break;
      case ElementKind::shorted:
        verdict.facts.emplace_back(IsShorted{part});
        break;
      default:
        return {false, {IsNotAWire{part}}};
    }
  }
  return verdict;
}

// All wires that can be reached from `start` along wires: one place, since the currents in a
// cluster follow together (see solve/ideal_currents.h).
Place cluster_at(const Network& network, PartId start, Visited& visited) {
  Place place;
  std::vector<PointId> open{network.from(start)};
  Visited reached(8);
  reached.insert(open.back().index);
  while (!open.empty()) {
    const PointId point = open.back();
    open.pop_back();
    network.for_each_at(point, [&](PartId part) {
      if (!is_wire(network.kind(part))) return;
      if (visited.insert(part.index)) place.parts.push_back(part);
      const PointId next = network.across(part, point);
      if (reached.insert(next.index)) open.push_back(next);
    });
  }
  std::sort(place.parts.begin(), place.parts.end());
  place.first = network.from(place.parts.front());
  place.second = network.to(place.parts.front());
  return place;
}

std::vector<Place> find(const Network& network, const Frontier& frontier) {
  std::vector<Place> places;
  Visited visited(16);
  for (const PartId part : frontier.parts) {
    if (!network.is_alive(part) || !is_wire(network.kind(part))) continue;
    if (!visited.insert(part.index)) continue;
    Visited own(16);
    Place place = cluster_at(network, part, own);
    for (const PartId wire : place.parts) visited.insert(wire.index);
    places.push_back(std::move(place));
  }
  return places;
}

Edit apply(const Network& network, Place place) {
  Edit edit;
  for (const PartId part : place.parts) {
    edit.merges.push_back(network.from(part));
    edit.merges.push_back(network.to(part));
  }
  std::sort(edit.merges.begin(), edit.merges.end());
  edit.merges.erase(std::unique(edit.merges.begin(), edit.merges.end()), edit.merges.end());
  edit.removes = std::move(place.parts);
  edit.back = {Law::zero_voltage, Law::current_cut};
  return edit;
}

}  // namespace

Rule ideal_wire_rule() {
  return {RuleName::ideal_wire, Tier::clean_up, find, judge, apply};
}

}  // namespace ohmfold

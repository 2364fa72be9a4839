// Batteries of one chain: one current runs through all of them, so their voltages add with signs.
#include <algorithm>
#include <array>

#include "rules/chain.h"
#include "rules/rules.h"
#include "rules/visited.h"

namespace ohmfold {
namespace {

bool is_battery(const Network& network, PartId part) {
  return network.kind(part) == ElementKind::battery;
}

// Resistors may lie between the batteries.
bool belongs(const Network& network, PartId part) {
  const bool conducts = network.kind(part) == ElementKind::resistor || is_battery(network, part);
  return conducts && network.from(part) != network.to(part);
}

// A battery of a chain, and whether the walk from the chain's first point runs through it from − to
// +.
struct Link {
  PartId battery;
  bool along = false;
};

// The batteries of the place, the first of the file first.
std::vector<Link> links_of(const Network& network, const Chain& chain, const Place& place) {
  Visited named(place.parts.size());
  for (const PartId part : place.parts) named.insert(part.index);
  std::vector<Link> links;
  PointId at = chain.first;
  for (const PartId part : chain.parts) {
    if (!named.insert(part.index)) links.push_back({part, network.from(part) == at});
    at = network.across(part, at);
  }
  std::sort(links.begin(), links.end(),
            [](const Link& a, const Link& b) { return a.battery < b.battery; });
  return links;
}

// What ends the chain beyond which the other battery lies.
Fact why_apart(const Network& network, const Chain& chain, PartId other) {
  Visited in_chain(chain.parts.size());
  for (const PartId part : chain.parts) in_chain.insert(part.index);
  for (const PointId end : {chain.second, chain.first}) {
    PartId third;
    network.for_each_at(end, [&](PartId part) {
      const bool is_new = in_chain.insert(part.index);
      if (is_new && (!third.exists() || part < third)) third = part;
    });
    if (third.exists()) return AlsoMeets{third, end};
  }
  return ShareNoPoint{chain.parts.front(), other};
}

// Where nothing in a loop has a resistance, the model leaves its current open.
bool is_ideal_loop(const Network& network, const Chain& chain) {
  return chain.closes && std::all_of(chain.parts.begin(), chain.parts.end(), [&](PartId part) {
           return is_battery(network, part) && network.battery(part).internal.is_zero();
         });
}

Verdict judge(const Network& network, const Place& place) {
  if (place.parts.size() < 2) return {false, {TooFewParts{}}};
  for (const PartId part : place.parts) {
    if (!is_battery(network, part)) return {false, {NotABattery{part}}};
    if (network.from(part) == network.to(part)) {
      return {false, {BothEndsOn{part, network.from(part)}}};
    }
  }
  const Chain chain = chain_through(network, place.parts.front(), belongs);
  Visited in_chain(chain.parts.size());
  for (const PartId part : chain.parts) in_chain.insert(part.index);
  for (const PartId part : place.parts) {
    if (in_chain.insert(part.index)) return {false, {why_apart(network, chain, part)}};
  }
  if (is_ideal_loop(network, chain)) {
    return {false, {ChainCloses{place.parts.front(), chain.first}}};
  }
  Verdict verdict{true, {}};
  const std::vector<Link> links = links_of(network, chain, place);
  for (std::size_t i = 1; i < links.size(); ++i) {
    const PartId first = links.front().battery;
    if (links[i].along == links.front().along) {
      verdict.facts.emplace_back(DriveAlike{first, links[i].battery});
    } else {
      verdict.facts.emplace_back(DriveAgainst{first, links[i].battery});
    }
  }
  return verdict;
}

std::vector<Place> find(const Network& network, const Frontier& frontier) {
  std::vector<Place> places;
  if (network.batteries().size() < 2) return places;
  Visited visited(frontier.points.size() / 4);
  for (const PointId point : frontier.points) {
    if (network.degree(point) != 2) continue;
    PartId part;
    network.for_each_at(point, [&](PartId other) { part = other; });
    if (!belongs(network, part) || !visited.insert(part.index)) continue;
    const Chain chain = chain_through(network, part, belongs);
    Place place;
    for (const PartId each : chain.parts) {
      visited.insert(each.index);
      if (is_battery(network, each)) place.parts.push_back(each);
    }
    if (place.parts.size() < 2 || is_ideal_loop(network, chain)) continue;
    std::sort(place.parts.begin(), place.parts.end());
    places.push_back(std::move(place));
  }
  return places;
}

// The battery that comes stands at the place of the first, turned where its voltage would be
// negative.
Edit apply(const Network& network, Place place) {
  const Chain chain = chain_through(network, place.parts.front(), belongs);
  std::vector<Link> links = links_of(network, chain, place);
  const bool first_along = links.front().along;
  Voltage emf;
  Resistance internal;
  for (Link& link : links) {
    link.along = link.along == first_along;
    const BatteryData& data = network.battery(link.battery);
    emf = link.along ? emf + data.emf : emf - data.emf;
    internal += data.internal;
  }
  if (emf.number.is_negative()) {
    emf = -emf;
    for (Link& link : links) link.along = !link.along;
  }
  Edit edit;
  edit.merging = Merging::by_twos;
  for (const Link& link : links) {
    const PointId from = network.from(link.battery);
    const PointId to = network.to(link.battery);
    const std::array<PointId, 2> ends = link.along ? std::array{from, to} : std::array{to, from};
    if (edit.removes.empty()) {
      edit.adds.push_back({ends[0], ends[1], Ratio(internal.number), ElementKind::battery, emf});
    } else {
      edit.merges.insert(edit.merges.end(), ends.begin(), ends.end());
    }
    edit.removes.push_back(link.battery);
  }
  edit.back = {Law::same_current, Law::terminal};
  return edit;
}

}  // namespace

Rule battery_chain_rule() {
  return {RuleName::batteries, Tier::sources, find, judge, apply};
}

}  // namespace ohmfold

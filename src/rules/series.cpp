// Resistors in series: a chain with nothing else joined between its parts carries one current.
#include <algorithm>
#include <array>

#include "rules/chain.h"
#include "rules/combined.h"
#include "rules/rules.h"
#include "rules/visited.h"
#include "rules/what_else.h"

namespace ohmfold {
namespace {

bool is_resistor(const Network& network, PartId part) {
  return network.kind(part) == ElementKind::resistor;
}

// Turned so that its first part in file order runs along it.
void orient(const Network& network, Chain& chain) {
  const PartId earliest = *std::min_element(chain.parts.begin(), chain.parts.end());
  PointId at = chain.first;
  for (const PartId part : chain.parts) {
    if (part == earliest) break;
    at = network.across(part, at);
  }
  if (network.from(earliest) == at) return;
  std::reverse(chain.parts.begin(), chain.parts.end());
  std::swap(chain.first, chain.second);
}

// Why two neighbours in a place are not in series: what else is joined where they meet.
Fact why_apart(const Network& network, PartId first, PartId second) {
  PointId shared;
  for (const PointId point : {network.from(first), network.to(first)}) {
    if (point == network.from(second) || point == network.to(second)) shared = point;
  }
  if (!shared.exists()) return ShareNoPoint{first, second};
  return what_else(network, shared, std::array{first, second}, ChainCloses{first, shared});
}

// The stretch of a chain that the place names, and the points it lies between.
Chain stretch_of(const Network& network, const Chain& chain, const Place& place) {
  Visited named(place.parts.size());
  for (const PartId part : place.parts) named.insert(part.index);
  std::size_t begin = chain.parts.size(), end = 0;
  for (std::size_t i = 0; i < chain.parts.size(); ++i) {
    if (named.insert(chain.parts[i].index)) continue;
    begin = std::min(begin, i);
    end = i + 1;
  }
  Chain stretch;
  PointId at = chain.first;
  for (std::size_t i = 0; i < end; ++i) {
    if (i == begin) stretch.first = at;
    if (i >= begin) stretch.parts.push_back(chain.parts[i]);
    at = network.across(chain.parts[i], at);
  }
  stretch.second = at;
  orient(network, stretch);
  return stretch;
}

// The parts of a chain and the points it lies between, wherever they are kept.
struct ChainView {
  const std::vector<PartId>& parts;
  PointId first, second;
};

Verdict facts_along(const Network& network, const ChainView& chain) {
  Verdict verdict{true, {}};
  verdict.facts.reserve(chain.parts.size() - 1);
  PointId at = chain.first;
  for (std::size_t i = 0; i + 1 < chain.parts.size(); ++i) {
    at = network.across(chain.parts[i], at);
    verdict.facts.emplace_back(MeetOnlyAt{chain.parts[i], chain.parts[i + 1], at});
  }
  return verdict;
}

// Does the place name an open chain as find does, in order and with its two points?
bool is_listed_chain(const Network& network, const Place& place) {
  if (place.parts.size() < 2 || !place.first.exists() || place.first == place.second) return false;
  PointId at = place.first;
  for (std::size_t i = 0; i < place.parts.size(); ++i) {
    const PartId part = place.parts[i];
    if (!is_resistor(network, part)) return false;
    if (network.from(part) != at && network.to(part) != at) return false;
    if (i > 0 && (network.degree(at) != 2 || part == place.parts[i - 1])) return false;
    at = network.across(part, at);
  }
  return at == place.second;
}

// Series means one current: parts of one chain are in series even with others of it between them.
Verdict judge(const Network& network, const Place& place) {
  if (is_listed_chain(network, place)) {
    return facts_along(network, {place.parts, place.first, place.second});
  }
  if (place.parts.size() < 2) return {false, {TooFewParts{}}};
  for (const PartId part : place.parts) {
    if (!is_resistor(network, part)) return {false, {NotAResistor{part}}};
  }
  const Chain chain = chain_through(network, place.parts.front(), is_resistor);
  Visited in_chain(chain.parts.size());
  for (const PartId part : chain.parts) in_chain.insert(part.index);
  for (std::size_t i = 1; i < place.parts.size(); ++i) {
    if (in_chain.insert(place.parts[i].index)) {
      return {false, {why_apart(network, place.parts[i - 1], place.parts[i])}};
    }
  }
  if (chain.closes && chain.parts.size() == place.parts.size()) {
    return {false, {ChainCloses{chain.parts.front(), chain.first}}};
  }
  const Chain stretch = stretch_of(network, chain, place);
  return facts_along(network, {stretch.parts, stretch.first, stretch.second});
}

std::vector<Place> find(const Network& network, const Frontier& frontier) {
  std::vector<Place> places;
  Visited visited(frontier.points.size());
  constexpr std::size_t kAhead = 12;
  for (std::size_t i = 0; i < frontier.points.size(); ++i) {
    if (i + kAhead < frontier.points.size()) network.expect_at(frontier.points[i + kAhead]);
    const PointId point = frontier.points[i];
    if (network.degree(point) != 2) continue;
    PartId part;
    network.for_each_at(point, [&](PartId other) { part = other; });
    if (!is_resistor(network, part) || !next_in_chain(network, part, point, is_resistor).exists())
      continue;
    if (!visited.insert(part.index)) continue;
    Chain chain = chain_through(network, part, is_resistor);
    for (const PartId each : chain.parts) visited.insert(each.index);
    if (chain.closes) continue;
    orient(network, chain);
    places.push_back({std::move(chain.parts), chain.first, chain.second});
  }
  return places;
}

Edit apply(const Network& network, Place place) {
  if (!is_listed_chain(network, place)) {
    Chain stretch =
        stretch_of(network, chain_through(network, place.parts.front(), is_resistor), place);
    place = {std::move(stretch.parts), stretch.first, stretch.second};
  }
  return combined(network, std::move(place.parts), place.first, place.second, Formula::sum);
}

}  // namespace

Rule series_rule() {
  return {RuleName::series, Tier::combine, find, judge, apply};
}

}  // namespace ohmfold

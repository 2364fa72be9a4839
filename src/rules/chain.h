// Chains: parts one after the other with nothing else joined between them.
#pragma once

#include <algorithm>
#include <vector>

#include "ohmfold/network.h"

namespace ohmfold {

/// A chain from end to end: parts in order, and the points between which it lies.
struct Chain {
  std::vector<PartId> parts;
  PointId first, second;
  bool closes = false;  ///< it comes back to the point where it began
};

/// The part beyond `part` at `point`, if exactly two ends are joined there and both are of parts
/// that belong to chains. `belongs(network, part)`.
template <class Belongs>
[[nodiscard]] PartId next_in_chain(const Network& network, PartId part, PointId point,
                                   Belongs belongs) {
  PartId next;
  if (network.degree(point) != 2) return next;
  network.for_each_at(point, [&](PartId other) {
    if (other != part && belongs(network, other)) next = other;
  });
  return next;
}

/// Walks from `part` through `point` as far as the chain goes; appends the parts passed and returns
/// the point where it ends. Cost: the parts passed.
template <class Belongs>
PointId walk_chain(const Network& network, PartId part, PointId point, std::vector<PartId>& passed,
                   Belongs belongs) {
  const PartId start = part;
  for (PartId next = next_in_chain(network, part, point, belongs); next.exists() && next != start;
       next = next_in_chain(network, part, point, belongs)) {
    passed.push_back(next);
    point = network.across(next, point);
    part = next;
  }
  return point;
}

/// The maximal chain through `part`, which belongs to it. Cost: the length of the chain.
template <class Belongs>
[[nodiscard]] Chain chain_through(const Network& network, PartId part, Belongs belongs) {
  Chain chain;
  chain.parts.reserve(4);
  chain.first = walk_chain(network, part, network.from(part), chain.parts, belongs);
  std::reverse(chain.parts.begin(), chain.parts.end());
  chain.parts.push_back(part);
  if (chain.parts.size() > 1 && chain.first == network.to(part) &&
      next_in_chain(network, part, network.to(part), belongs).exists()) {
    chain.closes = true;
    chain.second = chain.first;
    return chain;
  }
  chain.second = walk_chain(network, part, network.to(part), chain.parts, belongs);
  chain.closes = chain.first == chain.second;
  return chain;
}

}  // namespace ohmfold

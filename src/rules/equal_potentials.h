// Points that a balance or a symmetry puts at the same potential.
#pragma once

#include <vector>

#include "ohmfold/network.h"

namespace ohmfold {

/// Two ways to make use of them: to leave out parts between them, or to join them.
struct EqualPotentials {
  std::vector<Place> cuts;    ///< parts whose ends are at the same potential
  std::vector<Place> merges;  ///< points at the same potential

  [[nodiscard]] bool empty() const { return cuts.empty() && merges.empty(); }
};

/// What a balanced bridge or a symmetry shows in a network of resistors and one source; no two cuts
/// share a part, no two merges a point, but for points half-way between the terminals, whose merge
/// comes last and names points that merges before it keep. Where points are equal only by their
/// values, nothing is found: whoever knows that has solved the network already. Nothing in networks
/// of more than some hundred points. Cost: bounded, see SymmetrySearch.
[[nodiscard]] EqualPotentials equal_potentials_in(const Network& network);

}  // namespace ohmfold

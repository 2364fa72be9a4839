// What star to delta and node elimination have in common: the parts at one point become a mesh.
#pragma once

#include <vector>

#include "ohmfold/rule.h"

namespace ohmfold {

/// How many arms a rule takes.
struct ArmCount {
  std::uint32_t least, most;

  [[nodiscard]] bool allows(std::size_t arms) const { return arms >= least && arms <= most; }
};

/// Are these all the parts at one point, resistors that end at as many different others?
[[nodiscard]] Verdict judge_star(const Network& network, const Place& place, ArmCount count);

/// The stars whose middle is among `points`, in file order, also where they share parts: two
/// neighbouring points can both be the middle of one.
[[nodiscard]] std::vector<Place> stars_at(const Network& network,
                                          const std::vector<PointId>& points, ArmCount count);

/// Of places in this order, those that share no part with one before.
[[nodiscard]] std::vector<Place> without_shared_parts(std::vector<Place> places);

/// A resistor between each two of the outer ends: gij = gi gj / (g1 + g2 + …), so that
/// Rij = Ri Rj (1/R1 + 1/R2 + …). Rosen, J. IEE 62 (1924) 916 (from memory). Requires that
/// judge_star allows it.
[[nodiscard]] Edit mesh_for(const Network& network, Place place, Formula formula);

}  // namespace ohmfold

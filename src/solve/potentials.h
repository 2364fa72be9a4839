// Potentials of the original points, from the voltages of the parts.
#pragma once

#include <optional>

#include "ohmfold/network.h"
#include "solve/flow.h"

namespace ohmfold {

/// How each point was reached from the reference point of its connected piece.
struct PotentialWalk {
  struct Reach {
    PartId by;                ///< the part walked along; none for a reference point
    PointId from;             ///< the point walked from
    std::uint32_t piece = 0;  ///< points of one piece have one number; that of the ground is 0
  };
  std::vector<Reach> points;   ///< by PointId
  std::vector<PointId> order;  ///< points from the ground outwards, piece after piece

  /// A difference of potentials is determined exactly where parts other than gaps join the points.
  [[nodiscard]] bool joined(PointId a, PointId b) const {
    return points[a.index].piece == points[b.index].piece;
  }
};

/// Walks over all parts but gaps, sources of current and ports, breadth first, from the ground,
/// then from the first point of each further piece. Cost: linear.
[[nodiscard]] PotentialWalk walk_potentials(const Network& start, PointId ground);

/// The potential of every point against the reference of its piece.
template <class Field>
std::vector<typename Field::Value> potentials(const Network& start, const PotentialWalk& walk,
                                              const Field& field, const Flow<Field>& flow) {
  std::vector<typename Field::Value> potential(start.point_count(), field.from(Number(0)));
  for (const PointId point : walk.order) {
    const auto& reach = walk.points[point.index];
    if (!reach.by.exists()) continue;
    const auto& voltage = flow.voltage[reach.by.index];
    const auto& before = potential[reach.from.index];
    // A battery's voltage is second less first, that of all other parts first less second.
    const bool towards_second = start.from(reach.by) == reach.from;
    const bool rises = towards_second == counts_rise(start.kind(reach.by));
    potential[point.index] = rises ? field.add(before, voltage) : field.subtract(before, voltage);
  }
  return potential;
}

}  // namespace ohmfold

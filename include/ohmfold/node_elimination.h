// Node equations and their exact elimination, as a person writes them down: equation after
// equation.
#pragma once

#include <cstdint>
#include <vector>

#include "ohmfold/ids.h"
#include "ohmfold/value.h"

namespace ohmfold {

/// coefficient * V(point), the coefficient a number without a unit.
struct PotentialTerm {
  PointId point;
  Number coefficient;
};

/// How an equation came about.
enum class EquationOrigin : std::uint8_t {
  current_law,  ///< the currents that leave `points` sum to zero, times `factor` ohm
  combined,     ///< a sum of two earlier ones in which the potential of `unknown` is gone
  solved        ///< one earlier one, with potentials found after it put in: that of `unknown`
};

/// An earlier equation, and what it is multiplied by.
struct EquationShare {
  std::size_t equation = 0;  ///< index into NodeElimination::equations
  Number factor;
};

/// The terms sum to `constant`. The equation times `divisor` is the current law times `factor`, or
/// the sum of `from`. Until it is solved, all its numbers are whole and have no common factor, but
/// for one that would solve it.
struct PotentialEquation {
  EquationOrigin origin{};
  std::uint32_t number = 0;     ///< from 1; a combined one has that of the one it replaces
  std::uint32_t times = 0;      ///< how often it was replaced: the strokes of (2'')
  std::vector<PointId> points;  ///< current_law: one point, or those that ideal batteries join
  Number factor = 1;            ///< current_law: in ohm; clears the fractions
  std::vector<EquationShare> from;
  Number divisor = 1;
  PointId unknown;  ///< combined, solved: whose potential is gone, or found
  std::vector<PotentialTerm> terms;
  Voltage constant;
};

/// A point whose potential ideal batteries fix against that of another: above it by `rise`. Where
/// `base` is the ground, `rise` is the potential.
struct FixedPotential {
  PointId point, base;
  Voltage rise;
};

/// The node equations of what is left of a network, solved one unknown after the other. The
/// unknowns are the potentials of all points but the ground and those that ideal batteries fix.
struct NodeElimination {
  PointId ground;
  std::vector<PointId> unknowns;      ///< in the order in which they are eliminated
  std::vector<FixedPotential> fixed;  ///< in file order
  /// The current laws, then combinations, then solutions, the last unknown first. Empty where it is
  /// not written out: beyond kMostWrittenUnknowns, or where numbers are long.
  std::vector<PotentialEquation> equations;
};

/// Up to so many unknowns an elimination is written out.
inline constexpr std::size_t kMostWrittenUnknowns = 4;

}  // namespace ohmfold

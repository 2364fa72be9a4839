// The ways to solve a circuit that a person can ask for, and the one that was taken.
#pragma once

#include <cstdint>

namespace ohmfold {

/// How to go on where series and parallel do not suffice.
enum class Method : std::uint8_t {
  automatic,         ///< only as a wish: the shortest honest way
  series_parallel,   ///< no other way: what does not reduce stays unanswered
  equal_potentials,  ///< points at equal potentials joined, parts between them left out
  delta_star,        ///< delta to star and star to delta
  node_voltage,      ///< equations for the potentials of what is left
  superposition,     ///< each source alone, then the sum
};

}  // namespace ohmfold

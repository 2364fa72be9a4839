// The whole solution of a network too large to write all its values, checked modulo random primes.
#pragma once

#include <cstdint>
#include <vector>

#include "ohmfold/trace.h"

namespace ohmfold {

/// Currents and voltages of every original part, modulo a prime; signs as in problem.h.
struct ModularSolution {
  std::uint64_t prime = 0;
  std::vector<std::uint64_t> current, voltage;  ///< by PartId of the start
};

/// Checks the laws of laws.h (without potentials and stated powers) and node voltages in
/// `reduction.start`, one entry for each law, over all solutions; `primes` is their number.
/// Currents that the ideal model leaves open are not looked at, nor voltages of gaps, which follow
/// like potentials from the others. There is no entry for node voltages where the network has a
/// core of more than 300 nodes that are joined each to many. A solution fails whose prime is none
/// between 2^60 and 2^61, that came before, or that lacks a part. Cost: near linear for
/// series-parallel networks.
[[nodiscard]] std::vector<Check> check_modular(const Reduction& reduction,
                                               const std::vector<ModularSolution>& solutions);

}  // namespace ohmfold

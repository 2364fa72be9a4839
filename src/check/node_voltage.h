// The second, independent way: node-voltage analysis of the whole network against the results.
#pragma once

#include <optional>

#include "ohmfold/network.h"
#include "ohmfold/trace.h"

namespace ohmfold {

namespace check {

/// How node equations are solved.
enum class Method {
  by_size,  ///< matrix up to 24 unknowns with small numbers, modular beyond
  matrix,   ///< exactly, by GiNaC; with symbols by sparse elimination
  modular,  ///< by sparse elimination modulo random primes: three up to 5,000 parts, else one;
            ///< each symbol is taken at a random residue
};

/// Beyond so many nodes in what is left when the equations have become dense, they are not solved:
/// Kirchhoff's laws (laws.h) are the proof then.
inline constexpr std::size_t kMostCore = 1500;

}  // namespace check

/// Solves the node equations of `start` and compares every current, every voltage and every
/// difference of potentials that `results` states, in one entry whose `places` counts them. Also
/// fails where a current, voltage or potential is stated that the equations leave open. Nothing
/// where the network is too large and too entangled (kMostCore). Cost: near linear for
/// series-parallel networks, otherwise up to the third power of the core.
[[nodiscard]] std::optional<Check> check_node_voltages(
    const Network& start, const CaseTrace& results, check::Method method = check::Method::by_size);

/// Compares the resistance between the two points of the port in `network` with `reading`: 1 A is
/// fed through the node equations. Where no path joins the points, the reading has to say so
/// (no_path). Nothing where the reading is too long to be stated, or the network too entangled.
/// Requires a port and no batteries.
[[nodiscard]] std::optional<Check> check_resistance(const Network& network, const Reading& reading,
                                                    check::Method method = check::Method::by_size);

}  // namespace ohmfold

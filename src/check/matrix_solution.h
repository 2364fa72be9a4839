// Node equations of small networks, solved by a library that nobody here wrote.
#pragma once

#include <optional>
#include <vector>

#include "check/node_equations.h"
#include "ohmfold/network.h"

namespace ohmfold::check {

/// The unknowns of modified node-voltage analysis: a potential for each set of points joined by
/// wires, but for one set in each connected piece, and a current for each ideal battery, but for
/// those that close a loop of ideal parts. Method: Ho, Ruehli and Brennan, IEEE Trans. Circuits
/// Syst. 22 (1975) 504.
[[nodiscard]] std::size_t count_unknowns(const Network& network);

/// The potentials of all points by GiNaC's exact linear algebra (GiNaC::matrix::solve). Throws
/// InternalError where the equations have no solution: ideal batteries that contradict each other
/// are left out where they close a loop, so that this cannot be. Cost: about the third power of the
/// unknowns, some milliseconds for 24 of them with small numbers.
[[nodiscard]] std::vector<Number> matrix_potentials(const Network& network,
                                                    const std::optional<Injection>& injection);

}  // namespace ohmfold::check

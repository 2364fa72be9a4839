// Kirchhoff's and Ohm's laws and the power balance, for the results of a case in the network as the
// case sets it. Since the solution of a network is unique where it is determined, results that obey
// these laws are proved.
#pragma once

#include <vector>

#include "check/arithmetic.h"
#include "ohmfold/network.h"
#include "ohmfold/trace.h"

namespace ohmfold {

/// Checks `results.branches` and `results.nodes` in `start`, whose parts and points have the ids of
/// the file. Signs as in problem.h. The checks, in this order:
///   - current law, for each point with a part: the currents out of it sum to zero. A current must
///     be stated exactly where the ideal model does not leave it open: parts on a closed path of
///     wires and ideal batteries (which, where no battery lies, may be stated as zero). At the
///     points of such a path the sum over all of them is checked;
///   - voltage law, for each loop that a part closes with a spanning tree of the conducting parts,
///     and for each gap (voltmeter, open switch) whose ends are joined by others;
///   - voltage law for potentials, in one entry without a loop: potentials are stated for the
///     points of one connected piece, all of them, and differ by the voltages between;
///   - Ohm's law, in one entry: V = I R for resistors, V = E - I r for batteries, V = 0 for wires,
///     I = 0 for gaps, the given current for
///     sources of current;
///   - power, in one entry: P = V I for each part, and what batteries deliver others take up.
/// A law with more than `most_single` points or loops has one entry for all of them. By size,
/// numbers are exact while their sums take about a second at most, and modulo three random primes
/// beyond. Cost: linear in parts, points and bits.
[[nodiscard]] std::vector<Check> check_laws(
    const Network& start, const CaseTrace& results, std::size_t most_single = 60,
    check::Arithmetic arithmetic = check::Arithmetic::by_size);

}  // namespace ohmfold

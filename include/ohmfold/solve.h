// The way from a problem to its trace.
#pragma once

#include <cstdint>

#include "ohmfold/method.h"
#include "ohmfold/problem.h"
#include "ohmfold/trace.h"

namespace ohmfold {

/// Where a file asks nothing, the resistance that each source sees is found for up to so many
/// sources: each takes a reduction of its own.
inline constexpr std::size_t kMostSeenUnasked = 12;

struct SolveOptions {
  /// Combine two resistors in each step, not all of a chain or bundle at once.
  bool pairs = false;
  /// The way to take beyond series and parallel.
  Method method = Method::automatic;
  /// Most bits that the exact values of all parts together may take; beyond, only what is asked for
  /// is found, and the laws are checked modulo random primes.
  std::size_t most_bits = 20'000'000;
  /// Most work with symbols in each case, in units of WorkLimit: some seconds.
  std::uint64_t most_symbolic_work = 400'000'000;
  /// Stop after the reduction and the proof that it had to end there: no currents, no answers.
  bool reduce_only = false;
};

/// Solves every case: reduces, goes back, answers, checks. A case that contradicts itself says so
/// in its place. Where symbols make a case too long to work with, all cases are solved with the
/// values of the symbols put in at the start; without values for all of them, the case says so in
/// its place. Throws InternalError where a check fails: a wrong answer never leaves here. Cost:
/// near linear in the parts for what reduces; for what is left, that of sparse elimination.
[[nodiscard]] Trace solve(const Problem& problem, const SolveOptions& options = {});

/// Only the reduction of one case of a problem, seen from its battery.
[[nodiscard]] Reduction reduce_case(const Problem& problem, const Case& setting,
                                    const SolveOptions& options = {});

/// The current that `part` of the file carries, in ampere, of a reduction that came down to one
/// part (Stop::reduced) by series and parallel alone (no choice made): found along the part's own
/// path, without the currents of the others. It is exact, but not in lowest terms:
/// Ratio::lowest_terms is what costs most in a large network. Requires a part other than an ideal
/// wire, and a network without symbols.
[[nodiscard]] Ratio current_through(const Reduction& reduction, PartId part);

}  // namespace ohmfold

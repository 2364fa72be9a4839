// Problems in which values of parts are unknown and something else is given.
#pragma once

#include "ohmfold/solve.h"

namespace ohmfold {

/// Finds the unknown values, then solves the circuit with each set of values that fits, as solve()
/// does. The cases of the trace's problem are those with the values put in.
///
/// The circuit is solved with a symbol for each unknown, which makes each given quantity a quotient
/// of polynomials: bilinear in one resistance for a current or a voltage (docs/method.md). What is
/// found is put in and the circuit solved with numbers; a value with which a given does not hold
/// exactly never leaves here.
[[nodiscard]] Trace solve_with_unknowns(const Problem& problem, const SolveOptions& options);

}  // namespace ohmfold

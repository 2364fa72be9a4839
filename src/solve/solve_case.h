// One case of a problem, from its settings to its trace.
#pragma once

#include "ohmfold/solve.h"

namespace ohmfold {

/// Whether cautions are looked for and the laws checked. With symbols for unknown values, and only
/// then, they are not: each value found is put in and checked with the whole case.
enum class Scrutiny { none, full };

[[nodiscard]] CaseTrace solve_case(const Problem& problem, const Case& setting,
                                   const SolveOptions& options, Scrutiny scrutiny);

}  // namespace ohmfold

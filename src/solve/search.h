// The search for unknown values: from the givens to what fits.
#pragma once

#include "ohmfold/solve.h"
#include "ohmfold/unknown.h"

namespace ohmfold {

/// A given and the case in which it holds.
struct GivenIn {
  std::size_t given = 0;  ///< index into Problem::givens
  const Case* held_in = nullptr;
};

/// Finds the unknowns of the problem from these givens. Every solution that fits has been put in
/// and every given has been found to hold.
[[nodiscard]] UnknownSolution find_unknowns(const Problem& problem,
                                            const std::vector<GivenIn>& givens,
                                            const SolveOptions& options);

/// The case with these values of the unknowns; a setting that it has for one of them stays.
[[nodiscard]] Case with_values(const Case& setting, const std::vector<PartId>& unknowns,
                               const std::vector<Number>& values);

/// The problem with these values in place of its unknowns.
[[nodiscard]] Problem with_values(Problem problem, const std::vector<PartId>& unknowns,
                                  const std::vector<Number>& values);

/// The most work with symbols in one search, in the units of WorkLimit.
inline constexpr std::uint64_t kMostSymbolWork = 300'000'000;

}  // namespace ohmfold

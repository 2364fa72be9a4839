// Several sources: each alone, then the sum.
#pragma once

#include <optional>
#include <vector>

#include "ohmfold/solve.h"
#include "ohmfold/trace.h"
#include "solve/flow.h"

namespace ohmfold {

/// More sources, or more parts to find for all of them together, are left to node-voltage analysis.
inline constexpr std::size_t kMostShares = 12;
inline constexpr std::size_t kMostSharedParts = 20'000;

/// What each source that is left in `main` does alone, where the circuit can be taken apart so:
/// batteries that `main` has made one stay together. Nothing where one of the networks does not
/// come down to one part, where an ideal battery lies on a loop of ideal parts (its share is not
/// determined, and alone it would be short-circuited), or where there are too many, or
/// their exact values would be too long. Each share is
/// checked (InternalError where that fails). Requires Stop::several_sources. Method: superposition
/// in a linear network (IEC 60050-131, from memory; Helmholtz 1853, from memory). Cost: that of as
/// many cases as there are sources.
[[nodiscard]] std::optional<std::vector<Share>> find_shares(const Problem& problem,
                                                            const Case& setting,
                                                            const SolveOptions& options,
                                                            const Reduction& main);

/// Currents and voltages of every part of the file as sums over the shares, with the signs that
/// they have together: `start` is the case with all its sources.
[[nodiscard]] Flow<ExactField> sum_of_shares(const Network& start,
                                             const std::vector<Share>& shares);

}  // namespace ohmfold

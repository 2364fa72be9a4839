// What is left where series and parallel come to an end, and the pairs that tempt there.
#pragma once

#include "ohmfold/bridge.h"
#include "ohmfold/trace.h"

namespace ohmfold {

/// So many pairs are listed at most.
inline constexpr std::size_t kMostPairs = 40;

/// How many of the first steps are by series and parallel, or clear up before them.
[[nodiscard]] std::size_t plain_steps(const StepLog& steps);

/// Looks at the network after the first steps of the reduction, those by series and parallel and
/// what comes before them. Listed are resistors that share a point and, where few are left, those
/// that are opposite sides of a square and those that alone have a common value; of each the rules
/// `series` and `parallel` are asked, and what one of them allows is not listed. Cost: that of the
/// steps, and of the parts at a few points.
[[nodiscard]] Standstill stand_still(const Reduction& reduction);

}  // namespace ohmfold

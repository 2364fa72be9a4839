// What a network becomes by a step that must not be made, as the person who makes it sees it.
#pragma once

#include <vector>

#include "ohmfold/network.h"
#include "ohmfold/work.h"

namespace ohmfold {

/// The changes that a wrong combination of living resistors can stand for, the likeliest first.
/// Series: the result spans the outer ends, and what else meets between them moves to one or the
/// other. Parallel: the ends that differ become one point. None where each would short a source.
/// The value that comes is the one that the formula gives.
[[nodiscard]] std::vector<Edit> forced_steps(const Network& network, Joining how,
                                             const std::vector<PartId>& parts);

}  // namespace ohmfold

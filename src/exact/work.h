// Counting the work of arithmetic with symbols against the limit in force.
#pragma once

#include <cstdint>

namespace ohmfold {

/// Takes so many units of work from the limit in force; throws BeyondBudget where less is left.
void charge(std::uint64_t units);

}  // namespace ohmfold

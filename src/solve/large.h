// Networks so large that the exact values of all parts would be too long to write.
#pragma once

#include <vector>

#include "ohmfold/trace.h"
#include "solve/flow.h"

namespace ohmfold {

/// Checks every step and, modulo random primes, Ohm's and Kirchhoff's laws in the whole of a case
/// whose values were not all found; `left` holds the flow of the parts that the main reduction has
/// left. Cost: linear in the parts, for each prime.
[[nodiscard]] std::vector<Check> check_large(const CaseTrace& result, const Flow<ExactField>& left);

}  // namespace ohmfold

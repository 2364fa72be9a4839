// What is worth saying about a solved case though it is no warning.
#pragma once

#include <vector>

#include "ohmfold/trace.h"

namespace ohmfold {

/// Batteries that are being charged, and those of several sources that deliver nothing, in file
/// order. A battery of negative voltage counts by the terminal that is in truth positive. Cost:
/// linear.
[[nodiscard]] std::vector<Remark> remarks_of(const CaseTrace& result);

}  // namespace ohmfold

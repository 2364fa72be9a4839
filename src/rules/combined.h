// The edit that series and parallel have in common: several resistors go, one comes.
#pragma once

#include <vector>

#include "ohmfold/network.h"

namespace ohmfold {

/// Puts one resistor from `first` to `second` in place of `parts`, of the value that the formula
/// gives. Requires two or more parts.
[[nodiscard]] Edit combined(const Network& network, std::vector<PartId> parts, PointId first,
                            PointId second, Formula formula);

}  // namespace ohmfold

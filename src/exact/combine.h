// Many resistances joined at once.
#pragma once

#include <vector>

#include "ohmfold/value.h"

namespace ohmfold {

/// The resistance of all `parts` in series: their sum. Requires at least one. Its denominator is a
/// multiple of each of theirs; of two parts, it is the product.
/// Combines neighbours first, then the results, so that long numbers meet long ones: cost near
/// linear in the digits of the result.
[[nodiscard]] Ratio combine_series(std::vector<Ratio> parts);

/// The resistance of all `parts` in parallel. Requires at least one, and none that is zero. Cost as
/// above.
[[nodiscard]] Ratio combine_parallel(std::vector<Ratio> parts);

}  // namespace ohmfold

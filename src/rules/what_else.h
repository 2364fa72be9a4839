// What stands against a rule at a point: something else is joined there.
#pragma once

#include <span>

#include "ohmfold/network.h"

namespace ohmfold {

/// What is joined at `point` besides `parts`: a source rather than another part; `otherwise` where
/// there is nothing.
[[nodiscard]] Fact what_else(const Network& network, PointId point, std::span<const PartId> parts,
                             const Fact& otherwise);

}  // namespace ohmfold

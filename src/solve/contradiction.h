// Circuits that no currents and voltages can satisfy.
#pragma once

#include <optional>

#include "ohmfold/trace.h"

namespace ohmfold {

/// A loop of ideal wires and ideal batteries round which the voltages do not sum to zero, if there
/// is one: an ideal battery across an ideal wire, or unequal ideal batteries in parallel; or a
/// source of current without a way back for its current. Cost: linear.
[[nodiscard]] std::optional<Contradiction> find_contradiction(const Network& start);

}  // namespace ohmfold

// What flows in the parts that a reduction has left: the start of the way back.
#pragma once

#include "ohmfold/trace.h"
#include "solve/flow.h"

namespace ohmfold {

/// Puts current and voltage of a battery and of what it feeds into `flow`: I = E / (R + r); or the
/// current of a source of current and what it feeds: V = J R (its own voltage follows from the
/// potentials). Requires Stop::reduced, short_circuit or open, seen from either.
void drive_left(const Reduction& reduction, Flow<ExactField>& flow);

/// Would the exact values of `parts` parts together stay within `most_bits`? They take about as
/// many bits as the longest of those that are left, for each part. `flow` holds what is left.
[[nodiscard]] bool all_values_fit(const Reduction& reduction, const Flow<ExactField>& flow,
                                  std::size_t parts, std::size_t most_bits);

}  // namespace ohmfold

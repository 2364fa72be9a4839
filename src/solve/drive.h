// What flows in the parts that a reduction has left: the start of the way back.
#pragma once

#include "ohmfold/trace.h"
#include "solve/flow.h"

namespace ohmfold {

/// Puts current and voltage of a battery and of what it feeds into `flow`: I = E / (R + r).
/// Requires Stop::reduced, short_circuit or open, seen from batteries.
void drive_left(const Reduction& reduction, Flow<ExactField>& flow);

}  // namespace ohmfold

// What flows in the parts that a reduction has left: the start of the way back.
#pragma once

#include "ohmfold/trace.h"
#include "solve/flow.h"

namespace ohmfold {

/// Puts current and voltage of a battery and of what it feeds into `flow`: I = E / (R + r); or the
/// current of a source of current and what it feeds: V = J R (its own voltage follows from the
/// potentials). Requires Stop::reduced, short_circuit or open, seen from either.
void drive_left(const Reduction& reduction, Flow<ExactField>& flow);

}  // namespace ohmfold

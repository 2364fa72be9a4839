// The loop that applies rules until one part is left or none fits.
#pragma once

#include "ohmfold/trace.h"

namespace ohmfold {

/// Reduces a network as seen from its sources, recording every step.
///
/// First the clean-up, rule after rule, as stage 1 where there is any. Then series and parallel by
/// stages: all places that can be seen in today's network, in file order, are one stage; what it
/// made is looked at in the next. Only points whose surroundings changed are looked at again, so
/// that the cost is near linear in the parts. With `pairs` each step takes two
/// resistors.
[[nodiscard]] Reduction reduce(Network start, bool pairs = false);

}  // namespace ohmfold

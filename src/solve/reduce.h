// From a network to its reduction: by series and parallel, and by other ways where those stop.
#pragma once

#include "ohmfold/solve.h"
#include "ohmfold/trace.h"

namespace ohmfold {

/// Reduces a network as seen from its sources by series and parallel, recording every step.
///
/// First the clean-up, rule after rule, as stage 1 where there is any. Then series and parallel by
/// stages: all places that can be seen in today's network, in file order, are one stage; what it
/// made is looked at in the next. Only points whose surroundings changed are looked at again, so
/// that the cost is near linear in the parts. With `pairs` each step takes two
/// resistors.
[[nodiscard]] Reduction reduce(Network start, bool pairs = false);

/// The same; then, where one source is left and series and parallel stop, by the way that
/// `options.method` asks for, or that is the shortest (see ways.h). What is left where the way is
/// node-voltage analysis is left to that.
[[nodiscard]] Reduction reduce(Network start, const SolveOptions& options);

/// What kind of network a reduction seen from sources was of.
[[nodiscard]] Kind kind_of(const Reduction& driven);

}  // namespace ohmfold

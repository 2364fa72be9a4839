// A step that makes one battery of several, checked by cuts and loops.
#pragma once

#include "check/step.h"

namespace ohmfold::check {

/// Does the step put one battery in place of several?
[[nodiscard]] bool is_battery_step(const Step& step);

/// The step is right where all batteries taken carry one current whatever the rest is, and every
/// loop keeps its voltage and its resistance:
///   - with the batteries taken out, what is left falls into pieces that the batteries join to a
///     ring, or to a row: then the current law over each piece makes all their currents equal (in a
///     row they are zero), and every loop runs through all of them or through none;
///   - the battery made joins the ends of the first, and the ends of each other one become one;
///   - its voltage is the sum of theirs by their direction in the ring, its internal resistance the
///     sum of theirs.
/// Requires that the parts taken are there, each once. Cost: that of exploring all but the largest
/// piece, and of the additions.
[[nodiscard]] StepFinding check_battery_step(const Network& before, const Step& step);

}  // namespace ohmfold::check

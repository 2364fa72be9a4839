// Which way the batteries of a chain run, as seen from the one that stands for them.
#pragma once

#include "ohmfold/trace.h"

namespace ohmfold {

/// Does the battery `step.takes[index]` run along the one made? `end` is the network at the end of
/// the reduction. Requires a step that makes one battery of several.
[[nodiscard]] inline bool battery_runs_along(const Network& end, const Step& step,
                                             std::size_t index) {
  // The first gave its place to the one made; of each other one the edit kept the two ends.
  const PointId first = index == 0 ? step.adds.front().from : step.merges[2 * (index - 1)];
  return end.from(step.takes[index]) == first;
}

}  // namespace ohmfold

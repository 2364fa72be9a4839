// A way to one part by deltas and stars.
#pragma once

#include <optional>
#include <vector>

#include "solve/reducer.h"

namespace ohmfold {

/// The rewritings of a way, stage by stage; series and parallel run after each.
using Plan = std::vector<std::vector<Reducer::Move>>;

/// A way tried out to where it leads.
struct Trial {
  Reducer reducer;
  Plan plan;
};

/// Delta to star and star to delta until one part is left. Few parts: of the ways with the fewest
/// such steps, among those looked at, the one with the fewest lines, then bits; many parts: point
/// after point is eliminated, the one with the fewest parts first (as in elimination.h), which ends
/// for every network. Nothing where that makes more than `most_made` parts. Requires what `go_on`
/// does.
[[nodiscard]] std::optional<Trial> by_delta_and_star(const Reducer& stuck, std::size_t most_made);

}  // namespace ohmfold

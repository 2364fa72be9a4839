// Which of some points hang together in a network when certain parts are taken out of it.
#pragma once

#include <span>
#include <vector>

#include "ohmfold/network.h"

namespace ohmfold::check {

/// For each group of points a number, equal where a path joins the groups; the points of one group
/// count as joined. Paths run through all living parts but gaps and those in `without`. Requires
/// each point in one group at most.
///
/// The pieces are explored side by side, always the one that has cost least so far, until all but
/// one are known to the end: the cost is about that of all but the largest piece, so that taking
/// links out one after the other costs n log n in all.
[[nodiscard]] std::vector<std::uint32_t> separate(const Network& network,
                                                  std::span<const PartId> without,
                                                  const std::vector<std::vector<PointId>>& groups);

}  // namespace ohmfold::check

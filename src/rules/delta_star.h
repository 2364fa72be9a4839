// Deltas of a network: three resistors, each between two of three points.
#pragma once

#include <vector>

#include "ohmfold/network.h"

namespace ohmfold {

/// The deltas that have a part among `parts`, each once, also where they share parts; at most
/// `most`. Cost: the square of the number of parts at a point, for each part.
[[nodiscard]] std::vector<Place> deltas_with(const Network& network,
                                             const std::vector<PartId>& parts, std::size_t most);

}  // namespace ohmfold

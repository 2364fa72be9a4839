// With which sign each current stands in the current law at a point.
#include "views/cut_signs.h"

#include <algorithm>

namespace ohmfold::views {

std::optional<std::vector<bool>> cut_signs(const Network& network, PartId part,
                                           std::span<const PartId> others) {
  for (const PointId point : {network.from(part), network.to(part)}) {
    const bool all_meet = std::all_of(others.begin(), others.end(), [&](PartId other) {
      return (network.from(other) == point) != (network.to(other) == point);
    });
    if (!all_meet) continue;
    // What arrives through `part` leaves through the others, or the other way round: a current that
    // points as that of `part` does is added.
    const bool arrives = network.to(part) == point;
    std::vector<bool> subtracted;
    for (const PartId other : others) {
      subtracted.push_back((network.from(other) == point) != arrives);
    }
    return subtracted;
  }
  return std::nullopt;
}

}  // namespace ohmfold::views

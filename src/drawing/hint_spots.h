// Where points lie when the file says so for some of them.
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "drawing/layout.h"

namespace ohmfold::drawing {

/// What hints are rounded to: so many units to a step of the file.
inline constexpr int kStepOfHints = 2 * kCell;
inline constexpr int kLattice = kCell / 2;

/// Which points of a drawing the parts join, by number of the point.
using Joined = std::vector<std::pair<std::uint32_t, std::uint32_t>>;

/// Spots in steps of the lattice, y downwards, the least x and y 0: those with a hint at their
/// place, others in the middle between their neighbours or beside them. Nothing where a place is no
/// number, where two points are at one place, or where points are farther apart than anybody would
/// draw.
[[nodiscard]] std::optional<std::vector<Spot>> hinted_spots(const std::vector<PointId>& points,
                                                            const Joined& joined,
                                                            const Network& network,
                                                            const std::vector<PlaceHint>& hints);

}  // namespace ohmfold::drawing

// Turning symbols onto the direction of their lead, and the decimals that come of it.
#pragma once

#include <cstdint>
#include <string>

#include "drawing/geometry.h"

namespace ohmfold::drawing {

/// Thousandths of a unit.
using Milli = std::int64_t;
inline constexpr Milli kMilli = 1000;

struct FineSpot {
  Milli x = 0, y = 0;

  friend bool operator==(const FineSpot&, const FineSpot&) = default;
};

[[nodiscard]] constexpr FineSpot fine(Spot spot) {
  return {spot.x * kMilli, spot.y * kMilli};
}

/// The direction of a lead: its cosine and sine in thousandths, from an integer square root.
struct Turn {
  Milli cosine = kMilli, sine = 0;
};

/// The turn from "to the right" to this direction. A direction without a length is taken as that.
[[nodiscard]] Turn turn_to(Spot direction);

/// Where `local`, given with x along the direction and y to its right hand, lies once it is turned
/// and moved to `middle`.
[[nodiscard]] FineSpot placed(FineSpot local, Spot middle, Turn turn);

/// "12", "-0.5", "7.071": at most three decimals, none that are not needed, and no "-0".
[[nodiscard]] std::string decimal(Milli value);

}  // namespace ohmfold::drawing

// Spots, lines and boxes of a drawing, in whole units; y counts downwards.
#pragma once

#include <compare>
#include <vector>

namespace ohmfold::drawing {

struct Spot {
  int x = 0, y = 0;

  friend auto operator<=>(const Spot&, const Spot&) = default;
};

[[nodiscard]] constexpr Spot operator+(Spot a, Spot b) {
  return {a.x + b.x, a.y + b.y};
}
[[nodiscard]] constexpr Spot operator-(Spot a, Spot b) {
  return {a.x - b.x, a.y - b.y};
}

/// A straight line between two different spots.
struct Segment {
  Spot from, to;

  friend bool operator==(const Segment&, const Segment&) = default;
};

/// Corners in order, neighbours different; at least two.
using Path = std::vector<Spot>;

/// All spots with min.x <= x <= max.x and min.y <= y <= max.y.
struct Box {
  Spot min, max;

  friend bool operator==(const Box&, const Box&) = default;
};

}  // namespace ohmfold::drawing

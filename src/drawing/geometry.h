// Spots, lines and boxes of a drawing, in whole units; y counts downwards.
#pragma once

#include <compare>
#include <cstdint>
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

/// Positive where `b` is at the right of `a`, as seen with y downwards; 0 where they are in line.
[[nodiscard]] constexpr std::int64_t cross(Spot a, Spot b) {
  return std::int64_t{a.x} * b.y - std::int64_t{a.y} * b.x;
}
[[nodiscard]] constexpr std::int64_t dot(Spot a, Spot b) {
  return std::int64_t{a.x} * b.x + std::int64_t{a.y} * b.y;
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

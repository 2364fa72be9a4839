// Whole-number steps along a direction.
#pragma once

#include "drawing/geometry.h"
#include "drawing/whole.h"

namespace ohmfold::drawing {

[[nodiscard]] constexpr bool is_upright(Spot direction) {
  return direction.x == 0;
}
[[nodiscard]] constexpr bool is_lying(Spot direction) {
  return direction.y == 0;
}

[[nodiscard]] constexpr bool is_slanted(Spot direction) {
  return !is_upright(direction) && !is_lying(direction);
}

/// So far along the direction. Requires a direction other than zero.
[[nodiscard]] constexpr Spot stride(Spot direction, int length) {
  if (direction.x == 0) return {0, direction.y > 0 ? length : -length};
  if (direction.y == 0) return {direction.x > 0 ? length : -length, 0};
  const std::int64_t x = direction.x;
  const std::int64_t y = direction.y;
  const std::int64_t whole = square_root(x * x + y * y);
  return {static_cast<int>(x * length / whole), static_cast<int>(y * length / whole)};
}

/// A quarter turn to the right, as seen with y downwards.
[[nodiscard]] constexpr Spot right_of(Spot direction) {
  return {-direction.y, direction.x};
}

}  // namespace ohmfold::drawing

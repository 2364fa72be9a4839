// Whole-number steps along a direction.
#pragma once

#include "drawing/geometry.h"

namespace ohmfold::drawing {

[[nodiscard]] constexpr bool is_upright(Spot direction) {
  return direction.x == 0;
}
[[nodiscard]] constexpr bool is_lying(Spot direction) {
  return direction.y == 0;
}

/// The whole part of the square root. Requires value >= 0.
[[nodiscard]] constexpr long long square_root(long long value) {
  long long root = 0;
  for (long long bit = 1LL << 31; bit > 0; bit /= 2) {
    if ((root + bit) * (root + bit) <= value) root += bit;
  }
  return root;
}

/// So far along the direction. Requires a direction other than zero.
[[nodiscard]] constexpr Spot stride(Spot direction, int length) {
  if (direction.x == 0) return {0, direction.y > 0 ? length : -length};
  if (direction.y == 0) return {direction.x > 0 ? length : -length, 0};
  const long long x = direction.x;
  const long long y = direction.y;
  const long long whole = square_root(x * x + y * y);
  return {static_cast<int>(x * length / whole), static_cast<int>(y * length / whole)};
}

/// A quarter turn to the right, as seen with y downwards.
[[nodiscard]] constexpr Spot right_of(Spot direction) {
  return {-direction.y, direction.x};
}

}  // namespace ohmfold::drawing

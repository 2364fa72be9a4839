// Whole-number arithmetic that drawings need in place of floating point.
#pragma once

#include <cstdint>

namespace ohmfold::drawing {

/// The whole part of the square root. Requires 0 <= value < 2^62.
[[nodiscard]] constexpr std::int64_t square_root(std::int64_t value) {
  std::int64_t root = 0;
  for (std::int64_t bit = std::int64_t{1} << 31; bit > 0; bit /= 2) {
    if ((root + bit) * (root + bit) <= value) root += bit;
  }
  return root;
}

/// The nearest whole number, halves away from zero. Requires a divisor other than 0.
[[nodiscard]] constexpr std::int64_t rounded_quotient(std::int64_t dividend, std::int64_t divisor) {
  if (divisor < 0) return rounded_quotient(-dividend, -divisor);
  const std::int64_t half = divisor / 2;
  return dividend >= 0 ? (dividend + half) / divisor : -((half - dividend) / divisor);
}

}  // namespace ohmfold::drawing

// Turning symbols onto the direction of their lead, without floating point.
#include "drawing/turned.h"

#include <cstdlib>

#include "drawing/whole.h"

namespace ohmfold::drawing {

Turn turn_to(Spot direction) {
  if (direction.y == 0) return {direction.x < 0 ? -kMilli : kMilli, 0};
  if (direction.x == 0) return {0, direction.y < 0 ? -kMilli : kMilli};
  // Long enough for the thousandths, and so short that the squares fit.
  constexpr std::int64_t kLongest = std::int64_t{1} << 30;
  std::int64_t x = direction.x;
  std::int64_t y = direction.y;
  while (std::abs(x) < kLongest / 2 && std::abs(y) < kLongest / 2) {
    x *= 2;
    y *= 2;
  }
  while (std::abs(x) > kLongest || std::abs(y) > kLongest) {
    x /= 2;
    y /= 2;
  }
  const std::int64_t length = square_root(x * x + y * y);
  return {rounded_quotient(x * kMilli, length), rounded_quotient(y * kMilli, length)};
}

FineSpot placed(FineSpot local, Spot middle, Turn turn) {
  const Milli x = rounded_quotient(local.x * turn.cosine - local.y * turn.sine, kMilli);
  const Milli y = rounded_quotient(local.x * turn.sine + local.y * turn.cosine, kMilli);
  return {middle.x * kMilli + x, middle.y * kMilli + y};
}

std::string decimal(Milli value) {
  const bool negative = value < 0;
  const Milli size = negative ? -value : value;
  std::string written = std::to_string(size / kMilli);
  if (const Milli rest = size % kMilli; rest != 0) {
    std::string decimals = std::to_string(rest);
    decimals.insert(0, 3 - decimals.size(), '0');
    decimals.resize(decimals.find_last_not_of('0') + 1);
    written += '.' + decimals;
  }
  return negative ? '-' + written : written;
}

}  // namespace ohmfold::drawing

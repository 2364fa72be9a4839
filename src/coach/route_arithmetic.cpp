// Arithmetic with numbers of a person's own.
#include "coach/route_arithmetic.h"

#include <algorithm>
#include <array>

namespace ohmfold {
namespace {

std::vector<std::size_t> joined(const Route& a, const Route& b) {
  std::vector<std::size_t> claims = a.claims;
  claims.insert(claims.end(), b.claims.begin(), b.claims.end());
  std::sort(claims.begin(), claims.end());
  claims.erase(std::unique(claims.begin(), claims.end()), claims.end());
  return claims;
}

// From the least to the largest; with symbols, whose order may be open, the value alone.
Range hull(const std::array<Number, 4>& ends, const Number& value) {
  Range range = Range::of(ends.front());
  for (const Number& end : ends) {
    if (end.is_symbolic()) return Range::of(value);
    range.low = std::min(range.low, end);
    range.high = std::max(range.high, end);
  }
  return range;
}

}  // namespace

Route exactly(const Number& number) {
  return {number, Range::of(number), {}};
}

Route route_of(const OwnValue& own) {
  return {own.number, own.range, own.claims};
}

Route size_of(Route route) {
  if (route.value.is_symbolic() || !route.value.is_negative()) return route;
  route.value = -route.value;
  route.range = {-route.range.high, -route.range.low};
  return route;
}

Route operator+(const Route& a, const Route& b) {
  return {
      a.value + b.value, {a.range.low + b.range.low, a.range.high + b.range.high}, joined(a, b)};
}

Route operator-(const Route& a, const Route& b) {
  return {
      a.value - b.value, {a.range.low - b.range.high, a.range.high - b.range.low}, joined(a, b)};
}

Route operator*(const Route& a, const Route& b) {
  const Number value = a.value * b.value;
  if (a.range.is_point() && b.range.is_point()) return {value, Range::of(value), joined(a, b)};
  return {value,
          hull({a.range.low * b.range.low, a.range.low * b.range.high, a.range.high * b.range.low,
                a.range.high * b.range.high},
               value),
          joined(a, b)};
}

std::optional<Route> quotient(const Route& a, const Route& b) {
  if (b.value.is_zero()) return std::nullopt;
  if (!b.value.is_symbolic() && !b.range.low.is_positive() && !b.range.high.is_negative()) {
    return std::nullopt;
  }
  const bool plain = b.value.is_symbolic() || b.range.is_point();
  const Number value = Number(1) / b.value;
  Route inverse{value, plain ? Range::of(value) : Range{1 / b.range.high, 1 / b.range.low},
                b.claims};
  return a * inverse;
}

}  // namespace ohmfold

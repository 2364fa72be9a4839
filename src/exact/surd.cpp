// Arithmetic in a field of rationals with one square root, and its numbers against rationals.
#include "ohmfold/surd.h"

#include <cln/integer.h>

#include <algorithm>
#include <vector>

#include "exact/terms.h"
#include "ohmfold/decimal.h"
#include "ohmfold/error.h"
#include "ohmfold/symbolic.h"

namespace ohmfold {
namespace {

Number common_radicand(const Surd& a, const Surd& b) {
  if (a.is_rational()) return b.radicand();
  ensure(b.is_rational() || a.radicand() == b.radicand(), "two different square roots meet");
  return a.radicand();
}

Number power_of_ten(std::size_t power) {
  return Number(cln::expt_pos(cln::cl_I(10), cln::cl_I(power)));
}

/// The whole number below a rational that is not negative.
cln::cl_I floor_of(const Number& number) {
  return cln::floor1(number.numerator(), number.denominator());
}

Surd powered(const Surd& base, std::size_t power) {
  Surd result(Number(1));
  for (std::size_t i = 0; i < power; ++i) result = result * base;
  return result;
}

Surd polynomial_at(const Number& polynomial, std::span<const SurdValue> values) {
  std::vector<std::string> symbols;
  symbols.reserve(values.size());
  for (const auto& [symbol, value] : values) symbols.push_back(symbol);
  Surd sum;
  for (const Term& term : terms_of(polynomial, symbols)) {
    Surd product(term.coefficient);
    for (std::size_t i = 0; i < values.size(); ++i) {
      product = product * powered(values[i].second, term.powers[i]);
    }
    sum = sum + product;
  }
  return sum;
}

}  // namespace

Surd::Surd(Number rational, Number factor, Number radicand)
    : rational_(std::move(rational)), factor_(std::move(factor)), radicand_(std::move(radicand)) {
  if (factor_.is_zero()) radicand_ = Number(1);
}

Surd Surd::root_of(const Number& square) {
  ensure(!square.is_symbolic() && !square.is_negative(), "no square root of this number");
  // √(n/m) = √(n m)/m
  cln::cl_I inside = square.numerator() * square.denominator();
  cln::cl_I outside = 1;
  for (int root = 2; root <= kMostSquareRoot && root * root <= inside; ++root) {
    while (cln::zerop(cln::mod(inside, root * root))) {
      inside = cln::exquo(inside, root * root);
      outside = outside * root;
    }
  }
  cln::cl_I whole;
  const Number below(square.denominator());
  if (cln::sqrtp(inside, &whole)) return {Number(outside * whole) / below};
  return {Number(0), Number(outside) / below, Number(inside)};
}

Sign Surd::sign() const {
  if (is_rational() || rational_.sign() == factor_.sign() || rational_.is_zero()) {
    return is_rational() ? rational_.sign() : factor_.sign();
  }
  const Number root_square = factor_ * factor_ * radicand_;
  return rational_ * rational_ > root_square ? rational_.sign() : factor_.sign();
}

Surd operator+(const Surd& a, const Surd& b) {
  return {a.rational_ + b.rational_, a.factor_ + b.factor_, common_radicand(a, b)};
}

Surd operator*(const Surd& a, const Surd& b) {
  const Number radicand = common_radicand(a, b);
  return {a.rational_ * b.rational_ + a.factor_ * b.factor_ * radicand,
          a.rational_ * b.factor_ + a.factor_ * b.rational_, radicand};
}

Surd operator/(const Surd& a, const Surd& b) {
  // By the conjugate p − q √d, since (p + q √d)(p − q √d) is rational.
  const Number norm = b.rational_ * b.rational_ - b.factor_ * b.factor_ * b.radicand_;
  const Surd conjugate{b.rational_ / norm, -b.factor_ / norm, b.radicand_};
  return a * conjugate;
}

std::pair<Number, Number> bounds(const Surd& number, const Number& width) {
  if (number.is_rational()) return {number.rational(), number.rational()};
  // √d lies within 1/n for the whole part of √(d n²), so q √d within |q|/n.
  const Number size = abs(number.factor());
  const Number n = Number(floor_of(size / width) + 1);
  const cln::cl_I scaled = number.radicand().numerator() * n.numerator() * n.numerator();
  cln::cl_I root;
  cln::isqrt(scaled, &root);
  const Number low = Number(root) / n;
  const Number high = Number(root + 1) / n;
  const bool rises = number.factor().is_positive();
  return {number.rational() + number.factor() * (rises ? low : high),
          number.rational() + number.factor() * (rises ? high : low)};
}

Number rounding_like(const Surd& number, int figures) {
  if (number.is_rational()) return number.rational();
  // An irrational number is no boundary between two rounded values, so this ends.
  for (std::size_t digits = 16;; digits *= 2) {
    const auto [low, high] = bounds(number, Number(1) / power_of_ten(digits));
    const bool same_sign = low.sign() == high.sign() && !low.is_zero();
    if (same_sign && round_to_figures(low, figures) == round_to_figures(high, figures)) return low;
  }
}

std::optional<Surd> value_at(const Number& number, std::span<const SurdValue> values) {
  const Surd below = polynomial_at(denominator_of(number), values);
  if (below.is_zero()) return std::nullopt;
  return polynomial_at(numerator_of(number), values) / below;
}

}  // namespace ohmfold

// Exact numbers of the form p + q √d: what a quadratic equation can have for a solution.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <utility>

#include "ohmfold/value.h"

namespace ohmfold {

/// p + q √d with rationals p and q. Where it is irrational, q is not zero and d is a whole number
/// above 1 that is no square; where it is rational, q is 0 and d is 1. Square factors of d up to
/// that of kMostSquareRoot are taken out of the root.
class Surd {
 public:
  Surd() = default;
  Surd(Number rational)  // NOLINT(google-explicit-constructor): a rational is such a number
      : rational_(std::move(rational)) {}
  /// The positive square root. Requires a rational that is not negative.
  static Surd root_of(const Number& square);

  static constexpr int kMostSquareRoot = 1'000;

  [[nodiscard]] const Number& rational() const { return rational_; }
  [[nodiscard]] const Number& factor() const { return factor_; }
  [[nodiscard]] const Number& radicand() const { return radicand_; }
  [[nodiscard]] bool is_rational() const { return factor_.is_zero(); }
  [[nodiscard]] bool is_zero() const { return is_rational() && rational_.is_zero(); }
  /// Decided exactly: p against q √d by their squares.
  [[nodiscard]] Sign sign() const;

  friend Surd operator-(const Surd& a) { return {-a.rational_, -a.factor_, a.radicand_}; }
  // Require that of two irrational ones both have the same radicand.
  friend Surd operator+(const Surd& a, const Surd& b);
  friend Surd operator-(const Surd& a, const Surd& b) { return a + -b; }
  friend Surd operator*(const Surd& a, const Surd& b);
  /// Requires b other than zero.
  friend Surd operator/(const Surd& a, const Surd& b);
  friend bool operator==(const Surd& a, const Surd& b) { return (a - b).is_zero(); }

 private:
  Surd(Number rational, Number factor, Number radicand);

  Number rational_;
  Number factor_;
  Number radicand_{1};
};

/// Two rationals that the number lies between, or is: no further apart than `width`. Requires a
/// positive width.
[[nodiscard]] std::pair<Number, Number> bounds(const Surd& number, const Number& width);

/// A rational so near that it rounds like the number itself at up to so many significant figures.
[[nodiscard]] Number rounding_like(const Surd& number, int figures);

/// A symbol and the number that it stands for.
using SurdValue = std::pair<std::string, Surd>;

/// A number with numbers put in for all of its symbols; nothing where its denominator vanishes.
/// Requires that of the values that are irrational all have the same radicand.
[[nodiscard]] std::optional<Surd> value_at(const Number& number, std::span<const SurdValue> values);

}  // namespace ohmfold

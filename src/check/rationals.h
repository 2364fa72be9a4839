// The rationals as a field, with the same operations as the residues modulo a prime.
#pragma once

#include <string>

#include "ohmfold/value.h"

namespace ohmfold::check {

/// Exact arithmetic. Every check is written once, over a field: this one or PrimeField.
struct Rationals {
  using Value = Number;

  [[nodiscard]] static Number from(const Number& number) { return number; }
  [[nodiscard]] static Number from(const Ratio& ratio) { return ratio.lowest_terms(); }
  [[nodiscard]] static Number add(const Number& a, const Number& b) { return a + b; }
  [[nodiscard]] static Number subtract(const Number& a, const Number& b) { return a - b; }
  [[nodiscard]] static Number multiply(const Number& a, const Number& b) { return a * b; }
  /// Requires b other than zero (InternalError otherwise).
  [[nodiscard]] static Number divide(const Number& a, const Number& b) { return a / b; }
  /// For reports.
  [[nodiscard]] static std::string text(const Number& number) { return number.to_string(); }
};

}  // namespace ohmfold::check

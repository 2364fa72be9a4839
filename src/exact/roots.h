// Positive zeros of a polynomial in one symbol.
#pragma once

#include <cstddef>
#include <vector>

#include "ohmfold/value.h"

namespace ohmfold {

struct PositiveZeros {
  std::vector<Number> rational;  ///< each once, ascending
  bool all = true;               ///< there are no others
};

/// The positive zeros of the polynomial whose coefficients stand in the order of rising powers.
/// Counted by Sturm's theorem and separated by bisection; a zero is recognised as the fraction with
/// the smallest denominator near it, which is proved by putting it in. Requires rationals, not all
/// zero. Above degree 24, or with coefficients of more than 2,000 bits, none is looked for.
[[nodiscard]] PositiveZeros positive_zeros(std::vector<Number> coefficients);

/// The polynomial's value.
[[nodiscard]] Number value_at(const std::vector<Number>& coefficients, const Number& at);

}  // namespace ohmfold

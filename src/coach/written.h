// A value as it was written against exact numbers: agreement, the range it can stand for, figures.
#pragma once

#include <string>

#include "ohmfold/work.h"

namespace ohmfold {

/// All numbers from low to high.
struct Range {
  Number low, high;

  [[nodiscard]] static Range of(const Number& number) { return {number, number}; }
  [[nodiscard]] bool is_point() const { return low == high; }
  [[nodiscard]] bool meets(const Range& other) const {
    return low <= other.high && other.low <= high;
  }
};

/// Is it `exact` rounded to its last written digit? A fraction, or a value with symbols, agrees
/// only where it is equal.
[[nodiscard]] bool agrees(const WrittenValue& written, const Number& exact);

/// What it can stand for: half a unit of its last digit either way; a fraction, itself.
[[nodiscard]] Range range_of(const WrittenValue& written);

/// How many significant figures it has; trailing zeros of a whole number count. 0 for what is not
/// rounded: a fraction, or a value with symbols.
[[nodiscard]] int figures_of(const WrittenValue& written);

/// Is it `exact` cut after its last digit, where it had to be rounded up?
[[nodiscard]] bool is_cut_off(const WrittenValue& written, const Number& exact);

/// A written value to compare with: decimal digits that have at least as many figures as this.
[[nodiscard]] bool is_precise(const WrittenValue& written, int figures);

/// The same value with its sign turned.
[[nodiscard]] WrittenValue negated(const WrittenValue& written);

}  // namespace ohmfold

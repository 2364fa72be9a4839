// Numbers without a unit for the math mode of LaTeX: fractions, and quotients of polynomials.
#pragma once

#include <string>
#include <string_view>

#include "handout/latex_math.h"
#include "ohmfold/value.h"

namespace ohmfold::handout {

/// A fraction with a bar; a sum of symbols in brackets. Long sums are stacked.
[[nodiscard]] MathText math_number(const Number& number);

/// A number as symbolic.h writes it on one line, with breaks allowed before its terms.
[[nodiscard]] std::string polynomial_line(std::string_view text);

/// The pieces one after another, or in a stack of rows where they are wider than `room`.
[[nodiscard]] MathText joined_or_stacked(const std::vector<MathText>& pieces, int room);

/// Brackets as high as what stands within.
[[nodiscard]] MathText bracketed(const MathText& inner);

}  // namespace ohmfold::handout

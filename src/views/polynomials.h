// Polynomials in unknowns, and roots of quadratic equations, as formulas.
#pragma once

#include <string>
#include <vector>

#include "ohmfold/surd.h"
#include "views/formula.h"

namespace ohmfold::views {

/// A number without unit; its sign is written as a minus sign.
[[nodiscard]] Expression count(const Number& number);

/// "R3² − 10 · R3 + 16". Requires a denominator free of the symbols.
[[nodiscard]] Expression polynomial_expression(const Number& polynomial,
                                               const std::vector<std::string>& symbols);

/// "12 / (R3 + 4)"
[[nodiscard]] Expression quotient_expression(const Number& number,
                                             const std::vector<std::string>& symbols);

/// "7/2 + √33/2"
[[nodiscard]] Expression surd_expression(const Surd& value);

}  // namespace ohmfold::views

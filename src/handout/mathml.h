// Formulas as MathML Core, for the inside of an HTML page.
#pragma once

#include <string>
#include <vector>

#include "views/formula.h"

namespace ohmfold::handout {

/// An expression as the inside of a math element: one element. Fractions are stacked.
[[nodiscard]] std::string mathml(const views::Expression& expression);

/// An equation as math elements in reading order: a line may break before each of them. Each
/// relation begins one, and so does each term of a sum that has many.
[[nodiscard]] std::vector<std::string> mathml_pieces(const views::Equation& equation);

}  // namespace ohmfold::handout

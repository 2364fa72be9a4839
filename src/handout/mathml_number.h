// Numbers and amounts as MathML Core.
#pragma once

#include <string>

#include "views/words.h"

namespace ohmfold::handout {

/// A number or an expression in symbols, as one element; fractions are stacked.
[[nodiscard]] std::string mathml_number(const Number& number);

/// Is it written as a sum, so that what stands beside it needs brackets round it?
[[nodiscard]] bool number_is_sum(const Number& number);

/// Number and unit as one element.
[[nodiscard]] std::string mathml_amount(const views::Amount& amount);

}  // namespace ohmfold::handout

// The greatest common divisor of two polynomials.
#pragma once

#include "exact/polynomial.h"

namespace ohmfold {

/// The greatest common divisor, with a positive leading coefficient, and both polynomials divided
/// by it.
struct CommonDivisor {
  Polynomial divisor, first, second;
};

/// Requires polynomials other than zero. By evaluation at large whole numbers and reading the
/// result in that base (Char, Geddes and Gonnet, J. Symbolic Comput. 7 (1989) 31, from memory): a
/// divisor found so is proved by dividing. Throws BeyondBudget where the whole numbers would be too
/// long, or the limit of work is reached. Cost: that of the greatest common divisor of whole
/// numbers as long as the coefficients times the degrees in all symbols.
[[nodiscard]] CommonDivisor common_divisor(const Polynomial& a, const Polynomial& b);

}  // namespace ohmfold

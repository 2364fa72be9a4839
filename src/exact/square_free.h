// A polynomial as a product of powers, for people to read.
#pragma once

#include <vector>

#include "exact/polynomial.h"

namespace ohmfold {

struct PolynomialPower {
  Polynomial base;
  unsigned exponent = 1;
};

/// The polynomial as a product of powers of different polynomials, by rising exponent: 1 + 2 r + r²
/// is (r + 1)². Factors of the same exponent stay together. Requires coefficients without a common
/// divisor, and no symbol that divides all terms. A polynomial that is long or of a high degree is
/// left as it is. By greatest common divisors with its derivatives (Musser, J. ACM 22 (1975) 291,
/// from memory).
[[nodiscard]] std::vector<PolynomialPower> square_free(const Polynomial& polynomial);

}  // namespace ohmfold

// A quotient of two polynomials in named symbols, in lowest terms.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "exact/polynomial.h"
#include "ohmfold/value.h"

namespace ohmfold {

/// The names of symbols, in the order of bytes; a polynomial's symbol i is names[i].
using SymbolNames = std::shared_ptr<const std::vector<std::string>>;

/// One form belongs to each value: numerator and denominator have no common divisor but 1 and -1
/// (whole numbers included), the leading coefficient of the denominator is positive, every name
/// occurs, and at least one does.
struct RationalFunction {
  SymbolNames names;
  Polynomial numerator, denominator;
};

/// A number as two polynomials, of whatever form.
struct Quotient {
  SymbolNames names;
  Polynomial numerator, denominator;
};
[[nodiscard]] Quotient quotient_of(const Number& number);

/// The number in its one form, from a numerator and a denominator without common divisor.
[[nodiscard]] Number from_lowest_terms(const Quotient& quotient);

/// The polynomial without the greatest positive whole number that divides its coefficients.
/// Requires a polynomial with whole coefficients other than zero.
[[nodiscard]] Number primitive_part(const Number& polynomial);

/// The number of the polynomial alone.
[[nodiscard]] Number from_polynomial(const SymbolNames& names, const Polynomial& polynomial);

}  // namespace ohmfold

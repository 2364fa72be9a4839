// Polynomials in a few symbols with whole coefficients: what numerators and denominators are made
// of.
//
// A polynomial has one form: terms in falling order (by degree, then by the exponents, the first
// symbol counting most), none with coefficient zero. Nothing depends on addresses or on the order
// of making, so that what is printed is the same in every run.
#pragma once

#include <cln/integer.h>

#include <array>
#include <compare>
#include <cstdint>
#include <optional>
#include <vector>

#include "ohmfold/symbolic.h"

namespace ohmfold {

/// A product of powers of symbols, which are numbered from 0.
struct Monomial {
  std::uint32_t degree = 0;
  std::array<std::uint16_t, kMostSymbols> exponents{};

  friend auto operator<=>(const Monomial&, const Monomial&) = default;
};

class Polynomial {
 public:
  struct Term {
    Monomial monomial;
    cln::cl_I coefficient;
  };

  Polynomial() = default;
  explicit Polynomial(const cln::cl_I& constant);
  static Polynomial variable(std::size_t index);
  /// Terms in any order, of different monomials; those with coefficient zero are left out.
  static Polynomial of(std::vector<Term> terms);

  /// In falling order.
  [[nodiscard]] const std::vector<Term>& terms() const { return terms_; }
  [[nodiscard]] bool is_zero() const { return terms_.empty(); }
  [[nodiscard]] bool is_constant() const {
    return terms_.empty() || terms_.front().monomial.degree == 0;
  }
  [[nodiscard]] bool is_one() const;
  /// The coefficient of the highest term. Requires a polynomial other than zero.
  [[nodiscard]] const cln::cl_I& leading() const { return terms_.front().coefficient; }
  /// The coefficient of the term without symbols.
  [[nodiscard]] cln::cl_I constant() const;
  /// The greatest whole number that divides all coefficients, positive; 0 for zero.
  [[nodiscard]] cln::cl_I content() const;
  /// The highest exponent of each symbol.
  [[nodiscard]] std::array<std::uint16_t, kMostSymbols> degrees() const;
  /// The greatest product of symbols that divides all terms.
  [[nodiscard]] Monomial common_monomial() const;
  /// Bits of all coefficients, and a word for each term.
  [[nodiscard]] std::size_t bits() const;

  friend Polynomial operator-(const Polynomial& a);
  friend Polynomial operator+(const Polynomial& a, const Polynomial& b);
  friend Polynomial operator-(const Polynomial& a, const Polynomial& b);
  friend Polynomial operator*(const Polynomial& a, const Polynomial& b);
  friend bool operator==(const Polynomial& a, const Polynomial& b);

  /// Every coefficient divided. Requires a divisor of all of them.
  [[nodiscard]] Polynomial over(const cln::cl_I& divisor) const;
  /// Every term divided. Requires a divisor of all of them.
  [[nodiscard]] Polynomial over(const Monomial& divisor) const;
  /// Every term multiplied.
  [[nodiscard]] Polynomial times(const Term& factor) const;

 private:
  explicit Polynomial(std::vector<Term> terms) : terms_(std::move(terms)) {}

  std::vector<Term> terms_;
};

/// dividend / divisor where that is a polynomial with whole coefficients, otherwise nothing.
/// Requires a divisor other than zero.
[[nodiscard]] std::optional<Polynomial> quotient(const Polynomial& dividend,
                                                 const Polynomial& divisor);

}  // namespace ohmfold

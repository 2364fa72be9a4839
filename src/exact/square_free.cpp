// Powers are found where a polynomial and its derivatives have a common divisor.
#include "exact/square_free.h"

#include <algorithm>

#include "exact/polynomial_gcd.h"

namespace ohmfold {
namespace {

/// What is looked at: more would not be read anyway.
bool is_short(const Polynomial& polynomial) {
  constexpr std::size_t kMostTerms = 40;
  constexpr std::size_t kMostDegree = 10;
  constexpr std::size_t kMostNames = 3;
  constexpr std::size_t kMostBits = 64;
  const auto degrees = polynomial.degrees();
  const auto names = std::count_if(degrees.begin(), degrees.end(),
                                   [](std::uint16_t degree) { return degree > 0; });
  return polynomial.terms().size() <= kMostTerms &&
         polynomial.terms().front().monomial.degree <= kMostDegree &&
         static_cast<std::size_t>(names) <= kMostNames &&
         std::all_of(polynomial.terms().begin(), polynomial.terms().end(),
                     [](const Polynomial::Term& term) {
                       return cln::integer_length(term.coefficient) <= kMostBits;
                     });
}

Polynomial derivative(const Polynomial& polynomial, std::size_t symbol) {
  std::vector<Polynomial::Term> terms;
  for (Polynomial::Term term : polynomial.terms()) {
    std::uint16_t& exponent = term.monomial.exponents.at(symbol);
    if (exponent == 0) continue;
    term.coefficient = term.coefficient * static_cast<int>(exponent);
    --exponent;
    --term.monomial.degree;
    terms.push_back(std::move(term));
  }
  return Polynomial::of(std::move(terms));
}

/// Each factor with one less than its exponent.
Polynomial repeated(const Polynomial& polynomial) {
  Polynomial common = polynomial;
  const auto degrees = polynomial.degrees();
  for (std::size_t i = 0; i < degrees.size() && !common.is_constant(); ++i) {
    if (degrees.at(i) == 0) continue;
    common = common_divisor(common, derivative(polynomial, i)).divisor;
  }
  return common.over(common.content());
}

}  // namespace

std::vector<PolynomialPower> square_free(const Polynomial& polynomial) {
  if (polynomial.terms().size() < 3 || !is_short(polynomial)) return {{polynomial, 1}};
  Polynomial rest = repeated(polynomial);
  if (rest.is_constant()) return {{polynomial, 1}};
  std::vector<PolynomialPower> powers;
  Polynomial distinct = *quotient(polynomial, rest);
  for (unsigned exponent = 1; !distinct.is_constant(); ++exponent) {
    // `distinct` has each factor of this exponent or a higher one once, `rest` those above.
    const CommonDivisor higher = common_divisor(distinct, rest);
    if (!higher.first.is_constant()) powers.push_back({higher.first, exponent});
    distinct = higher.divisor;
    rest = higher.second;
  }
  if (!distinct.is_one()) powers.push_back({distinct, 1});  // a sign
  return powers;
}

}  // namespace ohmfold

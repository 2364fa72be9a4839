// Taking numbers with symbols apart, and putting values in.
#include "ohmfold/symbolic.h"

#include <algorithm>
#include <array>
#include <cstdint>

#include "exact/rational_function.h"
#include "exact/roots.h"

namespace ohmfold {
std::vector<std::string> symbols_of(const Number& number) {
  if (!number.is_symbolic()) return {};
  return *number.function().names;
}

Number numerator_of(const Number& number) {
  const Quotient quotient = quotient_of(number);
  return from_polynomial(quotient.names, quotient.numerator);
}

Number denominator_of(const Number& number) {
  const Quotient quotient = quotient_of(number);
  return from_polynomial(quotient.names, quotient.denominator);
}

std::vector<Number> coefficients(const Number& polynomial, std::string_view symbol) {
  const std::vector<std::string> names = symbols_of(polynomial);
  const auto at = std::find(names.begin(), names.end(), symbol);
  if (at == names.end()) return {polynomial};
  const auto index = static_cast<std::size_t>(at - names.begin());
  const RationalFunction& function = polynomial.function();
  ensure(function.denominator.degrees().at(index) == 0, "no polynomial in this symbol");

  std::vector<std::vector<Polynomial::Term>> parts(function.numerator.degrees().at(index) + 1U);
  for (Polynomial::Term term : function.numerator.terms()) {
    const std::uint16_t power = std::exchange(term.monomial.exponents.at(index), 0);
    term.monomial.degree -= power;
    parts.at(power).push_back(std::move(term));
  }
  const Number below = from_polynomial(function.names, function.denominator);
  std::vector<Number> result;
  for (std::vector<Polynomial::Term>& part : parts) {
    result.push_back(from_polynomial(function.names, Polynomial::of(std::move(part))) / below);
  }
  return result;
}

std::size_t count_terms(const Number& number) {
  if (!number.is_symbolic()) return number.is_integer() ? 1 : 2;
  return number.function().numerator.terms().size() + number.function().denominator.terms().size();
}

std::pair<Number, Number> positive_and_negative_terms(const Number& polynomial) {
  const Quotient quotient = quotient_of(polynomial);
  ensure(quotient.denominator.is_one(), "no polynomial with whole coefficients");
  std::vector<Polynomial::Term> positive, negative;
  for (const Polynomial::Term& term : quotient.numerator.terms()) {
    (cln::plusp(term.coefficient) ? positive : negative).push_back(term);
  }
  return {from_polynomial(quotient.names, Polynomial::of(std::move(positive))),
          from_polynomial(quotient.names, -Polynomial::of(std::move(negative)))};
}

std::optional<Number> substitute(const Number& number, std::span<const SymbolValue> values) {
  Number result = number;
  for (const auto& [symbol, value] : values) {
    if (!result.is_symbolic()) break;
    const Number below = value_at(coefficients(denominator_of(result), symbol), value);
    if (below.is_zero()) return std::nullopt;
    result = value_at(coefficients(numerator_of(result), symbol), value) / below;
  }
  return result;
}

}  // namespace ohmfold

// Taking numbers with symbols apart, and putting values in.
#include "ohmfold/symbolic.h"

#include <algorithm>
#include <array>
#include <cstdint>

#include "exact/rational_function.h"

namespace ohmfold {
namespace {

/// The polynomial's value by Horner's rule.
Number value_at(const std::vector<Number>& coefficients, const Number& value) {
  Number sum;
  for (auto at = coefficients.rbegin(); at != coefficients.rend(); ++at) sum = sum * value + *at;
  return sum;
}

}  // namespace

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

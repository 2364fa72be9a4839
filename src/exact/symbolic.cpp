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
  result.reserve(parts.size());
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

namespace {

/// The value of a polynomial where every symbol has a plain value; by position in the names.
Number value_of(const Polynomial& polynomial, const std::vector<Number>& values) {
  Number sum;
  for (const Polynomial::Term& term : polynomial.terms()) {
    cln::cl_RA product = term.coefficient;
    for (std::size_t i = 0; i < values.size(); ++i) {
      const std::uint16_t exponent = term.monomial.exponents.at(i);
      if (exponent > 0) product = product * cln::expt(values[i].raw(), static_cast<int>(exponent));
    }
    sum += Number(std::move(product));
  }
  return sum;
}

/// The plain values of all symbols; nothing where one has none.
std::optional<std::vector<Number>> plain_values(const std::vector<std::string>& names,
                                                std::span<const SymbolValue> values) {
  std::vector<Number> result;
  for (const std::string& name : names) {
    const auto at = std::find_if(values.begin(), values.end(),
                                 [&](const SymbolValue& one) { return one.first == name; });
    if (at == values.end() || at->second.is_symbolic()) return std::nullopt;
    result.push_back(at->second);
  }
  return result;
}

}  // namespace

std::optional<Number> substitute(const Number& number, std::span<const SymbolValue> values) {
  if (!number.is_symbolic()) return number;
  if (const auto plain = plain_values(symbols_of(number), values)) {
    const RationalFunction& function = number.function();
    const Number below = value_of(function.denominator, *plain);
    if (below.is_zero()) return std::nullopt;
    return value_of(function.numerator, *plain) / below;
  }
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

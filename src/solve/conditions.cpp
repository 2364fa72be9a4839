// The polynomial that decides a sign, and its zeros.
#include "solve/conditions.h"

#include <algorithm>

#include "exact/rational_function.h"
#include "exact/roots.h"
#include "ohmfold/symbolic.h"

namespace ohmfold {
namespace {

/// Divided by what is positive anyway: the powers of its only symbol.
Number without_powers(const Number& polynomial, const std::string& symbol) {
  Number result = polynomial;
  while (coefficients(result, symbol).front().is_zero()) result = result / Number::symbol(symbol);
  return result;
}

/// The sign in each stretch between the zeros, from one number inside it.
std::vector<Sign> signs_between(const std::vector<Number>& polynomial,
                                const std::vector<Number>& zeros) {
  std::vector<Sign> signs;
  Number low;
  for (const Number& zero : zeros) {
    signs.push_back(value_at(polynomial, (low + zero) / 2).sign());
    low = zero;
  }
  signs.push_back(value_at(polynomial, low + 1).sign());
  return signs;
}

}  // namespace

std::optional<SignCondition> sign_condition(const Number& number) {
  if (!number.is_symbolic() || number.sign() != Sign::depends) return std::nullopt;
  const Number below = denominator_of(number);
  SignCondition condition;
  condition.decides = numerator_of(number);
  if (below.sign() == Sign::depends) condition.decides = condition.decides * below;
  condition.decides = primitive_part(condition.decides);
  const std::vector<std::string> symbols = symbols_of(condition.decides);
  if (symbols.size() != 1) return condition;
  condition.symbol = symbols.front();
  condition.decides = without_powers(condition.decides, condition.symbol);
  const std::vector<Number> polynomial = coefficients(condition.decides, condition.symbol);
  PositiveZeros zeros = positive_zeros(polynomial);
  if (!zeros.all) return condition;
  condition.signs = signs_between(polynomial, zeros.rational);
  condition.zeros = std::move(zeros.rational);
  return condition;
}

}  // namespace ohmfold

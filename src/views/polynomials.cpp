// Polynomials in unknowns, and roots of quadratic equations, as formulas.
#include "views/polynomials.h"

#include "exact/terms.h"
#include "ohmfold/symbolic.h"

namespace ohmfold::views {

namespace {

Expression power(const std::string& symbol, std::size_t exponent) {
  if (exponent == 1) return {Symbol{symbol, ""}};
  return {Symbol{symbol + (exponent == 2 ? "²" : "^" + std::to_string(exponent)), ""}};
}

/// The size of a term; its sign stands before it.
Expression term_expression(const Term& term, const std::vector<std::string>& symbols) {
  std::vector<Expression> factors;
  const Number size = abs(term.coefficient);
  if (!(size == Number(1))) factors.push_back({Count{size}});
  for (std::size_t i = 0; i < symbols.size(); ++i) {
    if (term.powers[i] > 0) factors.push_back(power(symbols[i], term.powers[i]));
  }
  if (factors.empty()) return {Count{size}};
  if (factors.size() == 1) return std::move(factors.front());
  return {Product{std::move(factors)}};
}

}  // namespace

Expression count(const Number& number) {
  Expression size{Count{abs(number)}};
  return number.is_negative() ? negative(std::move(size)) : size;
}

Expression polynomial_expression(const Number& polynomial,
                                 const std::vector<std::string>& symbols) {
  std::vector<Expression> terms;
  for (const Term& term : terms_of(polynomial, symbols)) {
    Expression one = term_expression(term, symbols);
    terms.push_back(term.coefficient.is_negative() ? negative(std::move(one)) : std::move(one));
  }
  return sum(std::move(terms));
}

Expression quotient_expression(const Number& number, const std::vector<std::string>& symbols) {
  const Number below = denominator_of(number);
  if (!number.is_symbolic()) return count(number);
  Expression above = polynomial_expression(numerator_of(number), symbols);
  if (below == Number(1)) return above;
  return quotient(std::move(above), polynomial_expression(below, symbols));
}

Expression surd_expression(const Surd& value) {
  if (value.is_rational()) return count(value.rational());
  const Number size = abs(value.factor());
  Expression root{Symbol{"√" + value.radicand().to_string(), ""}};
  const Number above(size.numerator());
  const Number below(size.denominator());
  if (!(above == Number(1))) root = product({Count{above}}, std::move(root));
  if (!(below == Number(1))) root = quotient(std::move(root), {Count{below}});
  if (value.factor().is_negative()) root = negative(std::move(root));
  if (value.rational().is_zero()) return root;
  return sum({count(value.rational()), std::move(root)});
}

}  // namespace ohmfold::views

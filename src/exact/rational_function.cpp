// Arithmetic with quotients of polynomials: every result in lowest terms.
#include "exact/rational_function.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "exact/polynomial_gcd.h"
#include "exact/work.h"
#include "ohmfold/error.h"
#include "ohmfold/symbolic.h"

namespace ohmfold {
namespace {

/// The longest number that is worked with.
constexpr std::size_t kMostBits = 2'000'000;

/// The polynomial with its symbols renumbered: symbol i becomes place[i]; those that do not occur
/// need none.
Polynomial renumbered(const Polynomial& polynomial, const std::vector<std::size_t>& place) {
  std::vector<Polynomial::Term> terms = polynomial.terms();
  for (Polynomial::Term& term : terms) {
    Monomial moved;
    moved.degree = term.monomial.degree;
    for (std::size_t i = 0; i < place.size(); ++i) {
      const std::uint16_t exponent = term.monomial.exponents.at(i);
      if (exponent > 0) moved.exponents.at(place[i]) = exponent;
    }
    term.monomial = moved;
  }
  return Polynomial::of(std::move(terms));
}

void renumber(Quotient& quotient, const SymbolNames& names) {
  if (quotient.names == names) return;
  if (*quotient.names == *names) {
    quotient.names = names;
    return;
  }
  std::vector<std::size_t> place;
  for (const std::string& name : *quotient.names) {
    const auto at = std::lower_bound(names->begin(), names->end(), name);
    place.push_back(static_cast<std::size_t>(at - names->begin()));
  }
  quotient = {names, renumbered(quotient.numerator, place),
              renumbered(quotient.denominator, place)};
}

/// Both numbers over the same symbols.
std::pair<Quotient, Quotient> aligned(const Number& a, const Number& b) {
  std::pair<Quotient, Quotient> both{quotient_of(a), quotient_of(b)};
  auto& [first, second] = both;
  if (first.names == second.names) return both;
  std::vector<std::string> names;
  std::set_union(first.names->begin(), first.names->end(), second.names->begin(),
                 second.names->end(), std::back_inserter(names));
  if (names.size() > kMostSymbols) {
    throw BeyondBudget("more than " + std::to_string(kMostSymbols) + " symbols meet in one value");
  }
  const auto shared = names == *first.names
                          ? first.names
                          : std::make_shared<const std::vector<std::string>>(std::move(names));
  renumber(first, shared);
  renumber(second, shared);
  return both;
}

/// Divides two polynomials by their common divisor, which it returns.
Polynomial cancel(Polynomial& a, Polynomial& b) {
  if (a.is_one() || b.is_one()) return Polynomial(1);
  CommonDivisor common = common_divisor(a, b);
  if (common.divisor.is_one()) return std::move(common.divisor);
  a = std::move(common.first);
  b = std::move(common.second);
  return std::move(common.divisor);
}

/// (a/b) + (c/d) with two small common divisors in the place of one large (Henrici, J. ACM 3 (1956)
/// 6).
Number sum(Quotient a, Quotient b) {
  Polynomial shared(1);
  if (a.denominator == b.denominator) {
    shared = std::exchange(a.denominator, Polynomial(1));
    b.denominator = Polynomial(1);
  } else {
    shared = cancel(a.denominator, b.denominator);
  }
  Polynomial numerator = a.numerator * b.denominator + b.numerator * a.denominator;
  if (numerator.is_zero()) return {};
  cancel(numerator, shared);
  return from_lowest_terms({a.names, std::move(numerator), a.denominator * b.denominator * shared});
}

Number product(Quotient a, Quotient b) {
  cancel(a.numerator, b.denominator);
  cancel(b.numerator, a.denominator);
  return from_lowest_terms({a.names, a.numerator * b.numerator, a.denominator * b.denominator});
}

/// Do all coefficients have one sign? Then the polynomial has it wherever its symbols are positive.
Sign sign_of(const Polynomial& polynomial) {
  const bool negative = cln::minusp(polynomial.leading());
  const bool same = std::all_of(
      polynomial.terms().begin(), polynomial.terms().end(),
      [&](const Polynomial::Term& term) { return cln::minusp(term.coefficient) == negative; });
  if (!same) return Sign::depends;
  return negative ? Sign::negative : Sign::positive;
}

/// Leaves out the names that do not occur.
void drop_unused(Quotient& quotient) {
  constexpr std::size_t kUnused = SIZE_MAX;
  const auto above = quotient.numerator.degrees();
  const auto below = quotient.denominator.degrees();
  std::vector<std::string> used;
  std::vector<std::size_t> place;
  for (std::size_t i = 0; i < quotient.names->size(); ++i) {
    const bool occurs = above.at(i) > 0 || below.at(i) > 0;
    place.push_back(occurs ? used.size() : kUnused);
    if (occurs) used.push_back((*quotient.names)[i]);
  }
  if (used.size() == quotient.names->size()) return;
  quotient = {std::make_shared<const std::vector<std::string>>(std::move(used)),
              renumbered(quotient.numerator, place), renumbered(quotient.denominator, place)};
}

Number negated(const Number& number) {
  Quotient quotient = quotient_of(number);
  quotient.numerator = -quotient.numerator;
  return from_lowest_terms(quotient);
}

}  // namespace

Quotient quotient_of(const Number& number) {
  if (number.is_symbolic()) {
    const RationalFunction& function = number.function();
    return {function.names, function.numerator, function.denominator};
  }
  return {std::make_shared<const std::vector<std::string>>(), Polynomial(number.numerator()),
          Polynomial(number.denominator())};
}

Number from_lowest_terms(const Quotient& quotient) {
  ensure(!quotient.denominator.is_zero(), "a denominator is zero");
  if (quotient.numerator.is_constant() && quotient.denominator.is_constant()) {
    return Number::quotient(quotient.numerator.constant(), quotient.denominator.constant());
  }
  Quotient proper = quotient;
  if (cln::minusp(proper.denominator.leading())) {
    proper.numerator = -proper.numerator;
    proper.denominator = -proper.denominator;
  }
  drop_unused(proper);
  if (proper.numerator.bits() + proper.denominator.bits() > kMostBits) {
    throw BeyondBudget("the values with symbols become too long to work with");
  }
  return Number(std::make_shared<const RationalFunction>(RationalFunction{
      std::move(proper.names), std::move(proper.numerator), std::move(proper.denominator)}));
}

Number primitive_part(const Number& polynomial) {
  const Quotient whole = quotient_of(polynomial);
  ensure(whole.denominator.is_one(), "no polynomial with whole coefficients");
  return from_polynomial(whole.names, whole.numerator.over(whole.numerator.content()));
}

Number from_polynomial(const SymbolNames& names, const Polynomial& polynomial) {
  return from_lowest_terms({names, polynomial, Polynomial(1)});
}

Number Number::symbol(std::string_view name) {
  const auto names =
      std::make_shared<const std::vector<std::string>>(std::vector<std::string>{std::string(name)});
  return from_polynomial(names, Polynomial::variable(0));
}

Sign Number::symbolic_sign() const {
  const Sign above = sign_of((*symbolic_).numerator);
  const Sign below = sign_of((*symbolic_).denominator);
  if (above == Sign::depends || below == Sign::depends) return Sign::depends;
  return above == below ? Sign::positive : Sign::negative;
}

Number Number::symbolic_sum(const Number& a, const Number& b) {
  if (a.is_zero()) return b;
  if (b.is_zero()) return a;
  auto [first, second] = aligned(a, b);
  return sum(std::move(first), std::move(second));
}

Number Number::symbolic_difference(const Number& a, const Number& b) {
  if (b.is_zero()) return a;
  return a + (b.is_symbolic() ? negated(b) : -b);
}

Number Number::symbolic_product(const Number& a, const Number& b) {
  if (a.is_zero() || b.is_zero()) return {};
  auto [first, second] = aligned(a, b);
  return product(std::move(first), std::move(second));
}

Number Number::symbolic_quotient(const Number& a, const Number& b) {
  if (a.is_zero()) return {};
  auto [first, second] = aligned(a, b);
  std::swap(second.numerator, second.denominator);
  return product(std::move(first), std::move(second));
}

bool Number::symbolic_equal(const Number& a, const Number& b) {
  if (a.is_symbolic() != b.is_symbolic()) return false;
  const RationalFunction& first = a.function();
  const RationalFunction& second = b.function();
  return *first.names == *second.names && first.numerator == second.numerator &&
         first.denominator == second.denominator;
}

std::partial_ordering Number::symbolic_order(const Number& a, const Number& b) {
  switch ((a - b).sign()) {
    case Sign::negative:
      return std::partial_ordering::less;
    case Sign::zero:
      return std::partial_ordering::equivalent;
    case Sign::positive:
      return std::partial_ordering::greater;
    case Sign::depends:
      break;
  }
  return std::partial_ordering::unordered;
}

}  // namespace ohmfold

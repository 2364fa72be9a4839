// The greatest common divisor by evaluation: symbols become large whole numbers, one by one.
#include "exact/polynomial_gcd.h"

#include <algorithm>
#include <map>

#include "exact/work.h"
#include "ohmfold/error.h"

namespace ohmfold {
namespace {

/// The longest whole number that an evaluation may lead to.
constexpr std::uint64_t kMostBits = 400'000;
constexpr int kMostTries = 12;

cln::cl_I largest(const Polynomial& polynomial) {
  cln::cl_I size = 0;
  for (const Polynomial::Term& term : polynomial.terms()) {
    size = cln::max(size, cln::abs(term.coefficient));
  }
  return size;
}

/// The polynomial with a whole number in place of one symbol.
Polynomial at(const Polynomial& polynomial, std::size_t symbol, const cln::cl_I& base) {
  // By Horner's rule for each product of the other symbols.
  struct Sum {
    std::uint16_t power;
    cln::cl_I value;
  };
  std::map<Monomial, std::vector<const Polynomial::Term*>, std::greater<>> groups;
  for (const Polynomial::Term& term : polynomial.terms()) {
    Monomial rest = term.monomial;
    rest.degree -= rest.exponents[symbol];
    rest.exponents[symbol] = 0;
    groups[rest].push_back(&term);
  }
  std::vector<Polynomial::Term> terms;
  for (const auto& [rest, group] : groups) {
    // Within a group the degree falls with the exponent of the symbol.
    cln::cl_I value = 0;
    std::uint16_t power = group.front()->monomial.exponents[symbol];
    for (const Polynomial::Term* term : group) {
      const std::uint16_t next = term->monomial.exponents[symbol];
      if (next < power) value = value * cln::expt_pos(base, cln::cl_I(power - next));
      power = next;
      value = value + term->coefficient;
    }
    if (power > 0) value = value * cln::expt_pos(base, cln::cl_I(power));
    terms.push_back({rest, std::move(value)});
  }
  return Polynomial::of(std::move(terms));
}

/// Reads the coefficients as numbers in this base with digits of either sign: the polynomial in one
/// more symbol whose value there is `values`.
Polynomial read_back(const Polynomial& values, std::size_t symbol, const cln::cl_I& base) {
  std::vector<Polynomial::Term> terms;
  for (const Polynomial::Term& term : values.terms()) {
    cln::cl_I rest = term.coefficient;
    Monomial monomial = term.monomial;
    for (; !cln::zerop(rest); ++monomial.degree, ++monomial.exponents[symbol]) {
      cln::cl_I digit = cln::mod(rest, base);
      if (digit * 2 > base) digit = digit - base;
      rest = cln::exquo(rest - digit, base);
      terms.push_back({monomial, std::move(digit)});
    }
  }
  return Polynomial::of(std::move(terms));
}

/// The last symbol that occurs in either; kMostSymbols where none does.
std::size_t last_symbol(const Polynomial& a, const Polynomial& b) {
  const auto first = a.degrees();
  const auto second = b.degrees();
  for (std::size_t i = kMostSymbols; i-- > 0;) {
    if (first[i] > 0 || second[i] > 0) return i;
  }
  return kMostSymbols;
}

/// Ends in BeyondBudget where evaluation would lead to whole numbers too long to work with.
void charge_evaluation(const Polynomial& a, const Polynomial& b, const cln::cl_I& base) {
  const auto first = a.degrees();
  const auto second = b.degrees();
  std::uint64_t bits = cln::integer_length(base);
  for (std::size_t i = 0; i < kMostSymbols && bits <= kMostBits; ++i) {
    bits *= std::uint64_t{1} + std::max(first[i], second[i]);
  }
  if (bits > kMostBits) throw BeyondBudget("the values with symbols become too long");
  const std::uint64_t words = bits / 64 + 1;
  charge(words * words / 4 + 16 * (a.terms().size() + b.terms().size()));
}

Polynomial divisor_of(const Polynomial& a, const Polynomial& b);

/// For polynomials whose coefficients have no common divisor.
Polynomial primitive_divisor(const Polynomial& a, const Polynomial& b, std::size_t symbol) {
  cln::cl_I base = cln::min(largest(a), largest(b)) * 2 + 29;
  for (int tries = 0; tries < kMostTries; ++tries) {
    charge_evaluation(a, b, base);
    const Polynomial first = at(a, symbol, base);
    const Polynomial second = at(b, symbol, base);
    if (!first.is_zero() && !second.is_zero()) {
      Polynomial found = read_back(divisor_of(first, second), symbol, base);
      found = found.over(found.content());
      if (cln::minusp(found.leading())) found = -found;
      if (found.is_one() || (quotient(a, found) && quotient(b, found))) return found;
    }
    // An unlucky base is one that divides a number fixed by the polynomials: a larger one is lucky.
    base = base * 2'739 + 1;
  }
  throw BeyondBudget("no common divisor was found in time");
}

// Recurses once for each symbol at most.
Polynomial divisor_of(const Polynomial& a, const Polynomial& b) {
  const cln::cl_I first = a.content();
  const cln::cl_I second = b.content();
  const cln::cl_I common = cln::gcd(first, second);
  const std::size_t symbol = last_symbol(a, b);
  if (symbol == kMostSymbols) return Polynomial(common);
  const Polynomial primitive = primitive_divisor(a.over(first), b.over(second), symbol);
  return primitive.times({{}, common});
}

Monomial common(const Monomial& a, const Monomial& b) {
  Monomial result;
  for (std::size_t i = 0; i < kMostSymbols; ++i) {
    result.exponents[i] = std::min(a.exponents[i], b.exponents[i]);
    result.degree += result.exponents[i];
  }
  return result;
}

/// The divisor where one of the two is a single term.
CommonDivisor of_a_term(const Polynomial& a, const Polynomial& b) {
  const Monomial monomial = common(a.common_monomial(), b.common_monomial());
  const cln::cl_I content = cln::gcd(a.content(), b.content());
  Polynomial divisor = Polynomial::of({{monomial, content}});
  return {std::move(divisor), a.over(monomial).over(content), b.over(monomial).over(content)};
}

}  // namespace

CommonDivisor common_divisor(const Polynomial& a, const Polynomial& b) {
  ensure(!a.is_zero() && !b.is_zero(), "a common divisor with zero");
  if (a.terms().size() == 1 || b.terms().size() == 1) return of_a_term(a, b);
  // Powers of symbols are taken out first: they would make the whole numbers long.
  const Monomial first = a.common_monomial();
  const Monomial second = b.common_monomial();
  const Polynomial left = a.over(first);
  const Polynomial right = b.over(second);
  const Polynomial rest = divisor_of(left, right);
  const Monomial monomial = common(first, second);
  const auto divided = [&](const Polynomial& whole) {
    const std::optional<Polynomial> share = quotient(whole.over(monomial), rest);
    ensure(share.has_value(), "a common divisor that does not divide");
    return *share;
  };
  return {rest.times({monomial, 1}), divided(a), divided(b)};
}

}  // namespace ohmfold

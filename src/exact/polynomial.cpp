// Arithmetic of polynomials in a few symbols.
#include "exact/polynomial.h"

#include <algorithm>
#include <functional>
#include <map>

#include "exact/work.h"
#include "ohmfold/error.h"

namespace ohmfold {
namespace {

Monomial product(const Monomial& a, const Monomial& b) {
  constexpr std::uint32_t kMostDegree = UINT16_MAX;
  Monomial result = a;
  result.degree += b.degree;
  if (result.degree > kMostDegree) throw BeyondBudget("the power of a symbol becomes too high");
  for (std::size_t i = 0; i < kMostSymbols; ++i) {
    result.exponents[i] = static_cast<std::uint16_t>(result.exponents[i] + b.exponents[i]);
  }
  return result;
}

bool divides(const Monomial& divisor, const Monomial& monomial) {
  for (std::size_t i = 0; i < kMostSymbols; ++i) {
    if (divisor.exponents[i] > monomial.exponents[i]) return false;
  }
  return true;
}

/// Requires that the divisor divides it.
Monomial over(const Monomial& monomial, const Monomial& divisor) {
  Monomial result = monomial;
  result.degree -= divisor.degree;
  for (std::size_t i = 0; i < kMostSymbols; ++i) {
    result.exponents[i] = static_cast<std::uint16_t>(result.exponents[i] - divisor.exponents[i]);
  }
  return result;
}

std::uint64_t words(const cln::cl_I& number) {
  return cln::integer_length(number) / 64 + 1;
}

/// Does the first symbol alone occur?
bool is_univariate(const Polynomial& polynomial) {
  return std::all_of(polynomial.terms().begin(), polynomial.terms().end(),
                     [](const Polynomial::Term& term) {
                       return term.monomial.degree == term.monomial.exponents[0];
                     });
}

/// The coefficients by the power of the first symbol. Requires that it alone occurs, and a
/// polynomial other than zero.
std::vector<cln::cl_I> dense(const Polynomial& polynomial) {
  std::vector<cln::cl_I> coefficients(polynomial.terms().front().monomial.degree + 1, 0);
  for (const Polynomial::Term& term : polynomial.terms()) {
    coefficients[term.monomial.degree] = term.coefficient;
  }
  return coefficients;
}

Polynomial from_dense(const std::vector<cln::cl_I>& coefficients) {
  std::vector<Polynomial::Term> terms;
  for (std::size_t i = coefficients.size(); i-- > 0;) {
    if (cln::zerop(coefficients[i])) continue;
    Polynomial::Term term{{}, coefficients[i]};
    term.monomial.degree = static_cast<std::uint32_t>(i);
    term.monomial.exponents[0] = static_cast<std::uint16_t>(i);
    terms.push_back(std::move(term));
  }
  return Polynomial::of(std::move(terms));
}

Polynomial dense_product(const Polynomial& a, const Polynomial& b) {
  const std::vector<cln::cl_I> left = dense(a);
  const std::vector<cln::cl_I> right = dense(b);
  if (left.size() + right.size() > UINT16_MAX) {
    throw BeyondBudget("the power of a symbol becomes too high");
  }
  std::vector<cln::cl_I> result(left.size() + right.size() - 1, 0);
  for (std::size_t i = 0; i < left.size(); ++i) {
    if (cln::zerop(left[i])) continue;
    for (std::size_t k = 0; k < right.size(); ++k) {
      result[i + k] = result[i + k] + left[i] * right[k];
    }
  }
  return from_dense(result);
}

std::optional<Polynomial> dense_quotient(const Polynomial& dividend, const Polynomial& divisor) {
  std::vector<cln::cl_I> rest = dense(dividend);
  const std::vector<cln::cl_I> by = dense(divisor);
  if (rest.size() < by.size()) return std::nullopt;
  std::vector<cln::cl_I> result(rest.size() - by.size() + 1, 0);
  for (std::size_t i = result.size(); i-- > 0;) {
    const cln::cl_I& high = rest[i + by.size() - 1];
    if (cln::zerop(high)) continue;
    const cln::cl_I_div_t share = cln::truncate2(high, by.back());
    if (!cln::zerop(share.remainder)) return std::nullopt;
    result[i] = share.quotient;
    for (std::size_t k = 0; k < by.size(); ++k) rest[i + k] = rest[i + k] - result[i] * by[k];
  }
  const bool divides = std::all_of(rest.begin(), rest.begin() + static_cast<long>(by.size()) - 1,
                                   [](const cln::cl_I& one) { return cln::zerop(one); });
  if (!divides) return std::nullopt;
  return from_dense(result);
}

std::optional<Polynomial> sparse_quotient(const Polynomial& dividend, const Polynomial& divisor) {
  std::map<Monomial, cln::cl_I, std::greater<>> rest;
  for (const Polynomial::Term& term : dividend.terms()) rest[term.monomial] = term.coefficient;
  const Polynomial::Term& high = divisor.terms().front();
  std::vector<Polynomial::Term> result;
  while (!rest.empty()) {
    const auto& [monomial, coefficient] = *rest.begin();
    if (!divides(high.monomial, monomial)) return std::nullopt;
    const cln::cl_I_div_t share = cln::truncate2(coefficient, high.coefficient);
    if (!cln::zerop(share.remainder)) return std::nullopt;
    result.push_back({over(monomial, high.monomial), share.quotient});
    charge(divisor.terms().size() * (8 + words(share.quotient)));
    for (const Polynomial::Term& term : divisor.terms()) {
      const auto at = rest.try_emplace(product(result.back().monomial, term.monomial), 0).first;
      at->second = at->second - share.quotient * term.coefficient;
      if (cln::zerop(at->second)) rest.erase(at);
    }
  }
  return Polynomial::of(std::move(result));
}

}  // namespace

Polynomial::Polynomial(const cln::cl_I& constant) {
  if (!cln::zerop(constant)) terms_.push_back({{}, constant});
}

Polynomial Polynomial::variable(std::size_t index) {
  Term term{{}, 1};
  term.monomial.degree = 1;
  term.monomial.exponents.at(index) = 1;
  return Polynomial(std::vector<Term>{std::move(term)});
}

Polynomial Polynomial::of(std::vector<Term> terms) {
  std::erase_if(terms, [](const Term& term) { return cln::zerop(term.coefficient); });
  const auto falls = [](const Term& a, const Term& b) { return a.monomial > b.monomial; };
  if (!std::is_sorted(terms.begin(), terms.end(), falls)) {
    std::sort(terms.begin(), terms.end(), falls);
  }
  return Polynomial(std::move(terms));
}

bool Polynomial::is_one() const {
  return terms_.size() == 1 && is_constant() && cln::equal(leading(), 1);
}

cln::cl_I Polynomial::constant() const {
  const bool has_one = !terms_.empty() && terms_.back().monomial.degree == 0;
  return has_one ? terms_.back().coefficient : cln::cl_I(0);
}

cln::cl_I Polynomial::content() const {
  cln::cl_I content = 0;
  for (const Term& term : terms_) {
    content = cln::gcd(content, term.coefficient);
    if (cln::equal(content, 1)) break;
  }
  return content;
}

std::array<std::uint16_t, kMostSymbols> Polynomial::degrees() const {
  std::array<std::uint16_t, kMostSymbols> degrees{};
  for (const Term& term : terms_) {
    for (std::size_t i = 0; i < kMostSymbols; ++i) {
      degrees[i] = std::max(degrees[i], term.monomial.exponents[i]);
    }
  }
  return degrees;
}

Monomial Polynomial::common_monomial() const {
  if (terms_.empty()) return {};
  Monomial common = terms_.front().monomial;
  for (const Term& term : terms_) {
    for (std::size_t i = 0; i < kMostSymbols; ++i) {
      common.exponents[i] = std::min(common.exponents[i], term.monomial.exponents[i]);
    }
  }
  common.degree = 0;
  for (const std::uint16_t exponent : common.exponents) common.degree += exponent;
  return common;
}

std::size_t Polynomial::bits() const {
  std::size_t bits = 0;
  for (const Term& term : terms_) bits += cln::integer_length(term.coefficient) + 64;
  return bits;
}

Polynomial operator-(const Polynomial& a) {
  Polynomial result = a;
  for (Polynomial::Term& term : result.terms_) term.coefficient = -term.coefficient;
  return result;
}

Polynomial operator+(const Polynomial& a, const Polynomial& b) {
  std::vector<Polynomial::Term> sum;
  sum.reserve(a.terms_.size() + b.terms_.size());
  const std::uint64_t length =
      a.is_zero() || b.is_zero() ? 1 : words(a.leading()) + words(b.leading());
  charge((3 + length) * (a.terms_.size() + b.terms_.size()));
  auto left = a.terms_.begin();
  auto right = b.terms_.begin();
  while (left != a.terms_.end() && right != b.terms_.end()) {
    const auto order = left->monomial <=> right->monomial;
    if (order > 0) {
      sum.push_back(*left++);
    } else if (order < 0) {
      sum.push_back(*right++);
    } else {
      cln::cl_I both = left->coefficient + right->coefficient;
      if (!cln::zerop(both)) sum.push_back({left->monomial, std::move(both)});
      ++left;
      ++right;
    }
  }
  sum.insert(sum.end(), left, a.terms_.end());
  sum.insert(sum.end(), right, b.terms_.end());
  return Polynomial(std::move(sum));
}

Polynomial operator-(const Polynomial& a, const Polynomial& b) {
  return a + -b;
}

Polynomial operator*(const Polynomial& a, const Polynomial& b) {
  if (a.is_zero() || b.is_zero()) return {};
  if (a.terms_.size() > b.terms_.size()) return b * a;
  charge(a.terms_.size() * b.terms_.size() * (4 + words(a.leading()) * words(b.leading())));
  if (a.terms_.size() == 1) return b.times(a.terms_.front());
  if (is_univariate(a) && is_univariate(b)) return dense_product(a, b);
  std::vector<Polynomial> rows;
  for (const Polynomial::Term& term : a.terms_) rows.push_back(b.times(term));
  // Neighbours first, so that short sums meet short ones.
  while (rows.size() > 1) {
    const std::size_t pairs = rows.size() / 2;
    for (std::size_t i = 0; i < pairs; ++i) rows[i] = rows[2 * i] + rows[2 * i + 1];
    if (rows.size() % 2 == 1) rows[pairs] = std::move(rows.back());
    rows.resize((rows.size() + 1) / 2);
  }
  return rows.front();
}

bool operator==(const Polynomial& a, const Polynomial& b) {
  return std::equal(a.terms_.begin(), a.terms_.end(), b.terms_.begin(), b.terms_.end(),
                    [](const Polynomial::Term& left, const Polynomial::Term& right) {
                      return left.monomial == right.monomial &&
                             cln::equal(left.coefficient, right.coefficient);
                    });
}

Polynomial Polynomial::over(const cln::cl_I& divisor) const {
  if (cln::equal(divisor, 1)) return *this;
  Polynomial result = *this;
  for (Term& term : result.terms_) term.coefficient = cln::exquo(term.coefficient, divisor);
  return result;
}

Polynomial Polynomial::over(const Monomial& divisor) const {
  if (divisor.degree == 0) return *this;
  Polynomial result = *this;
  for (Term& term : result.terms_) term.monomial = ohmfold::over(term.monomial, divisor);
  return result;
}

Polynomial Polynomial::times(const Term& factor) const {
  Polynomial result = *this;
  for (Term& term : result.terms_) {
    term.monomial = product(term.monomial, factor.monomial);
    term.coefficient = term.coefficient * factor.coefficient;
  }
  return result;
}

std::optional<Polynomial> quotient(const Polynomial& dividend, const Polynomial& divisor) {
  ensure(!divisor.is_zero(), "a division by the polynomial zero");
  if (dividend.is_zero()) return Polynomial();
  if (divisor.is_one()) return dividend;
  if (is_univariate(dividend) && is_univariate(divisor)) {
    charge(dividend.terms().size() * divisor.terms().size() * (4 + words(dividend.leading())));
    return dense_quotient(dividend, divisor);
  }
  return sparse_quotient(dividend, divisor);
}

}  // namespace ohmfold

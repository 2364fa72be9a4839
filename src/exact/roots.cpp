// Sturm sequences, bisection, and the simplest fraction between two numbers.
#include "exact/roots.h"

#include <cln/integer.h>
#include <cln/rational.h>

#include <algorithm>
#include <utility>

#include "ohmfold/error.h"

namespace ohmfold {
namespace {

using Coefficients = std::vector<Number>;  // by rising power; the last is not zero

constexpr std::size_t kMostDegree = 24;
constexpr std::size_t kMostBits = 2'000;

void trim(Coefficients& polynomial) {
  while (!polynomial.empty() && polynomial.back().is_zero()) polynomial.pop_back();
}

/// What a polynomial leaves when it is divided by another; the quotient where that is wanted.
Coefficients remainder(Coefficients polynomial, const Coefficients& divisor,
                       Coefficients* quotient = nullptr) {
  if (quotient != nullptr && polynomial.size() >= divisor.size()) {
    quotient->assign(polynomial.size() - divisor.size() + 1, Number());
  }
  while (polynomial.size() >= divisor.size()) {
    const std::size_t shift = polynomial.size() - divisor.size();
    const Number factor = polynomial.back() / divisor.back();
    if (quotient != nullptr) (*quotient)[shift] = factor;
    for (std::size_t i = 0; i < divisor.size(); ++i) polynomial[shift + i] -= factor * divisor[i];
    polynomial.pop_back();  // it has become zero
    trim(polynomial);
  }
  return polynomial;
}

Coefficients derivative(const Coefficients& polynomial) {
  Coefficients result;
  for (std::size_t i = 1; i < polynomial.size(); ++i) {
    result.push_back(polynomial[i] * static_cast<int>(i));
  }
  return result;
}

/// The same zeros, each once.
Coefficients without_repeated_zeros(const Coefficients& polynomial) {
  Coefficients a = polynomial;
  Coefficients b = derivative(polynomial);
  while (!b.empty()) a = std::exchange(b, remainder(a, b));
  Coefficients quotient;
  remainder(polynomial, a, &quotient);
  return quotient;
}

/// Whole coefficients without common divisor, so that numbers stay short.
Coefficients whole(const Coefficients& polynomial) {
  cln::cl_I below = 1, above = 0;
  for (const Number& one : polynomial) below = cln::lcm(below, one.denominator());
  Coefficients result;
  for (const Number& one : polynomial) {
    result.push_back(one * Number(cln::cl_RA(below)));
    above = cln::gcd(above, result.back().numerator());
  }
  for (Number& one : result) one = one / Number(cln::cl_RA(above));
  return result;
}

/// The number of zeros up to a point changes with the number of changes of sign in the sequence.
class Sturm {
 public:
  explicit Sturm(const Coefficients& polynomial) : sequence_{polynomial, derivative(polynomial)} {
    while (sequence_.back().size() > 1) {
      Coefficients next = remainder(sequence_[sequence_.size() - 2], sequence_.back());
      if (next.empty()) break;
      for (Number& one : next) one = -one;
      // Only signs count; a negative factor would change them.
      Coefficients shorter = whole(next);
      sequence_.push_back(std::move(shorter));
    }
  }

  /// Zeros greater than `low`, up to and with `high`.
  [[nodiscard]] std::size_t zeros(const Number& low, const Number& high) const {
    return changes(low) - changes(high);
  }

 private:
  [[nodiscard]] std::size_t changes(const Number& at) const {
    std::size_t count = 0;
    Sign last = Sign::zero;
    for (const Coefficients& polynomial : sequence_) {
      const Sign sign = value_at(polynomial, at).sign();
      if (sign == Sign::zero) continue;
      if (last != Sign::zero && sign != last) ++count;
      last = sign;
    }
    return count;
  }

  std::vector<Coefficients> sequence_;
};

/// The fraction with the smallest denominator from `low` to `high`, by their continued fractions.
/// Requires 0 <= low < high.
Number simplest_between(Number low, Number high) {
  // The result is (p x + p0) / (q x + q0), where x is still to be found.
  Number p(1), p_before(0), q(0), q_before(1);
  while (true) {
    const Number floor{cln::cl_RA(cln::floor1(low.raw()))};
    const bool ends = low == floor || high >= floor + 1;
    const Number digit = low == floor || !ends ? floor : floor + 1;
    p_before = std::exchange(p, p * digit + p_before);
    q_before = std::exchange(q, q * digit + q_before);
    if (ends) return p / q;
    const Number next_low = 1 / (high - floor);
    high = 1 / (low - floor);
    low = next_low;
  }
}

struct Interval {
  Number low, high;
};

}  // namespace

Number value_at(const std::vector<Number>& coefficients, const Number& at) {
  Number sum;
  for (std::size_t i = coefficients.size(); i-- > 0;) sum = sum * at + coefficients[i];
  return sum;
}

PositiveZeros positive_zeros(std::vector<Number> coefficients) {
  trim(coefficients);
  ensure(!coefficients.empty(), "every number is a zero of the polynomial zero");
  // Zeros at zero are not positive.
  coefficients.erase(coefficients.begin(),
                     std::find_if(coefficients.begin(), coefficients.end(),
                                  [](const Number& one) { return !one.is_zero(); }));
  if (coefficients.size() == 1) return {};
  const bool long_one = std::any_of(coefficients.begin(), coefficients.end(),
                                    [](const Number& one) { return one.bits() > kMostBits; });
  if (coefficients.size() > kMostDegree + 1 || long_one) return {{}, false};

  const Coefficients polynomial = whole(without_repeated_zeros(coefficients));
  const Sturm sturm(polynomial);
  Number bound(1);
  for (const Number& one : polynomial) bound += abs(one / polynomial.back());
  // Two fractions whose denominators divide the leading coefficient are farther apart than this.
  const Number width = 1 / (2 * polynomial.back() * polynomial.back());

  PositiveZeros found;
  std::vector<Interval> open{{Number(0), bound}};
  while (!open.empty()) {
    const Interval at = open.back();
    open.pop_back();
    const std::size_t zeros = sturm.zeros(at.low, at.high);
    if (zeros == 0) continue;
    if (zeros > 1 || at.high - at.low >= width) {
      const Number middle = (at.low + at.high) / 2;
      open.push_back({middle, at.high});
      open.push_back({at.low, middle});
      continue;
    }
    const Number candidate = simplest_between(at.low, at.high);
    if (value_at(polynomial, candidate).is_zero()) {
      found.rational.push_back(candidate);
    } else {
      found.all = false;
    }
  }
  return found;
}

}  // namespace ohmfold

// Exact numbers in lowest terms, and ratios that are not kept so.

#include "ohmfold/value.h"

#include <cln/integer_io.h>
#include <cln/malloc.h>

#include <cstdint>
#include <memory>
#include <string>

#include "exact/polynomial.h"
#include "exact/rational_function.h"
#include "ohmfold/error.h"
#include "ohmfold/symbolic.h"

namespace ohmfold {
namespace {

std::string decimal_digits(const cln::cl_I& number) {
  constexpr std::uintmax_t kWordBits = 60;  // what is surely within a long
  if (cln::integer_length(number) < kWordBits) return std::to_string(cln::cl_I_to_long(number));
  struct Release {
    void operator()(char* text) const { cln::free_hook(text); }
  };
  const std::unique_ptr<char, Release> text(cln::print_integer_to_string(10, number));
  return text.get();
}

}  // namespace

Number Number::quotient(const cln::cl_I& numerator, const cln::cl_I& denominator) {
  ensure(!cln::zerop(denominator), "a denominator is zero");
  return Number(cln::cl_RA(numerator) / cln::cl_RA(denominator));
}

Sign Number::sign() const {
  if (is_symbolic()) return symbolic_sign();
  if (is_zero()) return Sign::zero;
  return is_negative() ? Sign::negative : Sign::positive;
}

bool Number::is_integer() const {
  return !is_symbolic() && cln::equal(denominator(), 1);
}

std::size_t Number::bits() const {
  if (is_symbolic()) return function().numerator.bits() + function().denominator.bits();
  return cln::integer_length(numerator()) + cln::integer_length(denominator());
}

std::string Number::to_string() const {
  if (is_symbolic()) return one_line(*this, Letters::ascii);
  std::string text = decimal_digits(numerator());
  if (!is_integer()) text.append("/").append(decimal_digits(denominator()));
  return text;
}

Number operator/(const Number& a, const Number& b) {
  ensure(!b.is_zero(), "a division by zero");
  if (Number::symbols_in(a, b)) return Number::symbolic_quotient(a, b);
  return Number(a.value_ / b.value_);
}

Number abs(const Number& number) {
  return number.is_negative() ? -number : number;
}

std::size_t Ratio::bits() const {
  if (is_symbolic()) return lowest_terms().bits();
  return cln::integer_length(p_) + cln::integer_length(q_);
}

Ratio Ratio::series(const Ratio& a, const Ratio& b) {
  if (a.is_symbolic() || b.is_symbolic()) return Ratio(a.lowest_terms() + b.lowest_terms());
  return {a.p_ * b.q_ + b.p_ * a.q_, a.q_ * b.q_};
}

Ratio Ratio::parallel(const Ratio& a, const Ratio& b) {
  ensure(!a.is_zero() && !b.is_zero(), "a parallel combination with zero ohm");
  if (a.is_symbolic() || b.is_symbolic()) {
    return Ratio(1 / (1 / a.lowest_terms() + 1 / b.lowest_terms()));
  }
  return {a.p_ * b.p_, a.p_ * b.q_ + b.p_ * a.q_};
}

}  // namespace ohmfold

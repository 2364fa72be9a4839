// Rounding to significant figures, half to even on the exact value.

#include <cln/integer.h>
#include <cln/integer_io.h>

#include <array>
#include <cstdint>

#include "exact/rounded.h"
#include "ohmfold/decimal.h"
#include "ohmfold/error.h"

namespace ohmfold {
namespace {

/// Numbers from 10^15 on and below 10^-9 are written with an exponent.
constexpr long kFirstLargeExponent = 15;
constexpr long kLastSmallExponent = -10;

/// The power of ten of the first digit of numerator / denominator, or one less or more.
long guessed_exponent(const cln::cl_I& numerator, const cln::cl_I& denominator) {
  const auto bits = static_cast<std::int64_t>(cln::integer_length(numerator)) -
                    static_cast<std::int64_t>(cln::integer_length(denominator));
  constexpr std::int64_t kLog2 = 30103;  // of 100,000: the decimal logarithm of two
  return static_cast<long>(bits * kLog2 / 100'000);
}

/// numerator / denominator * 10^shift as quotient and remainder, with the divisor used.
struct Division {
  cln::cl_I quotient, remainder, divisor;
};

Division divide(const cln::cl_I& numerator, const cln::cl_I& denominator, long shift) {
  const cln::cl_I dividend = shift > 0 ? numerator * power_of_ten(shift) : numerator;
  cln::cl_I divisor = shift < 0 ? denominator * power_of_ten(-shift) : denominator;
  const cln::cl_I_div_t result = cln::floor2(dividend, divisor);
  return {result.quotient, result.remainder, std::move(divisor)};
}

bool rounds_up(const Division& division) {
  const auto order = cln::compare(cln::cl_I(division.remainder * 2), division.divisor);
  return order > 0 || (order == 0 && cln::oddp(division.quotient));
}

}  // namespace

cln::cl_I power_of_ten(long exponent) {
  constexpr std::array<unsigned long, 19> kSmall = [] {
    std::array<unsigned long, 19> powers{};
    unsigned long power = 1;
    for (auto& entry : powers) {
      entry = power;
      power *= 10;
    }
    return powers;
  }();
  ensure(exponent >= 0, "a negative power of ten");
  const auto index = static_cast<std::size_t>(exponent);
  if (index < kSmall.size()) return cln::cl_I(kSmall.at(index));
  return cln::expt_pos(cln::cl_I(10), cln::cl_I(exponent));
}

Number scaled(const Number& number, long exponent) {
  const cln::cl_I power = power_of_ten(exponent < 0 ? -exponent : exponent);
  return exponent < 0 ? Number(number.raw() / power) : Number(number.raw() * power);
}

Rounded rounded(const Number& number, int figures) {
  ensure(!number.is_zero() && figures >= 1, "no significant figures to round to");
  const cln::cl_I numerator = cln::abs(number.numerator());
  const cln::cl_I denominator = number.denominator();
  const cln::cl_I above = power_of_ten(figures);
  const cln::cl_I lowest = power_of_ten(figures - 1);

  long exponent = guessed_exponent(numerator, denominator);
  Division division = divide(numerator, denominator, figures - 1 - exponent);
  // The guess is off by one at most, so that this loop runs no more than twice.
  while (division.quotient >= above || division.quotient < lowest) {
    exponent += division.quotient < lowest ? -1 : 1;
    division = divide(numerator, denominator, figures - 1 - exponent);
  }
  cln::cl_I digits = division.quotient;
  if (rounds_up(division)) digits = digits + 1;
  if (digits == above) {
    digits = lowest;
    ++exponent;
  }
  return {number.is_negative(), Number(digits).to_string(), exponent,
          cln::zerop(division.remainder)};
}

std::string written(const Rounded& rounded) {
  std::string text = rounded.negative ? "-" : "";
  const std::string& digits = rounded.digits;
  const long last = static_cast<long>(digits.size()) - 1;
  if (rounded.exponent >= kFirstLargeExponent || rounded.exponent <= kLastSmallExponent) {
    text += digits.front();
    if (last > 0) text.append(".").append(digits, 1);
    return text.append("e").append(std::to_string(rounded.exponent));
  }
  if (rounded.exponent < 0) {
    text.append("0.").append(static_cast<std::size_t>(-rounded.exponent - 1), '0');
    return text.append(digits);
  }
  if (rounded.exponent >= last) {
    return text.append(digits).append(static_cast<std::size_t>(rounded.exponent - last), '0');
  }
  const auto whole = static_cast<std::size_t>(rounded.exponent) + 1;
  return text.append(digits, 0, whole).append(".").append(digits, whole);
}

std::string round_to_figures(const Number& number, int figures) {
  ensure(figures >= 1, "fewer than one significant figure");
  return number.is_zero() ? "0" : written(rounded(number, figures));
}

std::optional<std::string> terminating_decimal(const Number& number, int most_figures) {
  if (number.is_symbolic()) return std::nullopt;
  if (number.is_zero()) return "0";
  Rounded result = rounded(number, most_figures);
  if (!result.exact) return std::nullopt;
  result.digits.erase(result.digits.find_last_not_of('0') + 1);
  return written(result);
}

}  // namespace ohmfold

// Reading numbers: decimals, fractions and letter codes, digit by digit, as the fractions they are.

#include "ohmfold/decimal.h"

#include <cln/integer.h>
#include <cln/integer_io.h>

#include <algorithm>
#include <cstdint>

#include "exact/rounded.h"

namespace ohmfold {
namespace {

constexpr bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

/// A decimal as it is written: digits without their point, and the power of ten of the last one.
struct Written {
  std::string_view whole, after;  ///< digits before and after the point
  bool has_point = false;
  long power = 0;  ///< the exponent that is written, 0 without one
  NumberFault fault = NumberFault::none;

  [[nodiscard]] std::size_t digits() const { return whole.size() + after.size(); }
  [[nodiscard]] long last_place() const { return power - static_cast<long>(after.size()); }
};

/// Takes the digits off the front of `rest`.
std::string_view take_digits(std::string_view& rest) {
  const auto end = std::find_if_not(rest.begin(), rest.end(), is_digit);
  const std::string_view digits = rest.substr(0, static_cast<std::size_t>(end - rest.begin()));
  rest.remove_prefix(digits.size());
  return digits;
}

/// Takes "e3", "E-3" off the front of `rest`; the fault is set in `decimal`.
void take_exponent(std::string_view& rest, Written& decimal) {
  if (rest.empty() || (rest.front() != 'e' && rest.front() != 'E')) return;
  rest.remove_prefix(1);
  const bool negative = rest.starts_with('-');
  if (negative || rest.starts_with('+')) rest.remove_prefix(1);
  const std::string_view digits = take_digits(rest);
  if (digits.empty()) {
    decimal.fault = NumberFault::malformed;
    return;
  }
  int size = 0;
  for (const char digit : digits) size = std::min(10 * size + (digit - '0'), kMostExponent + 1);
  if (size > kMostExponent) decimal.fault = NumberFault::too_large;
  decimal.power = negative ? -size : size;
}

/// Takes a decimal without sign off the front of `rest`.
Written take_decimal(std::string_view& rest) {
  Written decimal;
  decimal.whole = take_digits(rest);
  if (rest.starts_with('.')) {
    rest.remove_prefix(1);
    decimal.has_point = true;
    decimal.after = take_digits(rest);
    if (decimal.after.empty()) decimal.fault = NumberFault::malformed;
  }
  if (decimal.digits() == 0) decimal.fault = NumberFault::malformed;
  if (decimal.fault == NumberFault::none) take_exponent(rest, decimal);
  if (decimal.fault == NumberFault::none && decimal.digits() > kMostDigits) {
    decimal.fault = NumberFault::too_large;
  }
  return decimal;
}

/// All its digits as a whole number.
cln::cl_I digits_of(const Written& decimal) {
  constexpr std::size_t kWordDigits = 18;  // 10^18 < 2^63
  if (decimal.digits() <= kWordDigits) {
    unsigned long word = 0;
    for (const std::string_view part : {decimal.whole, decimal.after}) {
      for (const char digit : part) word = 10 * word + static_cast<unsigned long>(digit - '0');
    }
    return cln::cl_I(word);
  }
  const std::string all = std::string(decimal.whole).append(decimal.after);
  return cln::read_integer(10, 0, all.data(), 0, all.size());
}

Number value_of(const Written& decimal) {
  const long place = decimal.last_place();
  const cln::cl_I digits = digits_of(decimal);
  if (place == 0) return Number(digits);
  return place > 0 ? Number(digits * power_of_ten(place))
                   : Number::quotient(digits, power_of_ten(-place));
}

/// The power of ten of one unit in the last figure: trailing zeros of a whole number may be none.
long last_figure(const Written& decimal) {
  if (decimal.has_point) return decimal.last_place();
  const std::size_t last = decimal.whole.find_last_not_of('0');
  if (last == std::string_view::npos) return decimal.last_place();
  return decimal.last_place() + static_cast<long>(decimal.whole.size() - 1 - last);
}

/// Takes "/" and the decimal after it; a malformed one where `rest` goes on in another way.
Written take_denominator(std::string_view& rest) {
  Written denominator;
  denominator.fault = NumberFault::malformed;
  if (rest.starts_with('/')) {
    rest.remove_prefix(1);
    denominator = take_decimal(rest);
  }
  return denominator;
}

/// What a letter code's letter stands for, as a power of ten; nothing for any other letter.
std::optional<long> letter_power(char letter) {
  switch (letter) {
    case 'L':
      return -3;
    case 'R':
      return 0;
    case 'k':
    case 'K':
      return 3;
    case 'M':
      return 6;
    case 'G':
      return 9;
    case 'T':
      return 12;
    default:
      return std::nullopt;
  }
}

}  // namespace

ParsedNumber parse_number(std::string_view text) {
  const bool negative = text.starts_with('-');
  if (negative || text.starts_with('+')) text.remove_prefix(1);
  const Written decimal = take_decimal(text);
  if (decimal.fault != NumberFault::none && decimal.fault != NumberFault::too_large) {
    return {Number(), decimal.fault};
  }
  const bool fraction = !text.empty();
  const Written denominator = fraction ? take_denominator(text) : Written();
  if (!text.empty()) return {Number(), NumberFault::malformed};
  if (denominator.fault != NumberFault::none) return {Number(), denominator.fault};
  if (decimal.fault != NumberFault::none) return {Number(), decimal.fault};

  Number number = value_of(decimal);
  if (fraction) {
    const Number divisor = value_of(denominator);
    if (divisor.is_zero()) return {Number(), NumberFault::division_by_zero};
    number = number / divisor;
  }
  return {negative ? -number : std::move(number), NumberFault::none};
}

std::optional<Number> parse_letter_code(std::string_view text) {
  Written code;
  code.whole = take_digits(text);
  if (text.empty()) return std::nullopt;
  const std::optional<long> power = letter_power(text.front());
  text.remove_prefix(1);
  code.after = take_digits(text);
  if (!power || !text.empty() || code.digits() > kMostDigits) return std::nullopt;
  // "R1" is far more likely the name of a part than 0.1 ohm, which the standard writes as R10.
  if (code.whole.empty() && code.after.size() < 2) return std::nullopt;
  code.power = *power;
  return value_of(code);
}

bool agrees(std::string_view printed, const Number& exact, int scale) {
  const ParsedNumber claim = parse_number(printed);
  if (claim.fault != NumberFault::none) return false;
  const Number difference = abs(scaled(claim.number, scale) - exact);
  if (printed.find('/') != std::string_view::npos) return difference.is_zero();
  std::string_view unsigned_text = printed.substr(printed.find_first_not_of("+-"));
  const Written decimal = take_decimal(unsigned_text);
  return difference * Number(2) <= scaled(Number(1), last_figure(decimal) + scale);
}

}  // namespace ohmfold

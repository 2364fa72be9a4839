// How long exact values are, and when a decimal stands beside them.
#include "views/amounts.h"

#include <algorithm>

#include "ohmfold/decimal.h"
#include "ohmfold/symbolic.h"

namespace ohmfold::views {

namespace {

/// A value with symbols of more bits is longer than anything that is shown.
constexpr std::size_t kMostWrittenBits = 100 * kMostShownLetters;

}  // namespace

// With symbols, signs and letters count like digits.
std::size_t digit_estimate(const Number& number) {
  // Only what may be shown is worth writing to see how long it is.
  const bool is_written = number.is_symbolic() && number.bits() <= kMostWrittenBits;
  if (is_written) return one_line(number, Letters::ascii).size();
  // log10(2) = 0.30103, rounded up.
  return number.bits() * 30'103 / 100'000 + 2;
}

namespace {

std::size_t counted_digits(const Number& number) {
  const std::string text = number.to_string();
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; }));
}

}  // namespace

std::string digits_text(const Number& number) {
  if (number.is_symbolic()) return count_text(count_terms(number)) + " terms";
  constexpr std::size_t kMostCounted = 1'000;
  std::size_t digits = digit_estimate(number);
  if (digits <= kMostCounted) return count_text(counted_digits(number)) + " digits";
  std::size_t unit = 1;  // of the third figure
  while (digits / unit >= 1'000) unit *= 10;
  digits = (digits + unit / 2) / unit * unit;
  return "about " + count_text(digits) + " digits";
}

bool is_too_long_to_show(const Number& number) {
  if (number.is_symbolic()) return digit_estimate(number) > kMostShownLetters;
  if (digit_estimate(number) <= kMostShownDigits) return false;
  if (digit_estimate(number) > kMostShownDigits + 4) return true;
  return counted_digits(number) > kMostShownDigits;
}

std::string count_text(std::size_t count) {
  std::string digits = std::to_string(count);
  for (std::size_t end = digits.size(); end > 3; end -= 3) digits.insert(end - 3, ",");
  return digits;
}

Beside decimal_beside(const Quantity& quantity, int figures) {
  const Number& number = quantity.number;
  if (number.is_symbolic()) return Beside::nothing;
  if (is_too_long_to_show(number)) return Beside::rounded;
  const bool ends = terminating_decimal(number, figures).has_value();
  if (number.is_integer() && abs(number) < Number(1000)) {
    return ends || number.is_zero() ? Beside::nothing : Beside::rounded;
  }
  return ends ? Beside::equal : Beside::rounded;
}

}  // namespace ohmfold::views

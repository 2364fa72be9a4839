// A value as it was written against exact numbers.
#include "coach/written.h"

#include <algorithm>
#include <string_view>

#include "exact/rounded.h"
#include "ohmfold/decimal.h"

namespace ohmfold {
namespace {

bool is_fraction(const WrittenValue& written) {
  return written.digits.empty() || written.digits.find('/') != std::string::npos;
}

// The power of ten of the last digit.
long last_power(const WrittenValue& written) {
  const std::size_t point = written.digits.find('.');
  const std::size_t decimals = point == std::string::npos ? 0 : written.digits.size() - point - 1;
  return written.power - static_cast<long>(decimals);
}

Number unit_of_last_digit(const WrittenValue& written) {
  return scaled(Number(1), last_power(written));
}

}  // namespace

bool agrees(const WrittenValue& written, const Number& exact) {
  if (is_fraction(written) || exact.is_symbolic()) return written.number == exact;
  return agrees(written.digits, exact, written.power);
}

Range range_of(const WrittenValue& written) {
  if (is_fraction(written)) return Range::of(written.number);
  const Number half = unit_of_last_digit(written) / 2;
  return {written.number - half, written.number + half};
}

int figures_of(const WrittenValue& written) {
  if (is_fraction(written)) return 0;
  const std::string_view digits = written.digits;
  const std::size_t first = digits.find_first_of("123456789");
  if (first == std::string_view::npos) return 0;
  const std::string_view from = digits.substr(first);
  return static_cast<int>(
      std::count_if(from.begin(), from.end(), [](char c) { return c >= '0' && c <= '9'; }));
}

bool is_cut_off(const WrittenValue& written, const Number& exact) {
  if (is_fraction(written) || exact.is_symbolic() || agrees(written, exact)) return false;
  if (written.number.is_zero() || written.number.is_negative() != exact.is_negative()) return false;
  const Number size = abs(written.number);
  const Number most = size + unit_of_last_digit(written);
  return size < abs(exact) && abs(exact) < most;
}

bool is_precise(const WrittenValue& written, int figures) {
  return is_fraction(written) || figures_of(written) >= figures;
}

WrittenValue negated(const WrittenValue& written) {
  WrittenValue turned = written;
  turned.number = -written.number;
  if (written.digits.starts_with('-')) {
    turned.digits.erase(0, 1);
  } else if (!written.digits.empty()) {
    turned.digits.insert(0, 1, '-');
  }
  return turned;
}

}  // namespace ohmfold

// Quantities as text: unit symbols, and the SI prefix that suits a rounded value.

#include <array>

#include "exact/rounded.h"
#include "ohmfold/decimal.h"
#include "ohmfold/error.h"
#include "ohmfold/symbolic.h"

namespace ohmfold {
namespace {

constexpr long kLowestPrefix = -4;  // pico, in steps of a thousand
constexpr long kHighestPrefix = 3;  // giga

/// How many times a thousand goes into a number whose first digit has this power of ten; 0 where no
/// prefix reaches so far.
long suitable_prefix(long exponent) {
  const long thousands = exponent >= 0 ? exponent / 3 : -((2 - exponent) / 3);
  return thousands < kLowestPrefix || thousands > kHighestPrefix ? 0 : thousands;
}

}  // namespace

std::optional<std::string_view> prefix_symbol(long power, Letters letters) {
  constexpr std::array<std::string_view, 8> kPrefixes{"p", "n", "µ", "m", "", "k", "M", "G"};
  const long thousands = power / 3;
  if (power % 3 != 0 || thousands < kLowestPrefix || thousands > kHighestPrefix) {
    return std::nullopt;
  }
  if (thousands == -2 && letters == Letters::ascii) return "u";
  return kPrefixes.at(static_cast<std::size_t>(thousands - kLowestPrefix));
}

std::string_view symbol(Unit unit, Letters letters) {
  switch (unit) {
    case Unit::ohm:
      return letters == Letters::unicode ? "Ω" : "ohm";
    case Unit::volt:
      return "V";
    case Unit::ampere:
      return "A";
    case Unit::watt:
      return "W";
    case Unit::siemens:
      return "S";
  }
  throw InternalError("a unit without a symbol");
}

std::string exact_text(const Quantity& quantity, Letters letters) {
  return bracketed_line(quantity.number, letters)
      .append(" ")
      .append(symbol(quantity.unit, letters));
}

std::string rounded_text(const Quantity& quantity, int figures, Letters letters) {
  if (quantity.number.is_symbolic()) return exact_text(quantity, letters);
  const std::string_view unit = symbol(quantity.unit, letters);
  if (quantity.number.is_zero()) return std::string("0 ").append(unit);
  Rounded value = rounded(quantity.number, figures);
  const long thousands = suitable_prefix(value.exponent);
  value.exponent -= 3 * thousands;
  return written(value).append(" ").append(*prefix_symbol(3 * thousands, letters)).append(unit);
}

}  // namespace ohmfold

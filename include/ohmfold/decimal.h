// Between text and exact numbers: reading decimals, fractions and letter codes; rounding for
// display.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "ohmfold/value.h"

namespace ohmfold {

/// Why a text is not a number.
enum class NumberFault { none, malformed, too_large, division_by_zero };

struct ParsedNumber {
  Number number;
  NumberFault fault = NumberFault::none;
};

/// The largest count of digits in a number, and the largest exponent by size, that are read.
inline constexpr std::size_t kMostDigits = 100'000;
inline constexpr int kMostExponent = 9'999;

/// Reads "12", "4.7" (47/10), ".5", "15/8", "1.2e3", "-3" exactly. Each part of a fraction may be a
/// decimal. Cost: quadratic in the digits at worst, which kMostDigits bounds.
[[nodiscard]] ParsedNumber parse_number(std::string_view text);

/// Reads a letter code of IEC 60062 for a resistance in ohm: R47, 4R7, 470R, 4K7 (also 4k7), 2M2,
/// 1G, 5L6 (milliohm), 1T0. Nothing where the text is not such a code; nor for a letter and one
/// digit (R1), which is more likely the name of a part: the standard writes 0.1 ohm as R10.
[[nodiscard]] std::optional<Number> parse_letter_code(std::string_view text);

/// The number rounded to `figures` significant figures, half to even on the exact value, written in
/// plain decimal ("0.804", "1.20", "12300", "-0.00123"). Zero is "0". Requires figures >= 1.
/// Requires a number without symbols. From 10^15 on and below 10^-9 it is written with an exponent
/// ("1.23e21").
[[nodiscard]] std::string round_to_figures(const Number& number, int figures);

/// The number as a decimal if it ends within `most_figures` significant figures, nothing otherwise:
/// 18/5 is "3.6", 1/3 nothing. A number with symbols is no decimal.
[[nodiscard]] std::optional<std::string> terminating_decimal(const Number& number,
                                                             int most_figures);

/// Does the decimal `printed`, taken as rounded to its last written digit, agree with `exact`?
/// |printed - exact| <= half a unit of that digit, both ends included; trailing zeros of a whole
/// number may be figures or not. A fraction ("2/3") agrees only where it is equal.
/// `scale` is the power of ten that a prefix adds: "686.27" with -3 for milliamperes.
[[nodiscard]] bool agrees(std::string_view printed, const Number& exact, int scale = 0);

/// How symbols are written: "Ω" and "µ", or "ohm" and "u" for plain ASCII.
enum class Letters { unicode, ascii };

/// The SI prefix for a power of ten: "k" for 3, "" for 0; nothing where none from p to G stands for
/// it.
[[nodiscard]] std::optional<std::string_view> prefix_symbol(long power, Letters letters);

/// "Ω", "V", "A", "W", "S", or in ASCII "ohm", "V", …
[[nodiscard]] std::string_view symbol(Unit unit, Letters letters);

/// The exact value in its plain unit: "18/5 Ω", "12 V", "(r + 3) Ω".
[[nodiscard]] std::string exact_text(const Quantity& quantity, Letters letters);

/// The rounded value with the SI prefix that puts it between 1 and 1000: "686 mA", "4.70 kΩ";
/// in the plain unit where no prefix from p to G does. With symbols, the exact value.
[[nodiscard]] std::string rounded_text(const Quantity& quantity, int figures, Letters letters);

}  // namespace ohmfold

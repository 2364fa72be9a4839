// How long exact values are, and when a decimal stands beside them.
#pragma once

#include <string>

#include "ohmfold/value.h"

namespace ohmfold::views {

/// Exact values of more decimal digits than this are described, not written, where people read.
inline constexpr std::size_t kMostShownDigits = 40;
/// With symbols, the whole expression may have so many letters and signs.
inline constexpr std::size_t kMostShownLetters = 240;
/// … and where programs read.
inline constexpr std::size_t kMostWrittenDigits = 100'000;

/// Decimal digits of numerator and denominator together, or up to two more. Constant cost.
[[nodiscard]] std::size_t digit_estimate(const Number& number);

/// "86 digits", or "about 21,100 digits" where counting them would take long; "85 terms" of a
/// number with symbols.
[[nodiscard]] std::string digits_text(const Number& number);

[[nodiscard]] bool is_too_long_to_show(const Number& number);

/// "21,000": a count with commas between groups of three, as in running text.
[[nodiscard]] std::string count_text(std::size_t count);

/// What a decimal beside the exact value would be.
enum class Beside {
  nothing,  ///< the exact value is short enough by itself: 6 Ω
  equal,    ///< the decimal is the same number: 18/5 Ω = 3.6 Ω
  rounded   ///< the decimal is rounded: 15/8 A ≈ 1.88 A
};

[[nodiscard]] Beside decimal_beside(const Quantity& quantity, int figures);

}  // namespace ohmfold::views

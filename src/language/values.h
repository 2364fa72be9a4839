// A value: a number and a unit, in any of the ways that people write them.
#pragma once

#include <optional>
#include <span>

#include "language/scanner.h"
#include "ohmfold/value.h"

namespace ohmfold {

/// How many bytes at the front of `word` belong to a decimal: digits, points, an exponent.
[[nodiscard]] std::size_t decimal_length(std::string_view word);

/// As decimal_length, for a number with sign and denominator; 0 where none begins here.
[[nodiscard]] std::size_t number_length(std::string_view word);

/// Words that follow a value in a circuit file: from, to, internal.
[[nodiscard]] bool follows_value(const Token& token);

struct ReadValue {
  std::optional<Number> number;       ///< in the plain unit
  std::optional<Diagnostic> finding;  ///< an error where there is no number, else a warning
  std::size_t taken = 0;              ///< tokens that belong to the value
};

/// Reads the value at the front of `tokens`, whose last is an end token: "4.7 kohm", "4.7kΩ",
/// "4.7 k" (for ohm), "4k7" (for ohm), "15/8 V", "12". Without a unit it is in the `wanted` one,
/// which is ohm, volt, ampere or watt. A resistance must not be negative.
[[nodiscard]] ReadValue read_value(std::span<const Token> tokens, Unit wanted);

/// Reads a number without unit.
[[nodiscard]] ReadValue read_plain_number(std::span<const Token> tokens);

}  // namespace ohmfold

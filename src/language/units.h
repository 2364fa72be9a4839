// Units and their prefixes as people write them.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "ohmfold/value.h"

namespace ohmfold {

/// "kohm" is ohm with 10^3; "k" alone has no unit.
struct ParsedUnit {
  long power = 0;
  std::optional<Unit> unit;
};

/// Reads "ohm", "kΩ", "mV", "k"; nothing where the word is no unit.
[[nodiscard]] std::optional<ParsedUnit> parse_unit(std::string_view word);

/// Can a unit, known or not, begin as this word does? Requires a word that is not empty.
[[nodiscard]] bool begins_unit(std::string_view word);

/// "resistance" for ohm, "voltage" for volt.
[[nodiscard]] std::string_view quantity_in(Unit unit);

/// What a person who wrote an unknown unit probably meant; may be empty.
[[nodiscard]] std::string unit_remedy(std::string_view word, Unit wanted);

}  // namespace ohmfold

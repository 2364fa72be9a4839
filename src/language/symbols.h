// Symbols in a circuit file: their names, and values made of them.
#pragma once

#include <optional>
#include <string_view>

#include "language/draft.h"

namespace ohmfold {

/// Puts the names of all symbols that the text declares into the draft, so that a value can use a
/// symbol that is declared further down. Cost: one look through the text.
void note_symbols(Draft& draft, std::string_view text);

/// Reads a value of a part: a number and a unit, or with symbols "2 r", "r/3", "3/2 r",
/// "2 r + s + 3 ohm". A symbol has the unit of its value, or of its first use; one with symbols has
/// to be positive for all of them.
std::optional<Number> expect_value(LineReader& line, Draft& draft, Unit wanted);

}  // namespace ohmfold

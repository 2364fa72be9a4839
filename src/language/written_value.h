// A value as a work file writes it: with its digits, its sign and whatever unit stands there.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "language/line_reader.h"
#include "language/name_table.h"
#include "ohmfold/work.h"

namespace ohmfold {

/// Reads all of `tokens`, whose last is an end token, as one value: what a circuit file reads, and
/// signs, mixed numbers ("4 2/3"), "Ohm" and "R" for ohm, and values with symbols.
/// Without a unit it is in the `plain` one; any unit is read as it is. The errors go to `line`.
std::optional<WrittenValue> expect_written_value(LineReader& line, const NameTable& symbols,
                                                 std::span<const Token> tokens, Unit plain);

/// Gives a value without a unit that of `other`. Requires lists as above.
void share_unit(std::vector<Token>& tokens, std::span<const Token> other, Unit plain);

}  // namespace ohmfold

// Values with symbols as answers have them: "(29 r + 68)/(11 r + 41)".
#pragma once

#include <optional>
#include <span>

#include "language/line_reader.h"
#include "language/name_table.h"

namespace ohmfold {

struct SymbolicValue {
  Number number;             ///< in plain units
  std::optional<Unit> unit;  ///< the last that is written
};

/// Reads all of `tokens`, whose last is an end token. Multiplication and division have one rank
/// and go from left to right, whether "*" is written or not: "3/2 r" is r times 3/2. Brackets nest
/// to any depth without recursion. A unit is a factor, so that a prefix counts. Errors go to
/// `line`; values that grow too long are one of them.
std::optional<SymbolicValue> expect_symbolic_value(LineReader& line, const NameTable& symbols,
                                                   std::span<const Token> tokens);

/// Does a symbol stand in one of the words?
[[nodiscard]] bool uses_symbols(std::span<const Token> tokens, const NameTable& symbols);

}  // namespace ohmfold

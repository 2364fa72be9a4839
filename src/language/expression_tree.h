// The form of an expression: parts, and what is in series and in parallel, in flat arrays.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "language/scanner.h"
#include "ohmfold/value.h"

namespace ohmfold {

/// A resistor of an expression; without a name where `name` has no text.
struct Operand {
  Token name;
  Span where;    ///< of its name, or of its value where it has none
  Number value;  ///< 0 where operands are names
};

enum class Join : std::uint8_t { operand, series, parallel };

struct ExpressionNode {
  Join join = Join::operand;
  std::uint32_t first = 0;  ///< the operand, or the first entry of its members
  std::uint32_t count = 0;  ///< how many members
};

struct ExpressionTree {
  std::vector<Operand> operands;      ///< from left to right
  std::vector<ExpressionNode> nodes;  ///< members before those that they are members of
  std::vector<std::uint32_t> members;
  std::uint32_t root = 0;
  std::vector<Diagnostic> warnings;
  std::optional<Diagnostic> error;  ///< where there is one, the rest is of no use
};

/// What stands between the operators of an expression.
enum class OperandForm : std::uint8_t {
  values,  ///< "4 ohm", "R1:4"
  names    ///< "R1": parts that are known elsewhere, any of them more than once
};

/// Reads a whole expression. Brackets may be nested to any depth: no recursion.
[[nodiscard]] ExpressionTree parse_expression(std::span<const Token> tokens, OperandForm form);

}  // namespace ohmfold

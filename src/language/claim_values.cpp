// The value that ends a claim.

#include <utility>

#include "language/claims.h"
#include "language/values.h"
#include "language/written_value.h"

namespace ohmfold {

bool is_equals(const Token& token) {
  return token.is_sign("=") || token.is_sign("~") || token.is_sign("\xE2\x89\x88");
}

std::optional<WrittenValue> expect_claimed_value(LineReader& line, const WorkNames& names,
                                                 Unit plain) {
  if (!is_equals(line.peek())) {
    line.fail_expected("'='");
    return std::nullopt;
  }
  line.take();
  return expect_written_value(line, names.symbols(), line.rest(), plain);
}

bool read_combined_value(LineReader& line, const WorkNames& names, CombineClaim& claim) {
  const Token& next = line.peek();
  const bool is_value = next.kind == TokenKind::word && decimal_length(next.text) > 0;
  if (!is_equals(next) && !is_value) return line.expect_end();
  claim.value = expect_claimed_value(line, names, Unit::ohm);
  return claim.value.has_value();
}

std::optional<Statement> expect_value_claim(LineReader& line, const WorkNames& names,
                                            const ShortMeaning& meaning) {
  const Unit plain = plain_unit(meaning.claimed, meaning.first.text, names);
  std::optional<WrittenValue> value = expect_claimed_value(line, names, plain);
  if (!value) return std::nullopt;
  const bool right_unit = !value->unit || value->unit == plain;
  if (meaning.claimed == Claimed::current && value->digits == "0" && right_unit) {
    return NoCurrentClaim{written_name(meaning.first)};
  }
  return ValueClaim{meaning.claimed, written_name(meaning.first), written_name(meaning.second),
                    std::move(*value)};
}

}  // namespace ohmfold

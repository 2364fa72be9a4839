// Claims in words that begin with a quantity, in the words of questions.

#include <algorithm>
#include <array>

#include "language/claims.h"
#include "language/draft.h"

namespace ohmfold {
namespace {

constexpr std::array<std::string_view, 8> kFirstWords{
    "current", "voltage", "potential", "power", "resistance", "value", "equivalent", "no"};

Claimed claimed_by(Asked asked) {
  switch (asked) {
    case Asked::current_through:
      return Claimed::current;
    case Asked::voltage_across:
      return Claimed::voltage;
    case Asked::voltage_between:
      return Claimed::voltage_between;
    case Asked::potential_at:
      return Claimed::potential;
    case Asked::power_in:
      return Claimed::power;
    case Asked::resistance_between:
    case Asked::thevenin_between:
      return Claimed::resistance_between;
    case Asked::resistance_seen_by:
      return Claimed::resistance_seen_by;
    case Asked::value_of:
      break;
  }
  return Claimed::value;
}

std::optional<Statement> read_negation(LineReader& line) {
  if (line.take_word("series")) {
    for (const std::string_view word : {"or", "parallel", "pair", "left"}) {
      if (!line.expect_word(word)) return std::nullopt;
    }
    if (line.expect_end()) return NoPairClaim{};
    return std::nullopt;
  }
  if (!line.take_word("current")) {
    line.fail_expected("'current through' or 'series or parallel pair left'");
    return std::nullopt;
  }
  if (!line.expect_word("through")) return std::nullopt;
  const std::optional<Token> part = line.expect_name("a part");
  if (part && line.expect_end()) return NoCurrentClaim{written_name(*part)};
  return std::nullopt;
}

/// What the words before "=" say that a value is given of.
std::optional<ShortMeaning> expect_quantity(LineReader& line) {
  if (line.take_word("equivalent")) {
    if (!line.expect_word("resistance")) return std::nullopt;
    return ShortMeaning{Claimed::whole_resistance, {}, {}};
  }
  if (line.take_word("value")) {
    if (!line.expect_word("of")) return std::nullopt;
    const std::optional<Token> part = line.expect_name("a part");
    if (!part) return std::nullopt;
    return ShortMeaning{Claimed::value, *part, {}};
  }
  const std::optional<DraftQuestion> question = expect_question(line, true);
  if (!question) return std::nullopt;
  return ShortMeaning{claimed_by(question->asked), question->first, question->second};
}

}  // namespace

bool begins_with_quantity(const LineReader& line) {
  const Token& first = line.peek();
  const Token& second = line.peek_second();
  return first.kind == TokenKind::word && second.kind != TokenKind::sign &&
         !second.is_word("and") &&
         std::find(kFirstWords.begin(), kFirstWords.end(), first.text) != kFirstWords.end();
}

std::optional<Statement> read_quantity_claim(LineReader& line, const WorkNames& names) {
  if (line.take_word("no")) return read_negation(line);
  const std::optional<ShortMeaning> meaning = expect_quantity(line);
  return meaning ? expect_value_claim(line, names, *meaning) : std::nullopt;
}

}  // namespace ohmfold

// Claims in words that begin with a list of names: combinations, rewritings, equal potentials.

#include <algorithm>
#include <array>
#include <utility>

#include "language/claims.h"
#include "language/nearest.h"
#include "language/written_value.h"

namespace ohmfold {
namespace {

constexpr std::size_t kCorners = 3;  // of a delta, and arms of a star

/// Words that no list of names goes over.
bool ends_list(const Token& token) {
  constexpr std::array<std::string_view, 7> kWords{"in",      "at", "make", "makes",
                                                   "meeting", "is", "are"};
  return token.kind != TokenKind::word ||
         std::find(kWords.begin(), kWords.end(), token.text) != kWords.end();
}

/// "R1, R2 and R3", "R1 R2 R3"; nothing and an error where no name stands or one is missing.
std::optional<std::vector<Token>> expect_list(LineReader& line) {
  std::vector<Token> list;
  bool goes_on = true;
  while (goes_on) {
    if (ends_list(line.peek()) && line.peek().kind == TokenKind::word) {
      line.fail_expected("the name of a part");
      return std::nullopt;
    }
    const std::optional<Token> name = line.expect_name("a part");
    if (!name) return std::nullopt;
    list.push_back(*name);
    const bool comma = line.take_sign(",");
    goes_on = line.take_word("and") || comma || !ends_list(line.peek());
  }
  return list;
}

std::vector<WrittenName> written(const std::vector<Token>& list) {
  std::vector<WrittenName> names(list.size());
  std::transform(list.begin(), list.end(), names.begin(), written_name);
  return names;
}

bool expect_three(LineReader& line, const std::vector<Token>& list, std::string_view what) {
  if (list.size() == kCorners) return true;
  const Token& odd = list.size() < kCorners ? line.peek() : list[kCorners];
  line.fail(DiagnosticKind::expected, odd.where,
            {std::string("three ").append(what), std::to_string(list.size())});
  return false;
}

bool expect_make(LineReader& line) {
  if (line.take_word("make") || line.take_word("makes")) return true;
  line.fail_expected("'make' and a name for the result",
                     "write for example R1 and R2 in series make R12 = 6 ohm");
  return false;
}

std::optional<Statement> read_combination(LineReader& line, const WorkNames& names,
                                          const std::vector<Token>& list, Joining how) {
  if (list.size() < 2) {
    line.fail(DiagnosticKind::expected, list.front().where,
              {"two or more parts", described(list.front())});
    return std::nullopt;
  }
  if (!expect_make(line)) return std::nullopt;
  const std::optional<Token> result = line.expect_name("the result");
  if (!result) return std::nullopt;
  Combination combination{how, {}};
  for (const Token& name : list) combination.operands.push_back({written_name(name), {}});
  CombineClaim claim{{std::move(combination)}, written_name(*result), {}};
  if (!read_combined_value(line, names, claim)) return std::nullopt;
  return claim;
}

/// The values up to "meeting" or the end, as lists of tokens.
std::vector<std::vector<Token>> take_values(LineReader& line) {
  std::vector<std::vector<Token>> values;
  std::size_t length = 0;
  while (true) {
    const std::span<const Token> rest = line.rest();
    const Token& token = rest[length];
    const bool last = token.kind == TokenKind::end || token.is_word("meeting");
    if (!last && !token.is_sign(",") && !token.is_word("and")) {
      ++length;
      continue;
    }
    values.push_back(first_tokens(rest, length));
    for (; length > 0; --length) line.take();
    if (last) return values;
    line.take();
  }
}

bool read_values(LineReader& line, const WorkNames& names, RewriteClaim& claim) {
  if (!is_equals(line.peek())) return true;
  const Token equals = line.take();
  std::vector<std::vector<Token>> values = take_values(line);
  if (values.size() != kCorners) {
    line.fail(DiagnosticKind::expected, equals.where,
              {"three values after '='", std::to_string(values.size())},
              "commas stand between values; decimals have a point");
    return false;
  }
  for (std::vector<Token>& value : values) share_unit(value, values.back(), Unit::ohm);
  for (const std::vector<Token>& value : values) {
    auto read = expect_written_value(line, names.symbols(), value, Unit::ohm);
    if (!read) return false;
    claim.values.push_back(std::move(*read));
  }
  return true;
}

std::optional<Statement> read_rewriting(LineReader& line, const WorkNames& names,
                                        const std::vector<Token>& list, RuleName rule) {
  if (!expect_three(line, list, "parts") || !expect_make(line)) return std::nullopt;
  const auto made = expect_list(line);
  if (!made || !expect_three(line, *made, "names for the parts made")) return std::nullopt;
  RewriteClaim claim{rule, written(list), written(*made), {}, {}};
  if (!read_values(line, names, claim)) return std::nullopt;
  if (line.take_word("meeting")) {
    if (!line.expect_word("at")) return std::nullopt;
    const std::optional<Token> middle = line.expect_name("a point");
    if (!middle) return std::nullopt;
    claim.middle = written_name(*middle);
  }
  if (!line.expect_end()) return std::nullopt;
  return claim;
}

std::optional<Statement> read_how(LineReader& line, const WorkNames& names,
                                  const std::vector<Token>& list) {
  constexpr std::array<std::string_view, 4> kHow{"series", "parallel", "delta", "star"};
  if (line.take_word(kHow[0])) return read_combination(line, names, list, Joining::series);
  if (line.take_word(kHow[1])) return read_combination(line, names, list, Joining::parallel);
  if (line.take_word(kHow[2])) return read_rewriting(line, names, list, RuleName::delta_star);
  if (line.take_word(kHow[3])) return read_rewriting(line, names, list, RuleName::star_delta);
  const Token& word = line.peek();
  const std::string_view meant =
      word.kind == TokenKind::word ? nearest(word.text, kHow) : std::string_view();
  line.fail_expected("'series', 'parallel', 'delta' or 'star'",
                     meant.empty() ? "" : "did you mean '" + std::string(meant) + "'?");
  return std::nullopt;
}

std::optional<Statement> read_same_potential(LineReader& line, const std::vector<Token>& list) {
  for (const std::string_view word : {"the", "same", "potential"}) {
    if (!line.expect_word(word)) return std::nullopt;
  }
  if (!line.expect_end()) return std::nullopt;
  if (list.size() == 2) return SamePotentialClaim{written_name(list[0]), written_name(list[1])};
  const Token& odd = list.size() < 2 ? list.front() : list[2];
  line.fail(DiagnosticKind::expected, odd.where, {"two points", described(odd)},
            "a claim compares two points");
  return std::nullopt;
}

/// A word that was meant to begin a claim, where the list leads to none.
void fail_after_list(LineReader& line, const std::vector<Token>& list, const Token& second) {
  constexpr std::array<std::string_view, 7> kFirstWords{
      "current", "voltage", "potential", "power", "resistance", "equivalent", "case"};
  const Token& first = list.front();
  const std::string_view meant = nearest(first.text, kFirstWords);
  const bool listed = second.is_sign(",") || second.is_word("and") || line.peek().is_word("make") ||
                      line.peek().is_word("makes") || line.peek().is_word("are");
  if (!meant.empty()) {
    line.fail(DiagnosticKind::unknown_claim, first.where, {described(first)},
              "did you mean '" + std::string(meant) + "'?");
  } else if (line.peek().kind == TokenKind::sign && list.size() > 1 && !is_equals(line.peek())) {
    line.fail(DiagnosticKind::expected, list[1].where, {"'='", described(list[1])},
              "a combination looks like R12 = R1 + R2");
  } else if (listed) {
    line.fail_expected("'in series', 'in parallel' or 'at the same potential'");
  } else {
    line.fail(DiagnosticKind::unknown_claim, first.where, {described(first)});
  }
}

}  // namespace

std::optional<Statement> read_list_claim(LineReader& line, const WorkNames& names) {
  const Token second = line.peek_second();
  const auto list = expect_list(line);
  if (!list) return std::nullopt;
  if (line.take_word("in")) return read_how(line, names, *list);
  if (line.take_word("at")) return read_same_potential(line, *list);
  fail_after_list(line, *list, second);
  return std::nullopt;
}

}  // namespace ohmfold

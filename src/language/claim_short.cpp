// Claims in the notation of textbooks: "R12 = R1 + R2 = 6 ohm", "V_AB = 3 V", "V_A = V_B".

#include <algorithm>
#include <array>
#include <utility>

#include "language/claims.h"
#include "language/expression_tree.h"
#include "language/nearest.h"
#include "language/symbolic_expression.h"
#include "language/values.h"
#include "ohmfold/decimal.h"

namespace ohmfold {
namespace {

bool joins(const Token& token) {
  return token.kind == TokenKind::sign && !token.is_sign(",") && !token.is_sign(":") &&
         !is_equals(token);
}

/// Tokens up to the next "=" or the end.
std::size_t length_to_equals(std::span<const Token> tokens) {
  const auto end = std::find_if(tokens.begin(), tokens.end(), [](const Token& token) {
    return token.kind == TokenKind::end || is_equals(token);
  });
  return static_cast<std::size_t>(end - tokens.begin());
}

/// Do operators join parts rather than values as in "3/2 r + 2 ohm"?
bool joins_parts(std::span<const Token> tokens, const WorkNames& names) {
  const auto is_parallel = [](const Token& token) {
    return joins(token) && token.text != "+" && token.text != "(" && token.text != ")";
  };
  const auto is_part = [&names](const Token& token) { return names.is_part(token.text); };
  const auto is_number = [](const Token& token) {
    return token.kind == TokenKind::word && decimal_length(token.text) > 0;
  };
  if (std::none_of(tokens.begin(), tokens.end(), joins)) return false;
  if (std::any_of(tokens.begin(), tokens.end(), is_parallel)) return true;
  if (std::any_of(tokens.begin(), tokens.end(), is_part)) return true;
  return std::none_of(tokens.begin(), tokens.end(), is_number) &&
         !uses_symbols(tokens, names.symbols());
}

/// Does a name stand where a value is wanted? "R47" is one only where no part has that name.
bool is_no_value(std::span<const Token> tokens, const WorkNames& names) {
  if (tokens.empty() || !is_name(tokens.front().text)) return false;
  const std::string_view name = tokens.front().text;
  return names.is_part(name) || (!names.symbols().contains(name) && !parse_letter_code(name));
}

/// The combinations of a tree, each operand a name or an earlier one of them.
std::vector<Combination> combinations_of(const ExpressionTree& tree) {
  std::vector<Combination> combinations;
  std::vector<std::size_t> index(tree.nodes.size());
  for (std::size_t i = 0; i < tree.nodes.size(); ++i) {
    const ExpressionNode& node = tree.nodes[i];
    if (node.join == Join::operand) continue;
    Combination combination;
    combination.how = node.join == Join::series ? Joining::series : Joining::parallel;
    for (std::uint32_t k = 0; k < node.count; ++k) {
      const std::uint32_t member = tree.members[node.first + k];
      const ExpressionNode& operand = tree.nodes[member];
      if (operand.join == Join::operand) {
        combination.operands.push_back({written_name(tree.operands[operand.first].name), {}});
      } else {
        combination.operands.push_back({{}, index[member]});
      }
    }
    index[i] = combinations.size();
    combinations.push_back(std::move(combination));
  }
  return combinations;
}

std::optional<Statement> read_combination(LineReader& line, const WorkNames& names,
                                          const Token& result, std::size_t length) {
  ExpressionTree tree = parse_expression(first_tokens(line.rest(), length), OperandForm::names);
  if (tree.error) {
    line.fail(tree.error->kind, tree.error->where, tree.error->arguments, tree.error->remedy);
    return std::nullopt;
  }
  CombineClaim claim{combinations_of(tree), written_name(result), {}};
  if (claim.combinations.empty()) {
    line.fail_expected("two or more parts joined by '+' or '||'");
    return std::nullopt;
  }
  for (; length > 0; --length) line.take();
  if (!read_combined_value(line, names, claim)) return std::nullopt;
  return claim;
}

/// The point in "V_A", where it can be one; empty otherwise.
Token point_in(const Token& word, const WorkNames& names) {
  if (word.kind != TokenKind::word || !word.text.starts_with("V_")) return {};
  const std::vector<ShortMeaning> meanings = names.meanings(word);
  const Claimed claimed = meanings.front().claimed;
  const bool unknown = claimed == Claimed::voltage && !names.is_part(meanings.front().first.text);
  const bool point = meanings.size() == 1 && (claimed == Claimed::potential || unknown);
  return point && is_name(meanings.front().first.text) ? meanings.front().first : Token{};
}

std::optional<Statement> read_equal_potentials(LineReader& line, const WorkNames& names,
                                               const Token& left) {
  const Token first = point_in(left, names);
  const Token second = point_in(line.peek(), names);
  if (!first.text.empty() && !second.text.empty()) {
    line.take();
    if (!line.expect_end()) return std::nullopt;
    return SamePotentialClaim{written_name(first), written_name(second)};
  }
  const bool potential = left.text.starts_with("V_");
  const bool other = left.text.starts_with("I_") || left.text.starts_with("P_");
  line.fail_expected("a value", other       ? "write a number and a unit"
                                : potential ? "potentials of two points are compared as V_A = V_B"
                                            : "parts are combined as R12 = R1 + R2");
  return std::nullopt;
}

std::optional<ShortMeaning> expect_meaning(LineReader& line, const WorkNames& names,
                                           const Token& word) {
  const std::vector<ShortMeaning> meanings = names.meanings(word);
  if (meanings.size() == 1) return meanings.front();
  constexpr std::size_t kMostShown = 3;
  std::vector<std::string> phrases(meanings.size());
  std::transform(meanings.begin(), meanings.end(), phrases.begin(), in_words);
  const std::vector<std::string_view> views(phrases.begin(), phrases.end());
  line.fail(DiagnosticKind::ambiguous_short_form, word.where,
            {std::string(word.text), listed(views, kMostShown), phrases.front() + " = ..."});
  return std::nullopt;
}

void fail_without_name(LineReader& line) {
  const std::span<const Token> rest = line.rest();
  const Token& last = rest[length_to_equals(rest) - 1];
  const Token& first = rest.front();
  Span where = first.where;
  where.length = last.where.column + last.where.length - where.column;
  line.fail(DiagnosticKind::combination_without_name, where, {});
}

}  // namespace

bool is_short(const LineReader& line) {
  const Token& second = line.peek_second();
  return line.peek().kind == TokenKind::sign || is_equals(second) || joins(second);
}

std::optional<Statement> read_short_claim(LineReader& line, const WorkNames& names) {
  const bool named = line.peek().kind == TokenKind::word;
  if (line.peek().is_sign("(") || (named && joins(line.peek_second()))) {
    fail_without_name(line);
    return std::nullopt;
  }
  const std::optional<Token> left = line.expect_name("a part");
  if (!left) return std::nullopt;
  const std::span<const Token> right = line.rest().subspan(1);
  const std::size_t length = length_to_equals(right);
  const bool has_more = right[length].kind != TokenKind::end;
  const std::span<const Token> side = right.first(length);
  const bool sums = has_more && std::any_of(side.begin(), side.end(), joins);
  if (sums || joins_parts(side, names)) {
    if (!line.expect_sign("=")) return std::nullopt;
    return read_combination(line, names, *left, length);
  }
  if (has_more && length == 1 && !side.front().text.starts_with("V_")) {
    line.take();
    line.fail_expected("parts joined by '+' or '||'", "a claim has one value, at its end");
    return std::nullopt;
  }
  if (is_no_value(side, names)) {
    line.take();
    return read_equal_potentials(line, names, *left);
  }
  const std::optional<ShortMeaning> meaning = expect_meaning(line, names, *left);
  return meaning ? expect_value_claim(line, names, *meaning) : std::nullopt;
}

}  // namespace ohmfold

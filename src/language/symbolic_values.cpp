// Values with symbols: sums of multiples of symbols and of plain values.
#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "language/nearest.h"
#include "language/symbols.h"
#include "language/units.h"
#include "language/values.h"
#include "ohmfold/decimal.h"
#include "ohmfold/symbolic.h"

namespace ohmfold {
namespace {

constexpr bool is_digit(char c) {
  return (c >= '0' && c <= '9') || c == '.';
}
constexpr bool is_of_name(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' ||
         static_cast<unsigned char>(c) >= 0x80;
}

/// A word cut into numbers ("3/2"), names and signs; `kind` is sign for the latter, word for both
/// others.
void cut(const Token& word, std::vector<Token>& pieces) {
  std::size_t at = 0;
  while (at < word.text.size()) {
    const std::string_view rest = word.text.substr(at);
    Token piece{TokenKind::word, {}, word.where};
    std::size_t length = 1;
    if (is_digit(rest.front())) {
      length = std::max<std::size_t>(1, decimal_length(rest));
      const bool fraction = length + 1 < rest.size() && rest[length] == '/';
      const std::size_t below = fraction ? decimal_length(rest.substr(length + 1)) : 0;
      if (below > 0) length += 1 + below;
    } else if (is_of_name(rest.front())) {
      length = static_cast<std::size_t>(std::find_if_not(rest.begin(), rest.end(), is_of_name) -
                                        rest.begin());
    } else {
      piece.kind = TokenKind::sign;
    }
    piece.text = rest.substr(0, length);
    piece.where.column += static_cast<std::uint32_t>(at);
    piece.where.length = static_cast<std::uint32_t>(length);
    pieces.push_back(piece);
    at += length;
  }
}

/// Reads the pieces of one value, which end with an end token.
class SumReader {
 public:
  SumReader(LineReader& line, Draft& draft, const std::vector<Token>& pieces, Unit wanted)
      : line_(line), draft_(draft), pieces_(pieces), wanted_(wanted) {}

  std::optional<Number> run() {
    const Token first = peek();
    bool negative = take("-");
    while (true) {
      const std::optional<Number> term = expect_term();
      if (!term) return std::nullopt;
      sum_ = negative ? sum_ - *term : sum_ + *term;
      if (peek().kind == TokenKind::end) break;
      negative = peek().is_sign("-");
      if (!take("-") && !take("+")) return fail_after_term();
    }
    if (sum_.is_positive()) return sum_;
    Span where = first.where;
    where.length = pieces_.back().where.column - where.column;
    std::vector<std::string_view> names(used_.begin(), used_.end());
    line_.fail(DiagnosticKind::value_not_positive, where, {listed(names, 4)});
    return std::nullopt;
  }

 private:
  [[nodiscard]] const Token& peek() const { return pieces_[at_]; }
  bool take(std::string_view sign) {
    if (!peek().is_sign(sign)) return false;
    ++at_;
    return true;
  }
  [[nodiscard]] std::optional<std::uint32_t> symbol_at(const Token& piece) const {
    return piece.kind == TokenKind::word ? draft_.symbols.find(piece.text) : std::nullopt;
  }

  /// "2 r", "2*r", "r/3", "3 ohm", "4k7".
  std::optional<Number> expect_term() {
    if (peek().kind != TokenKind::word) {
      line_.fail(DiagnosticKind::expected, peek().where,
                 {"a number or a symbol", described(peek())});
      return std::nullopt;
    }
    if (symbol_at(peek())) return expect_multiple(Number(1));
    if (!is_digit(peek().text.front())) return expect_plain();
    const Token& next = pieces_[at_ + 1];
    const bool times = next.is_sign("*");
    if (!times && !symbol_at(next)) return expect_plain();
    const ParsedNumber factor = parse_number(peek().text);
    if (factor.fault != NumberFault::none) return expect_plain();  // which says what is wrong
    at_ += times ? 2 : 1;
    if (symbol_at(peek())) return expect_multiple(factor.number);
    fail_unknown(peek());
    return std::nullopt;
  }

  std::optional<Number> expect_multiple(const Number& factor) {
    const Token name = peek();
    if (!use(*symbol_at(name), name)) return std::nullopt;
    ++at_;
    const Number multiple = factor * Number::symbol(name.text);
    if (!peek().is_sign("/")) return multiple;
    const Token& below = pieces_[at_ + 1];
    const bool digit = below.kind == TokenKind::word && is_digit(below.text.front());
    const ParsedNumber divisor = parse_number(digit ? below.text : std::string_view());
    if (digit && divisor.fault == NumberFault::none && !divisor.number.is_zero()) {
      at_ += 2;
      return multiple / divisor.number;
    }
    if (digit && divisor.fault == NumberFault::none) {
      line_.fail(DiagnosticKind::division_by_zero, below.where,
                 {std::string(name.text) + "/" + std::string(below.text)});
    } else if (symbol_at(below)) {
      line_.fail(DiagnosticKind::product_of_symbols, below.where, {});
    } else {
      line_.fail(DiagnosticKind::expected, below.where, {"a number", described(below)});
    }
    return std::nullopt;
  }

  /// A plain value, read as anywhere else.
  std::optional<Number> expect_plain() {
    Token number = peek();
    const Token& next = pieces_[at_ + 1];
    const bool has_unit = next.kind == TokenKind::word && !is_digit(next.text.front());
    std::vector<Token> tokens;
    if (has_unit && number.touches(next)) {
      number.text = {number.text.data(), number.text.size() + next.text.size()};
      number.where.length += next.where.length;
      tokens = {number};
    } else {
      tokens = {number};
      if (has_unit) tokens.push_back(next);
    }
    tokens.push_back(end_token(tokens, number.where.line));
    ReadValue value = read_value(tokens, wanted_);
    const bool unknown = !value.number && value.finding &&
                         (value.finding->kind == DiagnosticKind::symbol_in_value ||
                          value.finding->kind == DiagnosticKind::unknown_unit) &&
                         value.finding->remedy.find("did you mean") == std::string::npos;
    if (unknown) {
      fail_unknown(is_digit(number.text.front()) ? next : number);
      return std::nullopt;
    }
    if (value.finding && value.number) {
      line_.warn(value.finding->kind, value.finding->where, value.finding->arguments,
                 value.finding->remedy);
    } else if (value.finding) {
      line_.fail(value.finding->kind, value.finding->where, value.finding->arguments,
                 value.finding->remedy);
    }
    at_ += has_unit ? 2 : 1;
    return value.number;
  }

  std::optional<Number> fail_after_term() {
    const Token& piece = peek();
    if (symbol_at(piece) || piece.is_sign("*") || piece.is_sign("^") || piece.is_sign("/") ||
        (piece.kind == TokenKind::word && is_digit(piece.text.front()))) {
      line_.fail(DiagnosticKind::product_of_symbols, piece.where, {});
    } else if (piece.kind == TokenKind::word && parse_unit(piece.text)) {
      line_.fail(DiagnosticKind::trailing_words, piece.where, {described(piece)},
                 "a symbol brings its unit with it");
    } else if (piece.kind == TokenKind::word) {
      fail_unknown(piece);
    } else {
      line_.fail(DiagnosticKind::expected, piece.where, {"'+' or 'from'", described(piece)});
    }
    return std::nullopt;
  }

  void fail_unknown(const Token& piece) {
    line_.fail(
        DiagnosticKind::unknown_symbol, piece.where, {std::string(piece.text)},
        draft_.symbols.names().size() > 1 || !nearest(piece.text, draft_.symbols.names()).empty()
            ? suggestion(piece.text, draft_.symbols.names(), "symbols")
            : std::string("the only symbol is ").append(draft_.symbols.names().front()));
  }

  /// Notes that the symbol stands for a quantity of this value's unit.
  bool use(std::uint32_t number, const Token& name) {
    DraftSymbol& symbol = draft_.symbol_drafts[number];
    symbol.is_used = true;
    if (!symbol.unit) {
      symbol.unit = wanted_;
      symbol.unit_where = name.where;
    }
    if (symbol.unit != wanted_) {
      line_.fail(DiagnosticKind::two_dimensions, name.where,
                 {std::string(name.text), std::string(quantity_in(wanted_)),
                  std::string(quantity_in(*symbol.unit))},
                 {}, symbol.unit_where);
      return false;
    }
    if (std::find(used_.begin(), used_.end(), name.text) == used_.end()) {
      if (used_.size() == kMostSymbols) {
        line_.fail(DiagnosticKind::too_many_symbols, name.where, {std::to_string(kMostSymbols)});
        return false;
      }
      used_.push_back(name.text);
    }
    return true;
  }

  LineReader& line_;
  Draft& draft_;
  const std::vector<Token>& pieces_;
  Unit wanted_;
  std::size_t at_ = 0;
  Number sum_;
  std::vector<std::string_view> used_;
};

/// Does the value need a symbol, or name something that is neither number nor unit?
bool is_symbolic(const Draft& draft, const std::vector<Token>& pieces) {
  return std::any_of(pieces.begin(), pieces.end(), [&](const Token& piece) {
    return piece.kind == TokenKind::word && !is_digit(piece.text.front()) &&
           (draft.symbols.contains(piece.text) || !parse_unit(piece.text));
  });
}

}  // namespace

std::optional<Number> expect_value(LineReader& line, Draft& draft, Unit wanted) {
  if (draft.symbols.names().empty()) return line.expect_value(wanted);
  std::vector<Token> pieces;
  std::size_t words = 0;
  for (const Token& token : line.rest()) {
    if (token.kind != TokenKind::word || follows_value(token)) break;
    cut(token, pieces);
    ++words;
  }
  pieces.push_back(end_token(pieces, line.peek().where.line));
  if (!is_symbolic(draft, pieces)) return line.expect_value(wanted);
  std::optional<Number> value = SumReader(line, draft, pieces, wanted).run();
  for (; value && words > 0; --words) line.take();
  return value;
}

}  // namespace ohmfold

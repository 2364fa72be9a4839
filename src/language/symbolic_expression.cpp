// Values with symbols, with a stack of operators and one of values.

#include "language/symbolic_expression.h"

#include <algorithm>
#include <array>
#include <string>
#include <utility>
#include <vector>

#include "exact/rounded.h"
#include "language/nearest.h"
#include "language/units.h"
#include "language/values.h"
#include "ohmfold/decimal.h"
#include "ohmfold/symbolic.h"

namespace ohmfold {
namespace {

constexpr std::size_t kMostPieces = 1'000;
constexpr std::size_t kMostBits = 100'000;
constexpr int kMostPower = 20;

constexpr bool begins_number(char c) {
  return (c >= '0' && c <= '9') || c == '.';
}
/// Of the name of a symbol, or of a unit such as Ω.
constexpr bool is_of_name(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' ||
         static_cast<unsigned char>(c) >= 0x80;
}

/// Characters that mean an operator; a raised figure is a power.
struct Operator {
  std::string_view text;
  char meaning;
};
constexpr std::array<Operator, 6> kOperators{{{"\xE2\x88\x92", '-'},
                                              {"\xC3\x97", '*'},
                                              {"\xC2\xB7", '*'},
                                              {"\xE2\x8B\x85", '*'},
                                              {"\xC2\xB2", '2'},
                                              {"\xC2\xB3", '3'}}};

/// A number ('n'), a name ('s'), the end (0), or an operator by its own character.
struct Piece {
  char kind = 0;
  Token token;
};

/// The piece at the front of a word that is not empty.
Piece front_piece(std::string_view word) {
  Piece piece{0, {TokenKind::word, {}, {}}};
  for (const Operator& entry : kOperators) {
    if (!word.starts_with(entry.text)) continue;
    piece.kind = entry.meaning;
    piece.token.text = word.substr(0, entry.text.size());
    return piece;
  }
  std::size_t length = 1;
  if (begins_number(word.front())) {
    piece.kind = 'n';
    length = decimal_length(word);
  } else if (is_of_name(word.front())) {
    piece.kind = 's';
    length = static_cast<std::size_t>(std::find_if_not(word.begin(), word.end(), is_of_name) -
                                      word.begin());
    for (const Operator& entry : kOperators) length = std::min(length, word.find(entry.text));
  } else {
    piece.kind = word.front();
  }
  piece.token.text = word.substr(0, length);
  return piece;
}

/// The pieces of the words and signs, no more than one beyond kMostPieces, and an end.
std::vector<Piece> pieces_of(std::span<const Token> tokens) {
  std::vector<Piece> pieces;
  for (const Token& token : tokens) {
    if (token.kind == TokenKind::text) pieces.push_back({'"', token});
    const bool is_cut = token.kind == TokenKind::word || token.kind == TokenKind::sign;
    std::size_t at = 0;
    while (is_cut && at < token.text.size() && pieces.size() <= kMostPieces) {
      Piece piece = front_piece(token.text.substr(at));
      piece.token.where = token.where;
      piece.token.where.column += static_cast<std::uint32_t>(at);
      piece.token.where.length = static_cast<std::uint32_t>(piece.token.text.size());
      at += piece.token.text.size();
      pieces.push_back(piece);
    }
  }
  pieces.push_back({0, tokens.back()});
  return pieces;
}

/// How tightly an operation binds; '~' is the sign in front of a term.
int rank(char operation) {
  switch (operation) {
    case '*':
    case '/':
      return 2;
    case '+':
    case '-':
    case '~':
      return 1;
    default:
      return 0;
  }
}

class SymbolicReader {
 public:
  SymbolicReader(LineReader& line, const NameTable& symbols, std::span<const Token> tokens)
      : line_(line), symbols_(symbols), pieces_(pieces_of(tokens)) {}

  /// Throws BeyondBudget.
  std::optional<SymbolicValue> run() {
    if (pieces_.size() > kMostPieces) throw BeyondBudget("a value of too many pieces");
    while (peek().kind != 0) {
      const bool read = wants_operand_ ? read_operand() : read_operator();
      if (!read) return std::nullopt;
    }
    if (wants_operand_) {
      fail_operand();
    } else if (reduce(1) && !operations_.empty()) {
      fail_expected("')'");
    }
    if (line_.error()) return std::nullopt;
    return SymbolicValue{std::move(values_.back()), unit_};
  }

 private:
  struct Operation {
    char kind;
    Span where;
  };

  [[nodiscard]] const Piece& peek() const { return pieces_[at_]; }
  [[nodiscard]] bool is_symbol(const Piece& piece) const {
    return piece.kind == 's' && symbols_.contains(piece.token.text);
  }

  bool fail_expected(std::string_view what) {
    line_.fail(DiagnosticKind::expected, peek().token.where,
               {std::string(what), described(peek().token)});
    return false;
  }
  bool fail_operand() { return fail_expected("a number or a symbol"); }

  void push(char operation) {
    operations_.push_back({operation, peek().token.where});
    wants_operand_ = true;
  }
  void push_value(Number value) {
    values_.push_back(std::move(value));
    wants_operand_ = false;
  }

  /// What can begin a term: a sign only where a sum begins.
  bool read_operand() {
    const Piece& piece = peek();
    const bool begins = at_ == 0 || pieces_[at_ - 1].kind == '(';
    if (piece.kind == '(') {
      push('(');
    } else if (begins && (piece.kind == '-' || piece.kind == '+')) {
      if (piece.kind == '-') push('~');
    } else if (is_symbol(piece)) {
      push_value(Number::symbol(piece.token.text));
    } else if (piece.kind == 'n') {
      ParsedNumber parsed = parse_number(piece.token.text);
      if (parsed.fault != NumberFault::none) {
        line_.fail(DiagnosticKind::bad_number, piece.token.where, {std::string(piece.token.text)});
        return false;
      }
      push_value(std::move(parsed.number));
    } else if (piece.kind == 's') {
      line_.fail(DiagnosticKind::unknown_symbol, piece.token.where, {std::string(piece.token.text)},
                 suggestion(piece.token.text, symbols_.names(), "symbols"));
      return false;
    } else {
      return fail_operand();
    }
    ++at_;
    return true;
  }

  /// What can follow a term: an operator, a factor without one, a unit or a closing bracket.
  bool read_operator() {
    const Piece& piece = peek();
    if (rank(piece.kind) > 0 && piece.kind != '~') {
      if (!reduce(rank(piece.kind))) return false;
      push(piece.kind);
      ++at_;
      return true;
    }
    if (piece.kind == '(' || piece.kind == 's') return read_factor();
    if (piece.kind == ')') return close_bracket();
    if (piece.kind == '2' || piece.kind == '3' || piece.kind == '^') return read_power();
    return fail_expected("an operator or the end of the value");
  }

  /// A bracket, a symbol or a unit that multiplies what stands before it.
  bool read_factor() {
    const Piece& piece = peek();
    if (!reduce(2)) return false;
    push('*');
    const auto unit =
        piece.kind == 's' && !is_symbol(piece) ? parse_unit(piece.token.text) : std::nullopt;
    if (!unit) return true;  // read as an operand next
    push_value(scaled(Number(1), unit->power));
    unit_ = unit->unit.value_or(Unit::ohm);
    ++at_;
    return true;
  }

  bool close_bracket() {
    if (!reduce(1)) return false;
    if (operations_.empty()) return fail_expected("an operator or the end of the value");
    operations_.pop_back();
    ++at_;
    return true;
  }

  /// "^2", "²"
  bool read_power() {
    if (peek().kind == '^') {
      ++at_;
      if (peek().kind != 'n') return fail_expected("a whole number");
    }
    const std::string_view figures = peek().kind == 'n'   ? peek().token.text
                                     : peek().kind == '2' ? "2"
                                                          : "3";
    int power = 0;
    while (power <= kMostPower && std::to_string(power) != figures) ++power;
    if (power > kMostPower) return fail_expected("a whole power up to 20");
    const Number base = values_.back();
    values_.back() = Number(1);
    for (; power > 0; --power) values_.back() = bounded(values_.back() * base);
    ++at_;
    const bool again = peek().kind == '^' || peek().kind == '2' || peek().kind == '3';
    return !again || fail_expected("an operator or the end of the value");
  }

  /// Carries out what stands open back to a bracket and binds at least so tightly.
  bool reduce(int least) {
    while (!operations_.empty() && rank(operations_.back().kind) >= least) {
      const Operation operation = operations_.back();
      operations_.pop_back();
      const Number right = std::move(values_.back());
      values_.pop_back();
      if (operation.kind == '~') {
        values_.push_back(-right);
        continue;
      }
      if (operation.kind == '/' && right.is_zero()) {
        line_.fail(DiagnosticKind::division_by_zero, operation.where, {"/"});
        return false;
      }
      values_.back() = bounded(combined(values_.back(), operation.kind, right));
    }
    return true;
  }

  static Number combined(const Number& left, char operation, const Number& right) {
    switch (operation) {
      case '+':
        return left + right;
      case '-':
        return left - right;
      case '*':
        return left * right;
      default:
        return left / right;
    }
  }

  static Number bounded(Number number) {
    if (number.bits() > kMostBits) throw BeyondBudget("a value of too many digits");
    return number;
  }

  LineReader& line_;
  const NameTable& symbols_;
  std::vector<Piece> pieces_;
  std::size_t at_ = 0;
  std::vector<Operation> operations_;
  std::vector<Number> values_;
  bool wants_operand_ = true;
  std::optional<Unit> unit_;
};

}  // namespace

std::optional<SymbolicValue> expect_symbolic_value(LineReader& line, const NameTable& symbols,
                                                   std::span<const Token> tokens) {
  try {
    return SymbolicReader(line, symbols, tokens).run();
  } catch (const BeyondBudget&) {
    line.fail(DiagnosticKind::value_too_long, tokens.front().where, {});
    return std::nullopt;
  }
}

bool uses_symbols(std::span<const Token> tokens, const NameTable& symbols) {
  if (symbols.names().empty()) return false;
  const std::vector<Piece> pieces = pieces_of(tokens);
  return std::any_of(pieces.begin(), pieces.end(), [&symbols](const Piece& piece) {
    return piece.kind == 's' && symbols.contains(piece.token.text);
  });
}

}  // namespace ohmfold

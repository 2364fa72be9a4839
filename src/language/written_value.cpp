// A value as a work file writes it: with its digits, its sign and whatever unit stands there.

#include "language/written_value.h"

#include <algorithm>
#include <string>
#include <tuple>
#include <utility>

#include "exact/rounded.h"
#include "language/symbolic_expression.h"
#include "language/units.h"
#include "language/values.h"
#include "ohmfold/decimal.h"

namespace ohmfold {
namespace {

constexpr std::string_view kMinusSign = "\xE2\x88\x92";  // U+2212

Token cut_off(Token& word, std::size_t length) {
  Token front = word;
  front.text = word.text.substr(0, length);
  front.where.length = static_cast<std::uint32_t>(length);
  word.text.remove_prefix(length);
  word.where.column += front.where.length;
  word.where.length -= front.where.length;
  return front;
}

/// Each minus sign of typographers as a sign of its own, spelled as on a keyboard.
std::vector<Token> with_plain_minus(std::span<const Token> tokens) {
  std::vector<Token> plain;
  for (Token token : tokens) {
    std::size_t at = 0;
    while (token.kind == TokenKind::word &&
           (at = token.text.find(kMinusSign)) != std::string_view::npos) {
      if (at > 0) plain.push_back(cut_off(token, at));
      plain.push_back(cut_off(token, kMinusSign.size()));
      plain.back().kind = TokenKind::sign;
      plain.back().text = "-";
    }
    if (token.kind != TokenKind::word || !token.text.empty()) plain.push_back(token);
  }
  return plain;
}

bool is_whole(const Token& token) {
  return token.kind == TokenKind::word &&
         token.text.find_first_not_of("0123456789") == std::string_view::npos;
}

bool begins_with_fraction(const Token& token) {
  if (token.kind != TokenKind::word) return false;
  const std::size_t above = decimal_length(token.text);
  const std::string_view rest = token.text.substr(above);
  return above > 0 && rest.starts_with('/') && decimal_length(rest.substr(1)) > 0;
}

std::optional<Unit> unit_in(const Token& token) {
  if (token.kind != TokenKind::word) return std::nullopt;
  const auto parsed = parse_unit(token.text);
  return parsed ? parsed->unit : std::nullopt;
}

/// A value without symbols in its pieces, each as the circuit language spells it.
struct Pieces {
  bool negative = false;
  std::optional<Token> whole;  ///< of a mixed number
  std::vector<Token> tokens;   ///< the number, its unit where it has one, what else stands there
  bool has_unit = false;
  bool is_code = false;  ///< "4k7"
};

/// "Ohm", "kOhm" and "R" as circuit files write them.
Token usual_unit(Token unit) {
  if (unit.text == "R" || unit.text == "Ohm") unit.text = "ohm";
  if (unit.text == "kOhm") unit.text = "kohm";
  if (unit.text == "MOhm") unit.text = "Mohm";
  if (unit.text == "mOhm") unit.text = "mohm";
  return unit;
}

/// Takes the sign off the front.
bool take_sign(std::span<const Token>& rest, Token& number) {
  const bool apart =
      rest.front().is_sign("-") || rest.front().is_sign("+") || rest.front().is_word("-");
  const bool negative = rest.front().text.starts_with('-');
  if (apart) rest = rest.subspan(1);
  number = rest.front();
  if (!apart && negative) cut_off(number, 1);
  rest = rest.subspan(number.kind == TokenKind::end ? 0 : 1);
  return negative;
}

Pieces pieces_of(std::span<const Token> rest, Unit plain) {
  Pieces pieces;
  Token number;
  pieces.negative = take_sign(rest, number);
  if (is_whole(number) && begins_with_fraction(rest.front())) {
    pieces.whole = std::exchange(number, rest.front());
    rest = rest.subspan(1);
  }
  const bool may_be_code = plain == Unit::ohm || unit_in(usual_unit(rest.front())) == Unit::ohm;
  pieces.is_code = may_be_code && !pieces.whole && number.kind == TokenKind::word &&
                   parse_letter_code(number.text).has_value();
  if (number.kind == TokenKind::word) {
    const std::size_t length = pieces.is_code ? number.text.size() : number_length(number.text);
    const bool glued =
        length > 0 && length < number.text.size() && begins_unit(number.text.substr(length));
    pieces.tokens.push_back(glued ? cut_off(number, length) : number);
    const Token& next = glued ? number : rest.front();
    pieces.has_unit = next.kind == TokenKind::word && begins_unit(next.text);
    if (pieces.has_unit) pieces.tokens.push_back(usual_unit(next));
    if (pieces.has_unit && !glued) rest = rest.subspan(1);
  } else if (number.kind != TokenKind::end) {
    pieces.tokens.push_back(number);
  }
  pieces.tokens.insert(pieces.tokens.end(), rest.begin(), rest.end());
  return pieces;
}

/// "1.2e3" as "1.2" and 3.
std::pair<std::string, int> without_exponent(std::string_view number) {
  const std::size_t at = number.find_first_of("eE");
  if (at == std::string_view::npos) return {std::string(number), 0};
  int size = 0;
  for (const char c : number.substr(at + 1)) {
    if (c >= '0' && c <= '9') size = 10 * size + (c - '0');
  }
  return {std::string(number.substr(0, at)), number[at + 1] == '-' ? -size : size};
}

/// "14/3", "5/1": what is exact shows it.
std::string as_fraction(const Number& number) {
  const std::string text = number.to_string();
  return text.find('/') == std::string::npos ? text + "/1" : text;
}

class WrittenValueReader {
 public:
  WrittenValueReader(LineReader& line, const NameTable& symbols, std::span<const Token> tokens,
                     Unit plain)
      : line_(line), symbols_(symbols), tokens_(with_plain_minus(tokens)), plain_(plain) {}

  std::optional<WrittenValue> run() {
    value_.where = tokens_.front().where;
    const Token& last = tokens_[tokens_.size() < 2 ? 0 : tokens_.size() - 2];
    value_.where.length = last.where.column + last.where.length - value_.where.column;
    const bool read = uses_symbols(tokens_, symbols_) ? read_symbolic() : read_plain();
    return read ? std::optional(std::move(value_)) : std::nullopt;
  }

 private:
  bool read_symbolic() {
    std::optional<SymbolicValue> value = expect_symbolic_value(line_, symbols_, tokens_);
    if (!value) return false;
    value_.number = std::move(value->number);
    value_.unit = value->unit;
    return true;
  }

  bool read_plain() {
    const Pieces pieces = pieces_of(tokens_, plain_);
    const Token& number = pieces.tokens.front();
    if (number.text.starts_with('-') || number.text.starts_with('+')) {
      line_.fail(DiagnosticKind::bad_number, number.where, {std::string(number.text)});
      return false;
    }
    if (pieces.has_unit) value_.unit = unit_in(pieces.tokens[1]);
    const ReadValue read = read_value(pieces.tokens, value_.unit.value_or(plain_));
    if (!read.number) {
      line_.fail(read.finding->kind, read.finding->where, read.finding->arguments,
                 read.finding->remedy);
      return false;
    }
    if (read.finding) {
      line_.warn(read.finding->kind, read.finding->where, read.finding->arguments,
                 read.finding->remedy);
    }
    const Token& left = pieces.tokens[read.taken];
    if (left.kind != TokenKind::end) {
      line_.fail(DiagnosticKind::trailing_words, left.where, {described(left)},
                 left.is_sign("+") ? "write the value worked out" : "a claim ends with its value");
      return false;
    }
    value_.number = *read.number;
    if (pieces.is_code) {
      note_code(pieces);
    } else {
      note_digits(pieces);
    }
    if (pieces.whole && !add_whole(*pieces.whole, number)) return false;
    if (!pieces.negative) return true;
    value_.number = -value_.number;
    value_.digits.insert(0, "-");
    return true;
  }

  /// "4k7" as "4.7" and 3.
  void note_code(const Pieces& pieces) {
    const Token& code = pieces.tokens.front();
    const std::size_t letter = code.text.find_first_not_of("0123456789");
    value_.digits = std::string(code.text.substr(0, letter));
    if (letter == 0) value_.digits = "0";
    if (letter + 1 < code.text.size()) {
      value_.digits.append(".").append(code.text.substr(letter + 1));
    }
    const Number plain = parse_number(value_.digits).number;
    constexpr int kLeast = -3;  // L, for a thousandth
    constexpr int kGreatest = 12;
    value_.power = kLeast;
    while (value_.power < kGreatest && scaled(plain, value_.power) != value_.number) {
      value_.power += 3;
    }
    if (value_.number.is_zero()) value_.power = 0;
    value_.unit = Unit::ohm;
    if (!is_name(code.text)) return;
    line_.warn(
        DiagnosticKind::suspicious_value, code.where,
        {std::string(code.text), "the letter code for " + value_.number.to_string() + " ohm"},
        "write the value as a number if that is meant");
  }

  void note_digits(const Pieces& pieces) {
    const std::string_view number = pieces.tokens.front().text;
    std::tie(value_.digits, value_.power) = without_exponent(number);
    if (number.find('/') != std::string_view::npos &&
        number.find_first_of("eE") != std::string_view::npos) {
      value_.digits = as_fraction(parse_number(number).number);
      value_.power = 0;
    }
    if (!pieces.has_unit) return;
    const std::string_view unit = pieces.tokens[1].text;
    const auto parsed = parse_unit(unit);
    value_.power += unit == "K" ? 3 : static_cast<int>(parsed->power);
    if (!value_.unit) value_.unit = Unit::ohm;
  }

  bool add_whole(const Token& whole, const Token& fraction) {
    const ParsedNumber parsed = parse_number(whole.text);
    if (parsed.fault != NumberFault::none) {
      line_.fail(DiagnosticKind::number_too_large, whole.where,
                 {std::to_string(kMostDigits), std::to_string(kMostExponent)});
      return false;
    }
    value_.digits = as_fraction(parsed.number + parse_number(fraction.text).number);
    const int prefix = value_.power;
    value_.number += scaled(parsed.number, prefix);
    return true;
  }

  LineReader& line_;
  const NameTable& symbols_;
  std::vector<Token> tokens_;
  Unit plain_;
  WrittenValue value_;
};

}  // namespace

std::optional<WrittenValue> expect_written_value(LineReader& line, const NameTable& symbols,
                                                 std::span<const Token> tokens, Unit plain) {
  return WrittenValueReader(line, symbols, tokens, plain).run();
}

void share_unit(std::vector<Token>& tokens, std::span<const Token> other, Unit plain) {
  const Pieces own = pieces_of(tokens, plain);
  const Pieces others = pieces_of(other, plain);
  const bool lacks = !own.has_unit && !own.is_code && own.tokens.size() == 2 &&
                     number_length(own.tokens.front().text) > 0;
  if (lacks && others.has_unit) tokens.insert(tokens.end() - 1, others.tokens[1]);
}

}  // namespace ohmfold

// A value: a number and a unit, in any of the ways that people write them.

#include "language/values.h"

#include <string>
#include <utility>

#include "exact/rounded.h"
#include "language/units.h"
#include "ohmfold/decimal.h"

namespace ohmfold {
namespace {

constexpr bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

}  // namespace

bool follows_value(const Token& token) {
  return token.is_word("from") || token.is_word("internal") || token.is_word("to");
}

std::size_t decimal_length(std::string_view word) {
  std::size_t at = 0;
  while (at < word.size() && (is_digit(word[at]) || word[at] == '.')) ++at;
  if (at == 0 || at == word.size() || (word[at] != 'e' && word[at] != 'E')) return at;
  std::size_t exponent = at + 1;
  if (exponent < word.size() && (word[exponent] == '+' || word[exponent] == '-')) ++exponent;
  const std::size_t digits = exponent;
  while (exponent < word.size() && is_digit(word[exponent])) ++exponent;
  return exponent > digits ? exponent : at;
}

std::size_t number_length(std::string_view word) {
  const std::size_t sign = word.starts_with('-') || word.starts_with('+') ? 1 : 0;
  const std::size_t numerator = decimal_length(word.substr(sign));
  if (numerator == 0) return 0;
  const std::size_t end = sign + numerator;
  if (end == word.size() || word[end] != '/') return end;
  const std::size_t denominator = decimal_length(word.substr(end + 1));
  return denominator == 0 ? end : end + 1 + denominator;
}

namespace {

/// "4,7" with a comma for the point.
bool is_decimal_comma(std::span<const Token> tokens) {
  return tokens.size() > 2 && tokens[1].is_sign(",") && tokens[0].touches(tokens[1]) &&
         tokens[1].touches(tokens[2]) && tokens[2].kind == TokenKind::word &&
         is_digit(tokens[2].text.front());
}

/// Reads one value; on the first error the other members are of no use.
class ValueReader {
 public:
  ValueReader(std::span<const Token> tokens, std::optional<Unit> wanted)
      : tokens_(tokens), token_(tokens.front()), wanted_(wanted) {}

  ReadValue run() {
    if (token_.kind != TokenKind::word) {
      fail(DiagnosticKind::expected, token_.where, {"a value", described(token_)});
      return {std::nullopt, finding_, 0};
    }
    std::optional<Number> number = wanted_ == Unit::ohm ? letter_code() : std::nullopt;
    if (!number && !finding_) number = number_and_unit();
    if (number && wanted_ == Unit::ohm && number->is_negative()) {
      fail(DiagnosticKind::negative_resistance, token_.where, {});
      number.reset();
    }
    return {number, finding_, taken_};
  }

 private:
  std::optional<Number> letter_code() {
    const std::optional<Number> code = parse_letter_code(token_.text);
    if (!code) return std::nullopt;
    if (!has_unit_word()) return code;
    const Token& unit = tokens_[taken_++];
    const std::optional<ParsedUnit> parsed = parse_unit(unit.text);
    if (parsed && parsed->unit == Unit::ohm && parsed->power == 0) return code;
    fail(DiagnosticKind::wrong_unit, unit.where, {std::string(unit.text), "a letter code", "ohm"});
    return std::nullopt;
  }

  std::optional<Number> number_and_unit() {
    const std::size_t length = number_length(token_.text);
    if (length == 0) return not_a_number();
    if (wanted_ && is_decimal_comma(tokens_)) {
      const std::string point = std::string(token_.text).append(".").append(tokens_[2].text);
      Span where = token_.where;
      where.length += tokens_[1].where.length + tokens_[2].where.length;
      fail(DiagnosticKind::bad_number, where,
           {std::string(token_.text).append(",").append(tokens_[2].text)},
           "write " + (point.size() < 40 ? point : "a point instead of the comma"));
      return std::nullopt;
    }
    const std::string_view text = token_.text.substr(0, length);
    const ParsedNumber parsed = parse_number(text);
    if (parsed.fault != NumberFault::none) return faulty(parsed.fault, length);
    return with_unit(parsed.number, length);
  }

  std::optional<Number> with_unit(const Number& number, std::size_t length) {
    Token unit = token_;
    unit.text.remove_prefix(length);
    unit.where.column += static_cast<std::uint32_t>(length);
    unit.where.length -= static_cast<std::uint32_t>(length);
    const bool glued = !unit.text.empty();
    if (glued && (!wanted_ || !begins_unit(unit.text))) return bad_number();
    if (!glued && is_spaced_fraction()) {
      fail(DiagnosticKind::bad_number, tokens_[taken_].where, {std::string(tokens_[taken_].text)},
           "a fraction is written without spaces, such as 15/8");
      return std::nullopt;
    }
    if (!glued && has_unit_word()) unit = tokens_[taken_++];
    if (unit.text.empty()) return number;
    const std::optional<long> power = power_of(unit);
    if (!power) return std::nullopt;
    return *power == 0 ? number : scaled(number, *power);
  }

  /// The power of ten that the unit brings, or an error.
  std::optional<long> power_of(const Token& unit) {
    const std::string word(unit.text);
    // K is read as k where it can be no other unit, as in letter codes.
    if (word == "K" && wanted_ == Unit::ohm) return 3;
    const std::optional<ParsedUnit> parsed = parse_unit(unit.text);
    if (!parsed) {
      fail(DiagnosticKind::unknown_unit, unit.where, {word}, unit_remedy(unit.text, *wanted_));
      return std::nullopt;
    }
    const std::string right(symbol(*wanted_, Letters::ascii));
    if (parsed->unit && parsed->unit != wanted_) {
      fail(DiagnosticKind::wrong_unit, unit.where,
           {word, std::string(quantity_in(*wanted_)), right});
      return std::nullopt;
    }
    if (!parsed->unit && wanted_ != Unit::ohm) {
      fail(DiagnosticKind::prefix_without_unit, unit.where, {word, right});
      return std::nullopt;
    }
    if (!parsed->unit && parsed->power < 0) {
      warn(unit.where, {word, word + "ohm"},
           "write " + word + "ohm if that is meant; M is a million");
    }
    return parsed->power;
  }

  std::optional<Number> not_a_number() {
    const std::string word(token_.text);
    const std::string remedy = wanted_ ? "write a number and a unit" : "write a number";
    if (follows_value(token_)) {
      fail(DiagnosticKind::expected, token_.where, {"a value", described(token_)});
    } else if (word == "unknown") {
      fail(DiagnosticKind::unknown_here, token_.where, {}, remedy);
    } else if (is_name(token_.text.substr(0, token_.text.find_first_of("/*+-")))) {
      fail(DiagnosticKind::symbol_in_value, token_.where, {word}, remedy);
    } else {
      bad_number();
    }
    return std::nullopt;
  }

  std::optional<Number> faulty(NumberFault fault, std::size_t length) {
    Span where = token_.where;
    where.length = static_cast<std::uint32_t>(length);
    if (fault == NumberFault::division_by_zero) {
      fail(DiagnosticKind::division_by_zero, where, {std::string(token_.text.substr(0, length))});
    } else if (fault == NumberFault::too_large) {
      fail(DiagnosticKind::number_too_large, where,
           {std::to_string(kMostDigits), std::to_string(kMostExponent)});
    } else {
      bad_number();
    }
    return std::nullopt;
  }

  std::optional<Number> bad_number() {
    fail(DiagnosticKind::bad_number, token_.where, {std::string(token_.text)});
    return std::nullopt;
  }

  /// Is the next word a unit, or meant to be one? In a circuit file the ends of the part follow; in
  /// an expression where an operator is missing, a number or a name with its colon.
  [[nodiscard]] bool has_unit_word() const {
    const Token& next = tokens_[taken_];
    return wanted_ && next.kind == TokenKind::word && begins_unit(next.text) &&
           !follows_value(next) && !tokens_[taken_ + 1].is_sign(":");
  }

  /// "15 / 8"
  [[nodiscard]] bool is_spaced_fraction() const {
    const Token& next = tokens_[taken_];
    return next.kind == TokenKind::word && next.text.front() == '/';
  }

  void fail(DiagnosticKind kind, const Span& where, std::vector<std::string> arguments,
            std::string remedy = {}) {
    finding_ = {.kind = kind,
                .severity = Severity::error,
                .where = where,
                .arguments = std::move(arguments),
                .remedy = std::move(remedy),
                .other = {}};
  }
  void warn(const Span& where, std::vector<std::string> arguments, std::string remedy) {
    fail(DiagnosticKind::suspicious_value, where, std::move(arguments), std::move(remedy));
    finding_->severity = Severity::warning;
  }

  std::span<const Token> tokens_;
  const Token& token_;
  std::optional<Unit> wanted_;
  std::optional<Diagnostic> finding_;
  std::size_t taken_ = 1;
};

}  // namespace

ReadValue read_value(std::span<const Token> tokens, Unit wanted) {
  return ValueReader(tokens, wanted).run();
}

ReadValue read_plain_number(std::span<const Token> tokens) {
  return ValueReader(tokens, std::nullopt).run();
}

}  // namespace ohmfold

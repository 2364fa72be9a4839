// From bytes to lines, and from a line to words, signs and quoted texts.

#include "language/scanner.h"

#include <algorithm>
#include <limits>

#include "language/utf8.h"

namespace ohmfold {
namespace {

constexpr bool is_letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}
constexpr bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

std::string code_point(char32_t code) {
  constexpr std::string_view kHex = "0123456789ABCDEF";
  std::string text = "U+";
  for (int shift = code > 0xFFFF ? 20 : 12; shift >= 0; shift -= 4) {
    text += kHex[(code >> static_cast<unsigned>(shift)) & 0xFU];
  }
  return text;
}

Diagnostic error(DiagnosticKind kind, const Span& where, std::vector<std::string> arguments = {}) {
  Diagnostic finding{};
  finding.kind = kind;
  finding.where = where;
  finding.arguments = std::move(arguments);
  return finding;
}

constexpr std::string_view kParallelSign = "\xE2\x88\xA5";  // ∥
constexpr std::string_view kNearlyEqual = "\xE2\x89\x88";   // ≈

/// The first character that has no place in a text.
std::optional<Diagnostic> bad_character(std::string_view line, std::uint32_t number) {
  const auto is_plain = [](char c) { return (c >= ' ' && c <= '~') || c == '\t'; };
  auto at =
      static_cast<std::size_t>(std::find_if_not(line.begin(), line.end(), is_plain) - line.begin());
  while (at < line.size()) {
    const Character character = character_at(line, at);
    const Span where{number, static_cast<std::uint32_t>(at), character.length};
    if (!character.valid) return error(DiagnosticKind::not_utf8, where);
    if (character.code == 0) return error(DiagnosticKind::nul_byte, where);
    if (is_stray(character.code)) {
      return error(DiagnosticKind::stray_character, where, {code_point(character.code)});
    }
    at += character.length;
  }
  return std::nullopt;
}

/// Takes the tokens off one line, from left to right.
class LineScanner {
 public:
  LineScanner(std::string_view line, std::uint32_t number, Dialect dialect,
              std::vector<Token>& tokens)
      : line_(line), number_(number), dialect_(dialect), tokens_(tokens) {}

  std::optional<Diagnostic> run() {
    std::optional<Diagnostic> fault;
    while (skip_blanks(), at_ < line_.size()) {
      const std::size_t sign = sign_length();
      if (sign > 0) {
        add(TokenKind::sign, sign);
      } else if (line_[at_] == '"' && has_texts()) {
        fault = take_text();
      } else {
        add(TokenKind::word, word_length());
      }
    }
    return fault;
  }

 private:
  /// And comments.
  [[nodiscard]] bool has_texts() const { return dialect_ != Dialect::expression; }

  [[nodiscard]] std::size_t blank_length() const {
    const char c = line_[at_];
    if (c == ' ' || c == '\t') return 1;
    if (static_cast<unsigned char>(c) < 0x80) return 0;
    const Character character = character_at(line_, at_);
    return is_unusual_space(character.code) ? character.length : 0;
  }

  void skip_blanks() {
    while (at_ < line_.size()) {
      const std::size_t blank = blank_length();
      if (blank == 0) break;
      at_ += blank;
    }
    const bool comment = has_texts() && at_ < line_.size() && line_[at_] == '#';
    if (comment) at_ = line_.size();
  }

  /// Bytes of the sign that stands here, 0 where none does.
  [[nodiscard]] std::size_t sign_length() const {
    const bool joins = dialect_ != Dialect::circuit;
    const std::string_view rest = line_.substr(at_);
    switch (line_[at_]) {
      case ',':
      case ':':
        return 1;
      case '=':
        return dialect_ == Dialect::expression ? 0 : 1;
      case '~':
        return dialect_ == Dialect::work ? 1 : 0;
      case '+':
      case '(':
      case ')':
        return joins ? 1 : 0;
      case '|':
        return !joins ? 0 : rest.starts_with("||") ? 2 : 1;
      default:
        if (joins && rest.starts_with(kParallelSign)) return kParallelSign.size();
        return dialect_ == Dialect::work && rest.starts_with(kNearlyEqual) ? kNearlyEqual.size()
                                                                           : 0;
    }
  }

  /// "1e+3" is one word in an expression, too.
  [[nodiscard]] bool is_sign_of_exponent(std::size_t start) const {
    if (at_ < start + 2 || at_ + 1 >= line_.size() || line_[at_] != '+') return false;
    const bool number = is_digit(line_[start]) || line_[start] == '.';
    const bool after_e = line_[at_ - 1] == 'e' || line_[at_ - 1] == 'E';
    return number && after_e && is_digit(line_[at_ - 2]) && is_digit(line_[at_ + 1]);
  }

  std::size_t word_length() {
    const std::size_t start = at_;
    while (at_ < line_.size()) {
      const bool ends_word = has_texts() && (line_[at_] == '"' || line_[at_] == '#');
      if (ends_word || blank_length() > 0) break;
      if (sign_length() > 0 && !is_sign_of_exponent(start)) break;
      ++at_;
    }
    const std::size_t length = at_ - start;
    at_ = start;
    return length;
  }

  std::optional<Diagnostic> take_text() {
    const std::size_t close = line_.find('"', at_ + 1);
    const bool closed = close != std::string_view::npos;
    const std::size_t end = closed ? close : line_.size();
    Token token{TokenKind::text, line_.substr(at_ + 1, end - at_ - 1), span(1)};
    token.where.length = static_cast<std::uint32_t>(end - at_ + (closed ? 1 : 0));
    tokens_.push_back(token);
    const Span opening = span(1);
    at_ = closed ? close + 1 : end;
    if (closed) return std::nullopt;
    return error(DiagnosticKind::unclosed_text, opening);
  }

  void add(TokenKind kind, std::size_t length) {
    tokens_.push_back({kind, line_.substr(at_, length), span(length)});
    at_ += length;
  }

  [[nodiscard]] Span span(std::size_t length) const {
    return {number_, static_cast<std::uint32_t>(at_), static_cast<std::uint32_t>(length)};
  }

  std::string_view line_;
  std::uint32_t number_;
  Dialect dialect_;
  std::vector<Token>& tokens_;
  std::size_t at_ = 0;
};

}  // namespace

Lines::Lines(std::string_view text) : rest_(text) {
  constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";
  if (rest_.starts_with(kByteOrderMark)) rest_.remove_prefix(kByteOrderMark.size());
}

std::optional<std::string_view> Lines::next() {
  if (rest_.empty()) return std::nullopt;
  ++number_;
  const std::size_t end = rest_.find('\n');
  std::string_view line = rest_.substr(0, end);
  rest_.remove_prefix(end == std::string_view::npos ? rest_.size() : end + 1);
  if (line.ends_with('\r')) line.remove_suffix(1);
  return line;
}

std::string described(const Token& token) {
  switch (token.kind) {
    case TokenKind::word:
    case TokenKind::sign:
      return std::string("'").append(token.text).append("'");
    case TokenKind::text:
      return "a text in quotes";
    case TokenKind::end:
      break;
  }
  if (!token.text.empty()) return std::string("'").append(token.text).append("'");
  return "the end of the line";
}

std::optional<Diagnostic> scan_line(std::string_view line, std::uint32_t number, Dialect dialect,
                                    std::vector<Token>& tokens) {
  if (line.size() > kMostLineBytes) {
    return error(DiagnosticKind::line_too_long, {number, 0, 1}, {std::to_string(kMostLineBytes)});
  }
  std::optional<Diagnostic> fault = bad_character(line, number);
  const std::optional<Diagnostic> unclosed = LineScanner(line, number, dialect, tokens).run();
  return fault ? fault : unclosed;
}

Token end_token(const std::vector<Token>& tokens, std::uint32_t line) {
  Token end{TokenKind::end, {}, {line, 0, 0}};
  if (!tokens.empty()) {
    end.where = tokens.back().where;
    end.where.column += end.where.length;
    end.where.length = 0;
  }
  return end;
}

std::vector<Token> first_tokens(std::span<const Token> tokens, std::size_t count) {
  std::vector<Token> list(tokens.begin(), tokens.begin() + static_cast<std::ptrdiff_t>(count));
  list.push_back(tokens[count]);
  list.back().kind = TokenKind::end;
  return list;
}

bool is_name(std::string_view word) {
  const auto goes_on = [](char c) { return is_letter(c) || is_digit(c) || c == '_'; };
  return !word.empty() && is_letter(word.front()) && std::all_of(word.begin(), word.end(), goes_on);
}

std::optional<Diagnostic> too_large(const SourceText& source) {
  // Places are told in 32 bits.
  if (source.text.size() < std::numeric_limits<std::uint32_t>::max()) return std::nullopt;
  return error(DiagnosticKind::file_too_large, {}, {"4 GiB"});
}

}  // namespace ohmfold

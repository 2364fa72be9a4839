// From bytes to lines, and from a line to words, signs and quoted texts.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "ohmfold/source.h"

namespace ohmfold {

/// Most bytes in a line: bounds the tokens that are held at a time.
inline constexpr std::size_t kMostLineBytes = 4'000'000;

/// Walks over the lines of a text: LF or CR LF ends one, a byte order mark at the start is passed.
class Lines {
 public:
  explicit Lines(std::string_view text);

  /// The next line without its end, or nothing after the last.
  [[nodiscard]] std::optional<std::string_view> next();
  /// Of the line that next() gave, from 1.
  [[nodiscard]] std::uint32_t number() const { return number_; }

 private:
  std::string_view rest_;
  std::uint32_t number_ = 0;
};

enum class TokenKind : std::uint8_t { word, text, sign, end };

/// A piece of a line. Refers to the bytes of the source.
struct Token {
  TokenKind kind = TokenKind::end;
  /// Of a quoted text, what stands between the quotes; of an end, the sign that ends a part of a
  /// line, empty at the end of the line.
  std::string_view text;
  Span where;

  [[nodiscard]] bool is_word(std::string_view word) const {
    return kind == TokenKind::word && text == word;
  }
  [[nodiscard]] bool is_sign(std::string_view sign) const {
    return kind == TokenKind::sign && text == sign;
  }
  /// Does `next` follow without a space?
  [[nodiscard]] bool touches(const Token& next) const {
    return where.line == next.where.line && where.column + where.length == next.where.column;
  }
};

/// "'word'", "a text", "the end of the line": what an error says was found.
[[nodiscard]] std::string described(const Token& token);

/// Which of the languages is scanned: they differ in their signs, and an expression has neither
/// comments nor texts.
enum class Dialect : std::uint8_t { circuit, expression, work };

/// Adds the tokens of one line. An error is returned where a character has no place in the text, a
/// quote is not closed, or the line is too long; tokens are added nevertheless, so that names on
/// the line are known.
[[nodiscard]] std::optional<Diagnostic> scan_line(std::string_view line, std::uint32_t number,
                                                  Dialect dialect, std::vector<Token>& tokens);

/// The token that ends a list of them: it stands right after the last.
[[nodiscard]] Token end_token(const std::vector<Token>& tokens, std::uint32_t line);

/// The first `count` tokens as a list with an end of its own, where the next one stands. Requires
/// that there is a next one.
[[nodiscard]] std::vector<Token> first_tokens(std::span<const Token> tokens, std::size_t count);

/// A letter followed by letters, digits or _.
[[nodiscard]] bool is_name(std::string_view word);

/// An error where the text is too large for places in it to be told.
[[nodiscard]] std::optional<Diagnostic> too_large(const SourceText& source);

}  // namespace ohmfold

// One statement, taken word by word. The first error on a line stands for it: what follows is not
// looked at, since it would often be a consequence.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "language/scanner.h"
#include "language/values.h"
#include "ohmfold/value.h"

namespace ohmfold {

class LineReader {
 public:
  /// Requires that the last token is an end token.
  explicit LineReader(std::span<const Token> tokens) : rest_(tokens) {}

  [[nodiscard]] const Token& peek() const { return rest_.front(); }
  /// What is not taken yet, with the end token.
  [[nodiscard]] std::span<const Token> rest() const { return rest_; }
  [[nodiscard]] const Token& peek_second() const { return rest_[at_end() ? 0 : 1]; }
  [[nodiscard]] bool at_end() const { return peek().kind == TokenKind::end; }
  /// Takes a token; at the end, the end token again and again.
  Token take();
  /// Takes the word if it comes next.
  bool take_word(std::string_view word);
  bool take_sign(std::string_view sign);

  // What is expected next; nothing or false, and an error, where something else stands.
  bool expect_word(std::string_view word);
  bool expect_sign(std::string_view sign);
  bool expect_end();
  std::optional<Token> expect_text();
  /// `what` is what it names: "a point".
  std::optional<Token> expect_name(std::string_view what);
  std::optional<Number> expect_value(Unit wanted);
  std::optional<Number> expect_number();

  /// Keeps the first error only.
  void fail(DiagnosticKind kind, const Span& where, std::vector<std::string> arguments,
            std::string remedy = {}, std::optional<Span> other = {});
  void fail_expected(std::string_view what, std::string remedy = {});
  void warn(DiagnosticKind kind, const Span& where, std::vector<std::string> arguments,
            std::string remedy = {});

  [[nodiscard]] const std::optional<Diagnostic>& error() const { return error_; }
  [[nodiscard]] const std::vector<Diagnostic>& warnings() const { return warnings_; }

 private:
  std::optional<Number> accept(ReadValue value);

  std::span<const Token> rest_;
  std::optional<Diagnostic> error_;
  std::vector<Diagnostic> warnings_;
};

}  // namespace ohmfold

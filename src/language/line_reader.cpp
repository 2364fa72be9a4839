// One statement, taken word by word.

#include "language/line_reader.h"

#include <algorithm>
#include <array>
#include <utility>

#include "language/values.h"

namespace ohmfold {
namespace {

std::string quoted(std::string_view word) {
  return std::string("'").append(word).append("'");
}

/// Words that stand between names in statements, so that a missing name is noticed.
bool is_connecting_word(std::string_view word) {
  constexpr std::array<std::string_view, 3> kWords{"from", "to", "and"};
  return std::find(kWords.begin(), kWords.end(), word) != kWords.end();
}

}  // namespace

Token LineReader::take() {
  const Token token = peek();
  if (!at_end()) rest_ = rest_.subspan(1);
  return token;
}

bool LineReader::take_word(std::string_view word) {
  if (!peek().is_word(word)) return false;
  take();
  return true;
}

bool LineReader::take_sign(std::string_view sign) {
  if (!peek().is_sign(sign)) return false;
  take();
  return true;
}

bool LineReader::expect_word(std::string_view word) {
  if (take_word(word)) return true;
  fail_expected(quoted(word));
  return false;
}

bool LineReader::expect_sign(std::string_view sign) {
  if (take_sign(sign)) return true;
  fail_expected(quoted(sign));
  return false;
}

bool LineReader::expect_end() {
  if (at_end()) return true;
  const bool internal = peek().is_word("internal");
  fail(DiagnosticKind::trailing_words, peek().where, {described(peek())},
       internal ? "the internal resistance stands before 'from'" : "");
  return false;
}

std::optional<Token> LineReader::expect_text() {
  if (peek().kind == TokenKind::text) return take();
  fail_expected("a text in quotes");
  return std::nullopt;
}

std::optional<Token> LineReader::expect_name(std::string_view what) {
  const Token token = peek();
  const bool connecting = token.kind == TokenKind::word && is_connecting_word(token.text);
  if (token.kind != TokenKind::word || connecting) {
    fail_expected(std::string("the name of ").append(what));
    return std::nullopt;
  }
  if (!is_name(token.text)) {
    fail(DiagnosticKind::bad_name, token.where, {std::string(token.text)});
    return std::nullopt;
  }
  return take();
}

std::optional<Number> LineReader::expect_value(Unit wanted) {
  return accept(read_value(rest_, wanted));
}

std::optional<Number> LineReader::expect_number() {
  return accept(read_plain_number(rest_));
}

std::optional<Number> LineReader::accept(ReadValue value) {
  rest_ = rest_.subspan(value.taken);
  if (!value.number) {
    if (!error_) error_ = std::move(value.finding);
  } else if (value.finding) {
    warnings_.push_back(std::move(*value.finding));
  }
  return std::move(value.number);
}

void LineReader::fail(DiagnosticKind kind, const Span& where, std::vector<std::string> arguments,
                      std::string remedy, std::optional<Span> other) {
  if (error_) return;
  error_ = {.kind = kind,
            .severity = Severity::error,
            .where = where,
            .arguments = std::move(arguments),
            .remedy = std::move(remedy),
            .other = other};
}

void LineReader::fail_expected(std::string_view what, std::string remedy) {
  fail(DiagnosticKind::expected, peek().where, {std::string(what), described(peek())},
       std::move(remedy));
}

void LineReader::warn(DiagnosticKind kind, const Span& where, std::vector<std::string> arguments,
                      std::string remedy) {
  warnings_.push_back({.kind = kind,
                       .severity = Severity::warning,
                       .where = where,
                       .arguments = std::move(arguments),
                       .remedy = std::move(remedy),
                       .other = {}});
}

}  // namespace ohmfold

// Reads a circuit file line by line.

#include <algorithm>
#include <array>
#include <string>
#include <utility>

#include "language/draft.h"
#include "language/nearest.h"
#include "language/symbols.h"
#include "ohmfold/read.h"

namespace ohmfold {
namespace {

struct Statement {
  std::string_view word;
  void (*read)(LineReader&, Draft&);
  bool names_parts;  ///< brings names of parts and points into being
};

constexpr std::array<Statement, 17> kStatements{{
    {"resistor", read_part<PartKind::resistor>, true},
    {"battery", read_part<PartKind::battery>, true},
    {"lamp", read_part<PartKind::lamp>, true},
    {"wire", read_part<PartKind::wire>, true},
    {"switch", read_part<PartKind::knife_switch>, true},
    {"ammeter", read_part<PartKind::ammeter>, true},
    {"voltmeter", read_part<PartKind::voltmeter>, true},
    {"source", read_part<PartKind::current_source>, true},
    {"title", read_title, false},
    {"text", read_text, false},
    {"case", read_case, false},
    {"find", read_question, false},
    {"given", read_given, false},
    {"ground", read_ground, false},
    {"figures", read_figures, false},
    {"place", read_place, false},
    {"symbol", read_symbol, false},
}};

const Statement* statement_named(const Token& word) {
  for (const Statement& statement : kStatements) {
    if (word.is_word(statement.word)) return &statement;
  }
  return nullptr;
}

void fail_unknown(LineReader& line, const Token& word) {
  if (word.kind != TokenKind::word) {
    line.fail(DiagnosticKind::expected, word.where, {"a statement", described(word)},
              "a line begins with a word such as resistor or find");
    return;
  }
  std::array<std::string_view, kStatements.size()> known;
  std::transform(kStatements.begin(), kStatements.end(), known.begin(),
                 [](const Statement& statement) { return statement.word; });
  const std::string_view meant = nearest(word.text, known);
  line.fail(DiagnosticKind::unknown_statement, word.where, {std::string(word.text)},
            meant.empty() ? "a line begins with a word such as resistor or find"
                          : "did you mean '" + std::string(meant) + "'?");
}

/// Keeps the words of a line with an error: see Draft::broken.
void keep_words(Draft& draft, const std::vector<Token>& tokens) {
  if (draft.findings.is_full()) return;  // nobody sees what would follow
  for (const Token& token : tokens) {
    if (token.kind == TokenKind::word && is_name(token.text)) draft.broken.insert(token.text);
  }
}

void read_statement(Draft& draft, const std::vector<Token>& tokens,
                    const std::optional<Diagnostic>& fault) {
  LineReader line(tokens);
  const Token word = line.take();
  const Statement* statement = statement_named(word);
  if (!fault) {
    if (statement != nullptr) {
      statement->read(line, draft);
    } else {
      fail_unknown(line, word);
    }
  }
  for (const Diagnostic& warning : line.warnings()) draft.findings.add(warning);
  const std::optional<Diagnostic>& error = fault ? fault : line.error();
  if (!error) return;
  if (statement == nullptr || statement->names_parts) keep_words(draft, tokens);
  draft.findings.add(*error);
}

/// Room for a part on every line. Numbers are copied, not moved, where a vector grows.
std::size_t most_parts(std::string_view text) {
  constexpr std::size_t kShortestPart = std::string_view("wire from A to B").size();
  const auto lines = static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
  return std::min(lines, text.size() / kShortestPart) + 1;
}

void read_lines(Draft& draft, std::string_view text) {
  draft.problem.parts.reserve(most_parts(text));
  Lines lines(text);
  std::vector<Token> tokens;
  while (const auto line = lines.next()) {
    tokens.clear();
    const auto fault = scan_line(*line, lines.number(), Dialect::circuit, tokens);
    if (tokens.empty()) {
      if (fault) draft.findings.add(*fault);
      continue;
    }
    tokens.push_back(end_token(tokens, lines.number()));
    read_statement(draft, tokens, fault);
  }
}

}  // namespace

bool begins_statement(const Token& word) {
  return statement_named(word) != nullptr;
}

Outcome<Problem> read_circuit(const SourceText& source) {
  if (auto fault = too_large(source)) return {std::nullopt, {std::move(*fault)}};
  Draft draft;
  draft.problem.source_name = source.name;
  note_symbols(draft, source.text);
  read_lines(draft, source.text);
  settle_questions(draft);
  settle_points(draft);
  settle_cases(draft);
  settle_symbols(draft);
  settle_givens(draft);
  settle_whole(draft);
  Outcome<Problem> outcome{std::nullopt, draft.findings.sorted()};
  if (!draft.findings.has_error()) outcome.value = std::move(draft.problem);
  return outcome;
}

}  // namespace ohmfold

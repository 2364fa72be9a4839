// The statement `symbol`, and what is said of symbols when the whole file is known.
#include "language/symbols.h"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

#include "language/units.h"
#include "language/values.h"
#include "ohmfold/decimal.h"

namespace ohmfold {
namespace {

/// What a word reads as where a value stands; empty for the name of a symbol.
std::string_view other_meaning(std::string_view name) {
  constexpr std::array<std::string_view, 5> kWords{"from", "to", "and", "internal", "unknown"};
  if (std::find(kWords.begin(), kWords.end(), name) != kWords.end())
    return "a word of the language";
  if (name == "K") return "a prefix";
  if (const auto unit = parse_unit(name)) return unit->unit ? "a unit" : "a prefix";
  if (parse_letter_code(name)) return "a letter code for a resistance";
  const bool exponent = (name.front() == 'e' || name.front() == 'E') && name.size() > 1 &&
                        name.find_first_not_of("0123456789", 1) == std::string_view::npos;
  return exponent ? "the exponent of a number" : std::string_view();
}

/// The unit that the value names, nothing where it names none.
std::optional<Unit> unit_in(const Token& number, const Token& next) {
  const std::string_view word = next.kind == TokenKind::word ? next.text : number.text;
  for (std::size_t at = 0; at < word.size(); ++at) {
    if (!begins_unit(word.substr(at))) continue;
    const std::optional<ParsedUnit> unit = parse_unit(word.substr(at));
    if (unit && unit->unit) return unit->unit;
    if (unit) return Unit::ohm;  // "4.7 k"
    break;
  }
  // "4k7" is a resistance; a plain number is what its symbol turns out to be.
  const bool plain = number.text.find_first_not_of("0123456789./+-eE") == std::string_view::npos;
  return plain && next.kind != TokenKind::word ? std::nullopt : std::optional(Unit::ohm);
}

/// The value after "=", and the unit that it names.
bool expect_symbol_value(LineReader& line, const Token& name, DraftSymbol& symbol) {
  const Token first = line.peek();
  const std::optional<Unit> unit = unit_in(first, line.peek_second());
  const Token& unit_word = line.peek_second().kind == TokenKind::word ? line.peek_second() : first;
  if (unit == Unit::watt || unit == Unit::siemens) {
    line.fail(DiagnosticKind::wrong_unit, unit_word.where,
              {std::string(unit_word.text), "a resistance, voltage or current", "ohm, V or A"});
    return false;
  }
  std::optional<Number> value = line.expect_value(unit.value_or(Unit::ohm));
  if (!value || !line.expect_end()) return false;
  if (!value->is_positive()) {
    line.fail(DiagnosticKind::symbol_not_positive, first.where, {std::string(name.text)});
    return false;
  }
  symbol.value = std::move(value);
  if (!unit) return true;
  symbol.unit = unit;
  symbol.unit_where = first.where;
  return true;
}

}  // namespace

void note_symbols(Draft& draft, std::string_view text) {
  constexpr std::string_view kWord = "symbol";
  Lines lines(text.find(kWord) == std::string_view::npos ? std::string_view() : text);
  std::vector<Token> tokens;
  while (const auto line = lines.next()) {
    const std::size_t begin = line->find_first_not_of(" \t");
    if (begin == std::string_view::npos || !line->substr(begin).starts_with(kWord)) continue;
    tokens.clear();
    (void)scan_line(*line, lines.number(), Dialect::circuit, tokens);
    if (tokens.size() < 2 || !tokens[0].is_word(kWord) || !is_name(tokens[1].text)) continue;
    if (!draft.symbols.add(tokens[1].text).is_new) continue;
    draft.symbol_drafts.emplace_back().where = tokens[1].where;
  }
}

void read_symbol(LineReader& line, Draft& draft) {
  const std::optional<Token> name = line.expect_name("a symbol");
  if (!name) return;
  const std::string_view meaning = other_meaning(name->text);
  const std::optional<std::uint32_t> number = draft.symbols.find(name->text);
  if (!meaning.empty() || !number) {
    line.fail(DiagnosticKind::bad_symbol_name, name->where,
              {std::string(name->text), std::string(meaning)});
    return;
  }
  DraftSymbol& symbol = draft.symbol_drafts[*number];
  if (std::exchange(symbol.is_read, true)) {
    line.fail(DiagnosticKind::given_twice, name->where,
              {"the symbol '" + std::string(name->text) + "'"}, {}, symbol.where);
    return;
  }
  if (line.take_sign("=")) {
    expect_symbol_value(line, *name, symbol);
  } else {
    line.expect_end();
  }
}

void settle_symbols(Draft& draft) {
  for (std::size_t i = 0; i < draft.symbol_drafts.size(); ++i) {
    DraftSymbol& symbol = draft.symbol_drafts[i];
    const std::string name(draft.symbols.names()[i]);
    if (!symbol.is_used && !draft.findings.has_error()) {
      draft.report(DiagnosticKind::unused_symbol, Severity::warning, symbol.where, {name});
    }
    draft.problem.symbols.push_back(
        {name, symbol.unit.value_or(Unit::ohm), std::move(symbol.value), symbol.where});
  }
}

}  // namespace ohmfold

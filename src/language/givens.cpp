// The statement `given`: what is known of the circuit at work, so that unknown values can be found.

#include <algorithm>
#include <string>
#include <utility>

#include "language/draft.h"
#include "language/nearest.h"
#include "ohmfold/error.h"

namespace ohmfold {
namespace {

Unit unit_of(Asked asked) {
  switch (asked) {
    case Asked::current_through:
      return Unit::ampere;
    case Asked::voltage_across:
    case Asked::voltage_between:
    case Asked::potential_at:
      return Unit::volt;
    case Asked::power_in:
      return Unit::watt;
    case Asked::resistance_between:
    case Asked::resistance_seen_by:
      return Unit::ohm;
    case Asked::thevenin_between:
    case Asked::value_of:
      break;
  }
  throw InternalError("what is given is one value");
}

/// The case of that label, or nothing and an error.
std::optional<Case> case_labelled(Draft& draft, const Token& label) {
  const std::vector<Case>& cases = draft.problem.cases;
  const auto at = std::ranges::find(cases, label.text, &Case::label);
  if (at != cases.end() && !label.text.empty()) return *at;
  std::vector<std::string_view> known;
  for (const Case& one : cases) {
    if (!one.label.empty()) known.push_back(one.label);
  }
  const std::string remedy =
      known.empty() ? "this circuit has no cases" : suggestion(label.text, known, "cases");
  draft.report(DiagnosticKind::unknown_case, Severity::error, label.where,
               {std::string(label.text)}, remedy);
  return std::nullopt;
}

void settle_given(Draft& draft, const DraftGiven& given) {
  const std::optional<Question> question = settled_question(draft, given.question);
  std::optional<Case> held_in;
  if (given.held_in) {
    held_in = case_labelled(draft, *given.held_in);
    if (!held_in) return;
  }
  if (!question) return;
  if (unit_of(given.question.asked) == Unit::ohm && given.value.is_zero()) {
    draft.report(DiagnosticKind::given_resistance_zero, Severity::error, given.where, {});
    return;
  }
  draft.problem.givens.push_back({*question, given.value, std::move(held_in), given.where});
}

/// Either all name their case, or none does.
void check_cases_named(Draft& draft) {
  const auto names_case = [](const DraftGiven& given) { return given.held_in.has_value(); };
  if (std::none_of(draft.givens.begin(), draft.givens.end(), names_case)) return;
  for (const DraftGiven& given : draft.givens) {
    if (names_case(given)) continue;
    draft.report(DiagnosticKind::given_needs_case, Severity::error, given.where, {});
  }
}

void check_count(Draft& draft, const std::vector<PartId>& unknowns) {
  const std::size_t givens = draft.problem.givens.size();
  if (unknowns.empty() || givens >= unknowns.size()) return;
  const Part& last = draft.problem.part(unknowns.back());
  const std::string count = std::to_string(unknowns.size());
  const std::string need = unknowns.size() == 1
                               ? "an unknown value needs a known fact"
                               : count + " unknown values need " + count + " known facts";
  draft.report(DiagnosticKind::too_few_givens, Severity::error, last.where,
               {need, givens == 0 ? "none" : std::to_string(givens), last.name});
}

/// The value that is found has to be one number.
void check_symbols(Draft& draft, const std::vector<PartId>& unknowns) {
  if (unknowns.empty()) return;
  const Part& first = draft.problem.part(unknowns.front());
  for (const SymbolMeaning& symbol : draft.problem.symbols) {
    if (symbol.value) continue;
    draft.report(DiagnosticKind::unknown_beside_symbol, Severity::error, first.where,
                 {first.name, symbol.name}, {}, symbol.where);
    return;
  }
}

}  // namespace

void read_given(LineReader& line, Draft& draft) {
  const Span where = line.peek().where;
  const std::optional<DraftQuestion> question = expect_question(line, true);
  if (!question) return;
  if (question->asked == Asked::thevenin_between) {
    line.fail(DiagnosticKind::expected, where,
              {"a current, voltage, potential, power or resistance", "'thevenin'"},
              "an equivalent is more than one value; what is given is one");
    return;
  }
  if (!line.expect_sign("=")) return;
  std::optional<Number> value = line.expect_value(unit_of(question->asked));
  if (!value) return;
  DraftGiven given{*question, std::move(*value), std::nullopt, where};
  if (line.take_word("in")) {
    if (!line.expect_word("case")) return;
    given.held_in = line.expect_text();
    if (!given.held_in) return;
  }
  if (line.expect_end()) draft.givens.push_back(std::move(given));
}

void settle_givens(Draft& draft) {
  for (const DraftGiven& given : draft.givens) settle_given(draft, given);
  if (draft.findings.has_error()) return;  // what is missing may be on a line with an error
  check_cases_named(draft);
  const std::vector<PartId> unknowns = unknowns_of(draft.problem);
  if (unknowns.size() > kMostUnknowns) {
    draft.report(DiagnosticKind::too_many_unknowns, Severity::error,
                 draft.problem.part(unknowns[kMostUnknowns]).where,
                 {std::to_string(kMostUnknowns + 1), std::to_string(kMostUnknowns)});
    return;
  }
  if (unknowns.empty() && !draft.givens.empty()) {
    draft.report(DiagnosticKind::given_without_unknown, Severity::error, draft.givens.front().where,
                 {});
  }
  check_count(draft, unknowns);
  check_symbols(draft, unknowns);
}

}  // namespace ohmfold

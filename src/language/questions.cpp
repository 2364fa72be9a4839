// The statement `find`, and the question in `given`: what is asked, and of which parts and points.

#include <algorithm>
#include <array>
#include <utility>

#include "language/draft.h"
#include "language/nearest.h"

namespace ohmfold {
namespace {

/// A form of `find`: "voltage from P to Q" has quantity "voltage", the word "from" before its first
/// name and "to" before its second.
struct Form {
  Asked asked;
  std::string_view quantity, before_first, before_second;
};

constexpr std::array<Form, 8> kForms{{
    {Asked::current_through, "current", "through", ""},
    {Asked::voltage_across, "voltage", "across", ""},
    {Asked::voltage_between, "voltage", "from", "to"},
    {Asked::potential_at, "potential", "at", ""},
    {Asked::power_in, "power", "in", ""},
    {Asked::resistance_between, "resistance", "between", "and"},
    {Asked::resistance_seen_by, "resistance", "seen", ""},
    {Asked::thevenin_between, "thevenin", "between", "and"},
}};

constexpr std::array<std::string_view, 6> kQuantities{"current", "voltage",    "potential",
                                                      "power",   "resistance", "thevenin"};
/// Questions that this version cannot answer, by their first word.
constexpr std::array<std::string_view, 2> kLaterQuestions{"norton", "maximum"};

/// A quantity that no form begins with: a question of a later version, or a slip.
void fail_unknown_quantity(LineReader& line, const Token& quantity, bool given) {
  const std::string_view choices =
      given ? "current, voltage, potential, power or resistance"
            : "current, voltage, potential, power, resistance or thevenin";
  const bool later = std::find(kLaterQuestions.begin(), kLaterQuestions.end(), quantity.text) !=
                     kLaterQuestions.end();
  const std::string_view meant = nearest(quantity.text, kQuantities);
  if (quantity.kind == TokenKind::word && later) {
    line.fail(DiagnosticKind::later_statement, quantity.where,
              {"'find " + std::string(quantity.text) + "'"},
              std::string("ask for a ").append(choices));
    return;
  }
  line.fail(DiagnosticKind::expected, quantity.where, {std::string(choices), described(quantity)},
            meant.empty() ? "" : "did you mean '" + std::string(meant) + "'?");
}

/// The form that begins with these words; what it should have been is reported otherwise.
const Form* expect_form(LineReader& line, bool given) {
  const Token quantity = line.take();
  std::string connecting;
  for (const Form& form : kForms) {
    if (!quantity.is_word(form.quantity)) continue;
    if (line.take_word(form.before_first)) return &form;
    connecting.append(connecting.empty() ? "'" : " or '").append(form.before_first).append("'");
  }
  if (connecting.empty()) {
    fail_unknown_quantity(line, quantity, given);
  } else {
    line.fail_expected(connecting);
  }
  return nullptr;
}

/// The value of a part can be asked for where it is unknown.
std::optional<Question> value_question(Draft& draft, const DraftQuestion& question, PartId id) {
  const Part& part = draft.problem.part(id);
  if (part.unknown) return ValueOf{id};
  const bool has_value = part.kind == PartKind::battery || part.kind == PartKind::resistor ||
                         part.kind == PartKind::lamp;
  if (has_value) {
    draft.report(DiagnosticKind::value_is_known, Severity::error, question.first.where,
                 {part.name});
  } else {
    draft.report(DiagnosticKind::wrong_kind_of_part, Severity::error, question.first.where,
                 {"'" + part.name + "'", std::string(keyword(part.kind)), "it has no value"});
  }
  return std::nullopt;
}

std::optional<Question> question_of_parts(Draft& draft, const DraftQuestion& question) {
  const std::optional<PartId> part = find_part(draft, question.first);
  if (!part) return std::nullopt;
  switch (question.asked) {
    case Asked::current_through:
      return CurrentThrough{*part};
    case Asked::voltage_across:
      return VoltageAcross{*part};
    case Asked::power_in:
      return PowerIn{*part};
    case Asked::value_of:
      return value_question(draft, question, *part);
    default:
      break;
  }
  const Part& source = draft.problem.part(*part);
  if (is_source(source.kind)) {
    return ResistanceSeenBy{*part};
  }
  draft.report(DiagnosticKind::wrong_kind_of_part, Severity::error, question.first.where,
               {"'" + source.name + "'", std::string(keyword(source.kind)),
                "only a battery or a source sees a resistance"},
               "find resistance between two points");
  return std::nullopt;
}

std::optional<Question> question_of_points(Draft& draft, const DraftQuestion& question) {
  const std::optional<PointId> first = find_point(draft, question.first);
  if (question.asked == Asked::potential_at) {
    return first ? std::optional<Question>(PotentialAt{*first}) : std::nullopt;
  }
  const std::optional<PointId> second = find_point(draft, question.second);
  if (!first || !second) return std::nullopt;
  if (question.asked == Asked::voltage_between) return VoltageBetween{*first, *second};
  const bool thevenin = question.asked == Asked::thevenin_between;
  if (*first != *second) {
    if (thevenin) return TheveninBetween{*first, *second};
    return ResistanceBetween{*first, *second};
  }
  draft.report(DiagnosticKind::same_two_points, Severity::error, question.second.where,
               {thevenin ? "the Thevenin equivalent asked for" : "the resistance asked for",
                std::string(question.second.text)},
               "name two points");
  return std::nullopt;
}

/// "find R3": a name alone that is hardly a slip for one of the quantities.
bool names_a_part(const LineReader& line) {
  const Token& word = line.peek();
  return word.kind == TokenKind::word && line.peek_second().kind == TokenKind::end &&
         is_name(word.text) && nearest(word.text, kQuantities).empty() &&
         std::find(kLaterQuestions.begin(), kLaterQuestions.end(), word.text) ==
             kLaterQuestions.end();
}

}  // namespace

bool asks_of_points(Asked asked) {
  return asked == Asked::voltage_between || asked == Asked::potential_at ||
         asked == Asked::resistance_between || asked == Asked::thevenin_between;
}

std::optional<DraftQuestion> expect_question(LineReader& line, bool given) {
  const Form* form = expect_form(line, given);
  if (form == nullptr) return std::nullopt;
  if (form->asked == Asked::resistance_seen_by && !line.expect_word("by")) return std::nullopt;
  const std::string_view what = asks_of_points(form->asked) ? "a point" : "a part";
  DraftQuestion question{form->asked, {}, {}};
  const std::optional<Token> first = line.expect_name(what);
  if (!first) return std::nullopt;
  question.first = *first;
  if (!form->before_second.empty()) {
    if (!line.expect_word(form->before_second)) return std::nullopt;
    const std::optional<Token> second = line.expect_name(what);
    if (!second) return std::nullopt;
    question.second = *second;
  }
  return question;
}

void read_question(LineReader& line, Draft& draft) {
  if (names_a_part(line)) {
    draft.questions.push_back({Asked::value_of, line.take(), {}});
    return;
  }
  const std::optional<DraftQuestion> question = expect_question(line, false);
  if (question && line.expect_end()) draft.questions.push_back(*question);
}

std::optional<Question> settled_question(Draft& draft, const DraftQuestion& question) {
  return asks_of_points(question.asked) ? question_of_points(draft, question)
                                        : question_of_parts(draft, question);
}

void settle_questions(Draft& draft) {
  for (const DraftQuestion& question : draft.questions) {
    const std::optional<Question> settled = settled_question(draft, question);
    if (settled) draft.problem.questions.push_back(*settled);
  }
}

}  // namespace ohmfold

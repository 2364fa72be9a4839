// What there is to say about one line: its step, its value, its unit and its figures.
#include "views/reply.h"

#include <algorithm>

#include "ohmfold/error.h"
#include "views/error_words.h"

namespace ohmfold::views {

namespace {

constexpr std::size_t kMostSentences = 3;

std::string_view quantity_name(Unit unit) {
  switch (unit) {
    case Unit::ohm:
      return "a resistance";
    case Unit::volt:
      return "a voltage";
    case Unit::ampere:
      return "a current";
    case Unit::watt:
      return "a power";
    case Unit::siemens:
      return "a conductance";
  }
  throw InternalError("a unit of no quantity");
}

Words unit_reply(const JudgedLine& line) {
  const Judgement& judgement = line.judgement;
  const Unit unit = judgement.expected_unit.value_or(Unit::ohm);
  switch (judgement.unit) {
    case UnitVerdict::none:
    case UnitVerdict::right:
      return {};
    case UnitVerdict::missing:
      return say("The unit is missing: in what is ", quantity_name(unit), " counted?");
    case UnitVerdict::wrong:
      return say("The unit does not fit: in what is ", quantity_name(unit), " counted?");
  }
  throw InternalError("a unit verdict of an unknown kind");
}

/// Does the arithmetic of a refused step hold?
bool follows_from_its_rule(ValueVerdict value) {
  switch (value) {
    case ValueVerdict::exact:
    case ValueVerdict::rounded:
    case ValueVerdict::within_rounding:
    case ValueVerdict::rounded_early:
    case ValueVerdict::on_own:
      return true;
    case ValueVerdict::none:
    case ValueVerdict::cut_off:
    case ValueVerdict::wrong:
    case ValueVerdict::cannot_tell:
      return false;
  }
  throw InternalError("a value verdict of an unknown kind");
}

Words step_reply(const JudgedLine& line) {
  switch (line.judgement.step) {
    case StepVerdict::none:
      return {};
    case StepVerdict::right:
      return step_reason(line);
    case StepVerdict::right_on_own: {
      const Words reason = step_reason(line);
      const Words fits = say("The step fits the circuit as the lines before have left it.");
      return reason.empty() ? fits : say(fits, " ", reason);
    }
    case StepVerdict::refused:
      return refusal_words(line);
    case StepVerdict::cannot_tell:
      return say("Whether this step may be made cannot be told here.");
  }
  throw InternalError("a step verdict of an unknown kind");
}

std::size_t sentences_in(const Words& words) {
  const std::string text = plain_text(words);
  std::size_t count = 0;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool ends = text[i] == '.' || text[i] == '?';
    if (ends && (i + 1 == text.size() || text[i + 1] == ' ')) ++count;
  }
  return count;
}

}  // namespace

Words figures_reply(const JudgedLine& line) {
  switch (line.judgement.figures) {
    case FiguresVerdict::fine:
      return {};
    case FiguresVerdict::too_few:
      return say("One or two figures more would show the value better.");
    case FiguresVerdict::too_many:
      return say("It has more figures than needed: ", count_word(line.words.figures),
                 " are enough here.");
  }
  throw InternalError("a figures verdict of an unknown kind");
}

std::string_view verdict_word(LineVerdict verdict) {
  switch (verdict) {
    case LineVerdict::nothing:
      return "nothing";
    case LineVerdict::right:
      return "right";
    case LineVerdict::follows:
      return "follows";
    case LineVerdict::rounded_early:
      return "rounded-early";
    case LineVerdict::not_right:
      return "not-right";
    case LineVerdict::cannot_tell:
      return "cannot-tell";
  }
  throw InternalError("a verdict of an unknown kind");
}

std::string_view verdict_mark(LineVerdict verdict) {
  switch (verdict) {
    case LineVerdict::nothing:
      return "";
    case LineVerdict::right:
      return "✓ right";
    case LineVerdict::follows:
      return "→ follows";
    case LineVerdict::rounded_early:
      return "≈ rounded early";
    case LineVerdict::not_right:
      return "✗ not right";
    case LineVerdict::cannot_tell:
      return "? cannot be judged";
  }
  throw InternalError("a verdict of an unknown kind");
}

Words reply_words(const JudgedLine& line) {
  const Judgement& judgement = line.judgement;
  const bool refused = judgement.step == StepVerdict::refused;
  std::vector<Words> pieces;
  if (judgement.hindrance != Hindrance::none) pieces.push_back(hindrance_words(line));
  if (pieces.empty() || refused) pieces.push_back(step_reply(line));
  if (!refused) {
    pieces.push_back(value_reply(line));
  } else if (follows_from_its_rule(judgement.value)) {
    pieces.push_back(say("The number itself is what the rule gives."));
  }
  if (judgement.value != ValueVerdict::cannot_tell) pieces.push_back(unit_reply(line));
  pieces.push_back(figures_reply(line));
  Words reply;
  std::size_t sentences = 0;
  for (const Words& piece : pieces) {
    const std::size_t more = sentences_in(piece);
    if (piece.empty() || (sentences > 0 && sentences + more > kMostSentences)) continue;
    if (!reply.empty()) reply.add(" ");
    reply.add(piece);
    sentences += more;
  }
  return reply;
}

}  // namespace ohmfold::views

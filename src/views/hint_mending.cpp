// Hints at a line that holds a mistake.
#include "ohmfold/error.h"
#include "views/error_words.h"
#include "views/hint_words.h"
#include "views/reply.h"

namespace ohmfold::views {

namespace {

Words in_line(const JudgedLine& line) {
  return say("Line ", std::to_string(line.number()), ": ");
}

/// "R12 is 6 Ω", with reason; nothing of the value where it is not known.
Words what_is_right(const JudgedLine& line) {
  const std::optional<Quantity> target = line.target();
  const Words reason = step_reason(line);
  Words words = reason;
  if (target) {
    if (!words.empty()) words.add(" ");
    words.add(sentence(say(line.subject(), " is ", line.words.value(*target))));
  }
  return words.empty() ? say("This line is best left out.") : words;
}

Levels refused(const JudgedLine& line) {
  return {.nudge = say("may these parts be combined in this way?"),
          .point = line.operands().empty()
                       ? say("look at the points that this line is about.")
                       : say("look at ", line.operands(), ": what is joined at their ends?"),
          .tell = refusal_words(line)};
}

Levels unexplained(const JudgedLine& line) {
  const Words operands = line.operands();
  const bool combines = !line.judgement.claimed && !operands.empty();
  return {.nudge = say("does the value follow from what stands before it?"),
          .point = combines ? say("work out once more what ", operands, " make.")
                            : say("look at ", line.subject(), ": which values lead there?"),
          .tell = what_is_right(line)};
}

Levels several(const JudgedLine& line) {
  std::vector<Words> causes;
  for (const Diagnosis& diagnosis : line.judgement.errors) {
    causes.push_back(error_words(Diagnosed(line, diagnosis)).cause);
  }
  constexpr std::size_t kMostCauses = 3;
  Words ways = say("this number comes out");
  for (std::size_t i = 0; i < causes.size() && i < kMostCauses; ++i) {
    if (!causes[i].empty()) ways.add(say(i == 0 ? " when " : ", or when ", causes[i]));
  }
  return {.nudge = error_words(Diagnosed(line, line.judgement.errors.front())).nudge,
          .point = say(ways, "."),
          .tell = what_is_right(line)};
}

Levels unit_missing(const JudgedLine& line) {
  const Unit unit = line.judgement.expected_unit.value_or(Unit::ohm);
  return {.nudge = say("what does the number count?"),
          .point = say("look at the unit of ", line.subject(), "."),
          .tell = say(line.subject(), " is counted in ", symbol(unit, Letters::unicode), ".")};
}

Levels levels(const JudgedLine& line) {
  const Judgement& judgement = line.judgement;
  if (judgement.hindrance != Hindrance::none) {
    const Words words = hindrance_words(line);
    return {
        .nudge = say("this line cannot be judged as it stands."), .point = words, .tell = words};
  }
  if (judgement.errors.size() == 1) {
    ErrorWords words = error_words(Diagnosed(line, judgement.errors.front()));
    return {std::move(words.nudge), std::move(words.point), std::move(words.tell)};
  }
  if (judgement.step == StepVerdict::refused) return refused(line);
  if (!judgement.errors.empty()) return several(line);
  if (judgement.value == ValueVerdict::cut_off) {
    Diagnosis cut;
    cut.error = KnownError::cut_off;
    ErrorWords words = error_words(Diagnosed(line, cut));
    return {std::move(words.nudge), std::move(words.point), std::move(words.tell)};
  }
  if (judgement.value == ValueVerdict::rounded_early) {
    return {.nudge = say("keep more figures until the end."),
            .point = say("look at the figures kept in ",
                         judgement.caused_by.empty() ? say("the lines before")
                                                     : line.judged.lines(judgement.caused_by),
                         "."),
            .tell = value_reply(line)};
  }
  const bool unit = judgement.unit == UnitVerdict::missing || judgement.unit == UnitVerdict::wrong;
  if (unit && judgement.value != ValueVerdict::wrong) return unit_missing(line);
  return unexplained(line);
}

}  // namespace

Words mending_hint(const JudgedLine& line, HintLevel level) {
  return say(in_line(line), levels(line).at(level).capitalised());
}

}  // namespace ohmfold::views

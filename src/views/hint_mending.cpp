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

/// What a step that may not be made is to be asked.
class Doubt {
 public:
  explicit Doubt(const JudgedLine& line) : line_(line) {}

  Levels operator()(const CombineClaim& claim) const {
    const bool series =
        !claim.combinations.empty() && claim.combinations.back().how == Joining::series;
    return asked(series ? say("does the same current run through these parts?")
                        : say("do these parts join the same two points?"));
  }
  Levels operator()(const RewriteClaim&) const {
    return asked(say("are these three parts joined in this way?"));
  }
  Levels operator()(const SamePotentialClaim& claim) const {
    return {.nudge = say("what would show that two points are at the same potential?"),
            .point = say("compare the parts on both sides of ", PointName{claim.first.text},
                         " with those of ", PointName{claim.second.text}, "."),
            .tell = refusal_words(line_)};
  }
  Levels operator()(const NoCurrentClaim& claim) const {
    return {
        .nudge = say("what would show that no current runs there?"),
        .point = say("compare the potentials at the two ends of ", PartName{claim.part.text}, "."),
        .tell = refusal_words(line_)};
  }
  Levels operator()(const NoPairClaim&) const {
    return {.nudge = say("does each of the parts that are left meet two others at both ends?"),
            .point = refusal_words(line_),
            .tell = refusal_words(line_)};
  }
  Levels operator()(const ValueClaim&) const { return asked(say("may this step be made?")); }
  Levels operator()(const CaseClaim&) const { return asked(say("may this step be made?")); }

 private:
  [[nodiscard]] Levels asked(Words nudge) const {
    return {.nudge = std::move(nudge),
            .point = line_.operands().empty()
                         ? say("look at the ends of the parts in this line.")
                         : say("look at ", line_.operands(), ": what is joined at their ends?"),
            .tell = refusal_words(line_)};
  }

  const JudgedLine& line_;
};

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
  return {.nudge = say("how does the number compare, in size and unit, with what it is made from?"),
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
  if (judgement.step == StepVerdict::refused) {
    return std::visit(Doubt(line), line.claim.says);
  }
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
  const Words figures = figures_reply(line);
  if (!figures.empty() && judgement.value != ValueVerdict::wrong) {
    return {
        .nudge = say("how many figures does the value need?"), .point = figures, .tell = figures};
  }
  return unexplained(line);
}

}  // namespace

Words mending_hint(const JudgedLine& line, HintLevel level) {
  return say(in_line(line), levels(line).at(level).capitalised());
}

}  // namespace ohmfold::views

// Hints at the next step of rewriting: what to combine, leave out or turn.
#include "ohmfold/error.h"
#include "views/hint_words.h"

namespace ohmfold::views {

namespace {

/// A step to come, with the names it needs.
class NextStep {
 public:
  NextStep(const CaseWords& words, const Hint& hint) : words_(words), hint_(hint) {}

  [[nodiscard]] Levels levels() const {
    switch (hint_.rule) {
      case RuleName::series:
        return series();
      case RuleName::parallel:
        return parallel();
      case RuleName::gap:
        return left_out("Is there anything that joins nothing?");
      case RuleName::shorted:
        return left_out("Is there a part that a plain wire goes past?");
      case RuleName::dead_end:
        return left_out("Is there a part that no closed path runs through?");
      case RuleName::ideal_wire:
        return ideal_wire();
      case RuleName::equal_potentials:
        return equal_potentials();
      case RuleName::delta_star:
        return turned("delta", "star");
      case RuleName::star_delta:
        return turned("star", "delta");
      case RuleName::node_elimination:
        return turned("star", "mesh");
      case RuleName::batteries:
        return batteries();
    }
    throw InternalError("a step with an unknown rule");
  }

 private:
  [[nodiscard]] Words parts() const {
    return hint_.place.parts.empty() ? say("the parts") : words_.words.parts(hint_.place.parts, 6);
  }
  [[nodiscard]] Words points() const {
    if (!hint_.place.points.empty()) return words_.words.points(hint_.place.points, 6);
    if (!hint_.place.first.exists()) return say("the points");
    const Words first = say(words_.words.point(hint_.place.first));
    if (!hint_.place.second.exists()) return first;
    return say(first, " and ", words_.words.point(hint_.place.second));
  }
  /// " That makes 6 Ω."
  [[nodiscard]] Words so() const {
    return hint_.value ? say(" That makes ", words_.value(*hint_.value), ".") : Words();
  }
  /// "R5 meets the rest of the circuit at point C alone: leave it out."
  [[nodiscard]] Words because(const Words& what) const {
    if (hint_.why.empty()) return sentence(what);
    return sentence(say(words_.words.left_out_facts(hint_.place.parts, hint_.why), ": ", what));
  }

  [[nodiscard]] Levels series() const {
    return {.nudge = say("Look for parts that one and the same current must run through."),
            .point = say("Look at ", parts(), ": is anything else joined between them?"),
            .tell = say(because(say("they are in series, so their resistances are added")), so())};
  }
  [[nodiscard]] Levels parallel() const {
    return {
        .nudge = say("Look for parts that join the same two points."),
        .point = say("Look at ", parts(), ": which points do they join?"),
        .tell = say(parts(), " join ", points(),
                    ", so they are in parallel. Add the reciprocals and turn the sum over.", so())};
  }
  [[nodiscard]] Levels left_out(std::string_view question) const {
    return {.nudge = say(question),
            .point = say("Look at ", parts(), ": how would a current run there?"),
            .tell = because(say("leave out ", parts()))};
  }
  [[nodiscard]] Levels ideal_wire() const {
    return {.nudge = say("Are there points that a plain wire joins?"),
            .point = say("Look at ", parts(), ": what lies between the two ends?"),
            .tell = because(say(points(), " are one point"))};
  }
  [[nodiscard]] Levels equal_potentials() const {
    const bool of_points = !hint_.place.points.empty();
    return {.nudge = say("Are there points at the same potential?"),
            .point = of_points ? say("Compare the potentials at ", points(), ".")
                               : say("Compare the potentials at the two ends of ", parts(), "."),
            .tell = because(of_points ? say("join ", points()) : say("leave out ", parts()))};
  }
  [[nodiscard]] Levels turned(std::string_view from, std::string_view into) const {
    return {.nudge = say("Is there a ", from, " that can be turned into a ", into, "?"),
            .point = say("Look at ", parts(), ": how are they joined?"),
            .tell = say(because(say("turn ", parts(), " from ", from, " into ", into)), so())};
  }
  [[nodiscard]] Levels batteries() const {
    return {.nudge = say("Are there batteries that one current runs through?"),
            .point = say("Look at ", parts(), ": does anything branch off between them?"),
            .tell = say(because(say(parts(), " act as one battery")), so())};
  }

  const CaseWords& words_;
  const Hint& hint_;
};

}  // namespace

Words step_hint(const CaseWords& words, const Hint& hint, HintLevel level) {
  return NextStep(words, hint).levels().at(level).capitalised();
}

}  // namespace ohmfold::views

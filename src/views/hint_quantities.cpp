// Hints at the next value of the way back.
#include "ohmfold/error.h"
#include "views/hint_words.h"

namespace ohmfold::views {

namespace {

/// A value to come, with the names it needs.
class NextValue {
 public:
  NextValue(const CaseWords& words, const Hint& hint) : words_(words), hint_(hint) {}

  [[nodiscard]] Levels levels() const {
    return {.nudge = question(), .point = place(), .tell = told()};
  }

 private:
  [[nodiscard]] Words subject() const {
    return words_.quantity(hint_.claimed, hint_.of, hint_.at, hint_.to);
  }
  [[nodiscard]] Words from() const {
    return hint_.from.empty() ? say("what is known") : words_.words.parts(hint_.from, 6);
  }
  /// The part, or what the value is of where it is of no part.
  [[nodiscard]] Words of() const {
    return hint_.of.exists() ? say(words_.words.part(hint_.of)) : subject();
  }

  /// Which law leads on, as a question; no part, no value.
  [[nodiscard]] Words question() const {
    switch (hint_.law) {
      case Law::same_current:
        return say("Which parts have one and the same current?");
      case Law::same_voltage:
        return say("Which parts have one and the same voltage?");
      case Law::ohm_current:
        return say("Where are a voltage and a resistance known, but not yet the current?");
      case Law::ohm_voltage:
        return say("Where are a current and a resistance known, but not yet the voltage?");
      case Law::current_cut:
        return say("At which point are all currents known but one?");
      case Law::voltage_loop:
        return say("Round which loop are all voltages known but one?");
      case Law::zero_current:
        return say("Is there a part that no closed path runs through?");
      case Law::zero_voltage:
        return say("Is there a part with both ends on one point?");
      case Law::not_determined:
        return say("Is there a value that the circuit leaves open?");
      case Law::source:
        return say("What does the source feed, and what current follows from it?");
      case Law::node_voltage:
        return say("Which potentials would give all the rest?");
      case Law::power:
        return say("Where are voltage and current known, but not yet the power?");
      case Law::terminal:
        return say("How much of the battery's voltage is lost inside it?");
      case Law::two_arms:
        return say("Which way leads along the star from one corner to another?");
      case Law::sides_at_end:
        return say("What do the sides of the delta carry at one of its corners?");
      case Law::equal_potentials:
        return say("Between which points is there no voltage?");
      case Law::given_current:
        return say("Is there a current that the problem gives?");
      case Law::superposition:
        return say("What does each source do by itself?");
    }
    throw InternalError("a hint with an unknown law");
  }

  [[nodiscard]] Words place() const {
    if (hint_.from.empty()) return say("Look for ", subject(), ": what is known of it?");
    return say("Look for ", subject(), ": how does it follow from ", from(), "?");
  }

  /// Why the value follows, as a sentence.
  [[nodiscard]] Words reason() const {
    switch (hint_.law) {
      case Law::same_current:
        return say(of(), " carries the same current as ", from(), ".");
      case Law::same_voltage:
        return say(of(), " has the same voltage as ", from(), ".");
      case Law::ohm_current:
        return say("Ohm's law for ", of(), ": I = V / R.");
      case Law::ohm_voltage:
        return say("Ohm's law for ", of(), ": V = I · R.");
      case Law::current_cut:
        return say("What comes in goes out again, so ", subject(), " follows from ", from(), ".");
      case Law::voltage_loop:
        return say("Round a loop the voltages add up to zero, so ", subject(), " follows from ",
                   from(), ".");
      case Law::zero_current:
        return say("No closed path through a source runs through ", of(), ".");
      case Law::zero_voltage:
        return say("Both ends of ", of(), " are on one point.");
      case Law::not_determined:
        return say("The circuit leaves ", subject(), " open.");
      case Law::source:
        return say("I = E / (R + r), with R for what ", of(),
                   " feeds and r for its internal "
                   "resistance.");
      case Law::node_voltage:
        return say("The potentials of the points, from node equations, give ", subject(), ".");
      case Law::power:
        return say("Power is voltage times current: P = V · I for ", of(), ".");
      case Law::terminal:
        return say("At the terminals of ", of(), ": V = E − I · r.");
      case Law::two_arms:
        return say("The voltage across ", of(), " is the one along two arms of the star.");
      case Law::sides_at_end:
        return say(of(), " carries what the sides of the delta carry at its end.");
      case Law::equal_potentials:
        return say("Both ends of ", of(), " are at the same potential.");
      case Law::given_current:
        return say("The problem gives the current of ", of(), ".");
      case Law::superposition:
        return say("Add up what each source does alone, with its sign.");
    }
    throw InternalError("a hint with an unknown law");
  }

  [[nodiscard]] Words told() const {
    if (!hint_.value) return reason().capitalised();
    return say(reason().capitalised(), " ",
               sentence(say(subject(), " is ", words_.value(*hint_.value))));
  }

  const CaseWords& words_;
  const Hint& hint_;
};

}  // namespace

Words quantity_hint(const CaseWords& words, const Hint& hint, HintLevel level) {
  return NextValue(words, hint).levels().at(level);
}

}  // namespace ohmfold::views

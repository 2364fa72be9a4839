// Hints in words: what kind of hint it is, and what is common to all.
#include "views/hint_words.h"

#include "ohmfold/error.h"

namespace ohmfold::views {

namespace {

Levels no_pair_hint() {
  return {
      .nudge = say("Is there still a pair in series or in parallel?"),
      .point = say("Look at each point that is left: how many parts meet there?"),
      .tell = say("No pair in series or in parallel is left. Points at the same potential, delta "
                  "and star, or node equations lead on.")};
}

Levels whole_hint(const CaseWords& words, const Hint& hint) {
  const PartId last =
      hint.of.exists() || hint.place.parts.empty() ? hint.of : hint.place.parts.front();
  const Words part = last.exists() ? say(words.words.part(last)) : say("the part that is left");
  Words tell = say(part, " stands for all that the source feeds");
  if (hint.value) tell.add(say(": the equivalent resistance is ", words.value(*hint.value)));
  return {.nudge = say("How many parts are left for the source to feed?"),
          .point = say("Look at ", part, ": what else is left beside it?"),
          .tell = sentence(tell)};
}

}  // namespace

Words hint_words(const JudgedWork& judged, const Hint& hint, HintLevel level) {
  const auto words = [&]() -> const CaseWords& { return judged.of_case(hint.case_index); };
  switch (hint.kind) {
    case HintKind::mend:
      return mending_hint(JudgedLine(judged, hint.claim), level);
    case HintKind::combine:
    case HintKind::rewrite:
      return step_hint(words(), hint, level);
    case HintKind::no_pair:
      return no_pair_hint().at(level);
    case HintKind::whole:
      return whole_hint(words(), hint).at(level);
    case HintKind::quantity:
      return quantity_hint(words(), hint, level);
    case HintKind::done:
      return say("All that is asked for is found.");
  }
  throw InternalError("a hint of an unknown kind");
}

}  // namespace ohmfold::views

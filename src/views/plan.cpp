// What a reduction is going to do, said before its first number.
#include "views/plan.h"

#include "views/reduction_chapter.h"
#include "views/ways_words.h"

namespace ohmfold::views {

namespace {

/// With more combinations than this the plan names none of them.
constexpr std::size_t kMostNamed = 6;

/// The steps that series and parallel need.
std::size_t plain_steps(const Reduction& reduction) {
  return reduction.choice.made ? reduction.choice.after : reduction.steps.size();
}

/// "Leave out what carries no current. "
Words tidying(const Reduction& reduction) {
  bool merges = false;
  bool leaves_out = false;
  for (std::size_t i = 0; i < plain_steps(reduction) && !reduction.steps[i].makes.exists(); ++i) {
    const bool wire = reduction.steps[i].rule == RuleName::ideal_wire;
    merges = merges || wire;
    leaves_out = leaves_out || !wire;
  }
  if (!merges && !leaves_out) return {};
  return say(leaves_out ? "Leave out what carries no current" : "",
             leaves_out && merges ? ", and make" : "", !leaves_out && merges ? "Make" : "",
             merges ? " one point of the points that ideal wires join" : "", ". ");
}

/// "R1 and R2 in series, R3 and R4 in series, then R12 and R34 in parallel"
Words combinations(const Scene& scene) {
  const StepLog& steps = scene.reduction.steps;
  Words words;
  std::size_t named = 0;
  std::uint32_t stage = 0;
  for (std::size_t i = 0; i < plain_steps(scene.reduction); ++i) {
    const Step step = steps[i];
    if (!step.makes.exists()) continue;
    if (++named > kMostNamed || step.takes.size() > kMostNamed) {
      return say("what is in series and what is in parallel, drawing after drawing");
    }
    if (named > 1) words.add(step.stage == stage ? ", " : ", then ");
    words.add(scene.words.parts(step.takes));
    words.add(step.rule == RuleName::series     ? " in series"
              : step.rule == RuleName::parallel ? " in parallel"
                                                : " in one chain");
    stage = step.stage;
  }
  return words;
}

bool is_port(const Reduction& reduction) {
  return reduction.source.exists() && reduction.end.kind(reduction.source) == ElementKind::port;
}

bool combines(const Reduction& reduction) {
  const std::size_t steps = plain_steps(reduction);
  return steps > 0 && reduction.steps[steps - 1].makes.exists();
}

Words plan_to_one_part(const Scene& scene) {
  const Reduction& reduction = scene.reduction;
  const auto [first, second] = terminals(reduction);
  const Words place = say("between ", scene.words.point(first), " and ", scene.words.point(second));
  Words words = tidying(reduction);
  if (combines(reduction)) {
    words.add(say("Combine ", combinations(scene), "; that leaves one part ", place, ". "));
  } else {
    words.add(say("Only one part lies ", place, ". "));
  }
  if (is_port(reduction)) return words;
  const bool given = reduction.end.kind(reduction.source) == ElementKind::current_source;
  words.add(given ? "The current of the source is given and runs through that part"
                  : "Find the current of the battery");
  words.add(combines(reduction) ? ", then undo the steps in reverse order." : ".");
  return words;
}

/// For what series and parallel do not bring down to one part.
Words plan_beyond(const Scene& scene) {
  const Reduction& reduction = scene.reduction;
  const bool several = reduction.stop == Stop::several_sources;
  Words words = tidying(reduction);
  if (combines(reduction)) words.add(say("Combine ", combinations(scene), ". "));
  if (several) {
    words.add(say("More than one source feeds ",
                  combines(reduction) ? "what is left" : "the circuit",
                  ": find the potentials by node-voltage analysis"));
  } else {
    words.add(say("No two of ", combines(reduction) ? "the parts that are left" : "the parts",
                  " are in series or in parallel: ", way_taken(reduction)));
  }
  const bool ends = reduction.choice.method == Method::series_parallel && !several;
  if (ends || is_port(reduction)) return say(words, ".");
  if (reduction.stop == Stop::reduced) {
    return say(words, ". Find the current of the battery, then undo the steps in reverse order.");
  }
  return say(words, reduction.steps.empty() ? "." : ", then undo the steps in reverse order.");
}

}  // namespace

Words plan(const Scene& scene) {
  if (scene.reduction.choice.made) return plan_beyond(scene);
  switch (scene.reduction.stop) {
    case Stop::reduced:
      return plan_to_one_part(scene);
    case Stop::bridge:
    case Stop::several_sources:
      return plan_beyond(scene);
    case Stop::short_circuit:
      if (is_port(scene.reduction)) {
        return say(tidying(scene.reduction), "The two points then are one.");
      }
      return say(tidying(scene.reduction),
                 scene.reduction.source.index < scene.reduction.start.part_count()
                     ? "The two terminals then are one point: the source is short-circuited."
                     : "Add the batteries: nothing else lies in their loop.");
    case Stop::open:
      return say(tidying(scene.reduction), "No closed path is left.");
    case Stop::no_source:
      return say("No source feeds this circuit, so nothing drives a current.");
  }
  return {};
}

}  // namespace ohmfold::views

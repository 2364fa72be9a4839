// The questions of a workbook.
#include "views/steps_asked.h"

#include <utility>

#include "drawing/stages.h"
#include "views/amounts.h"
#include "views/questions.h"
#include "views/reduction_chapter.h"

namespace ohmfold::views {

namespace {

class Questions {
 public:
  void ask(const Words& what, const Quantity& value) {
    if (asked_.size() == kMostAsked || value.number.is_symbolic()) return;
    if (is_too_long_to_show(value.number)) return;
    asked_.push_back({say("What is ", what, "?"), value});
  }
  void ask(const Words& what, const Reading& reading) {
    if (reading.value) ask(what, *reading.value);
  }

  [[nodiscard]] std::vector<Asked> all() && { return std::move(asked_); }

 private:
  std::vector<Asked> asked_;
};

Words result_words(const Scene& scene, const Return& item) {
  if (item.subject == Subject::potential) {
    return say("the potential at ", scene.words.point(item.point));
  }
  const ElementKind kind = scene.reduction.end.kind(item.part);
  const Run part = scene.words.part(item.part);
  switch (item.subject) {
    case Subject::current:
      return say("the current through ", part);
    case Subject::voltage:
      return say("the voltage across ", part);
    case Subject::power:
      if (kind == ElementKind::battery) return say("the power that battery ", part, " delivers");
      if (is_source(kind)) return say("the power that source ", part, " delivers");
      return say("the power in ", part);
    case Subject::potential:
    case Subject::resistance:
      break;
  }
  return say("the ", subject_word(item.subject), " of ", part);
}

}  // namespace

Words step_title(const Scene& scene, const Step& step) {
  const Words number = say("Step ", std::to_string(step.number), ": ");
  if (step.takes.empty()) return say(number, "look at ", scene.words.points(step.merges));
  const bool combines =
      step.makes.exists() && (step.rule == RuleName::series || step.rule == RuleName::parallel ||
                              step.rule == RuleName::batteries);
  return say(number,
             combines              ? "combine "
             : step.makes.exists() ? "replace "
                                   : "look at ",
             scene.words.parts(step.takes));
}

std::vector<Asked> asked_of_step(const Scene& scene, const Step& step) {
  Questions questions;
  const Network& network = scene.reduction.end;
  for (std::uint32_t i = 0; i < drawing::parts_made(step); ++i) {
    const PartId part{step.makes.index + i};
    const Words name = say(scene.words.part(part));
    if (network.kind(part) == ElementKind::battery) {
      questions.ask(say("the voltage of battery ", name), Quantity(network.battery(part).emf));
      const Resistance& internal = network.battery(part).internal;
      if (!internal.is_zero()) {
        questions.ask(say("the internal resistance of battery ", name), Quantity(internal));
      }
    } else if (network.kind(part) == ElementKind::resistor) {
      questions.ask(name, scene.resistance(part));
    }
  }
  return std::move(questions).all();
}

std::vector<Asked> asked_of_returns(const Scene& scene, const std::vector<const Return*>& items) {
  Questions questions;
  for (const Return* item : items) questions.ask(result_words(scene, *item), item->value);
  return std::move(questions).all();
}

std::vector<Asked> asked_of_points(const Scene& scene, const CaseTrace& trace) {
  Questions questions;
  for (const PointId point : points_left(scene.reduction)) {
    if (point.index >= trace.nodes.size()) break;
    questions.ask(say("the potential at ", scene.words.point(point)),
                  trace.nodes[point.index].potential);
  }
  return std::move(questions).all();
}

std::vector<Asked> asked_of_terminals(const Scene& scene, const Reading& resistance) {
  Questions questions;
  const auto [first, second] = terminals(scene.reduction);
  questions.ask(
      say("the resistance between ", scene.words.point(first), " and ", scene.words.point(second)),
      resistance);
  return std::move(questions).all();
}

std::vector<Asked> asked_of_answers(const Scene& scene, const std::vector<const Answer*>& answers) {
  Questions questions;
  for (const Answer* answer : answers) {
    const Words what = question_words(answer->question, scene.problem);
    if (answer->thevenin) {
      questions.ask(say("the voltage of ", what), answer->thevenin->voltage);
      questions.ask(say("the resistance of ", what), answer->thevenin->resistance);
    } else {
      questions.ask(what, answer->value);
    }
  }
  return std::move(questions).all();
}

}  // namespace ohmfold::views

// The reduction in words: plan, steps with their reasons, redraws, and what is left in the end.
#include "views/amounts.h"
#include "views/chapter.h"
#include "views/plan.h"
#include "views/proof_chapter.h"
#include "views/redraws.h"
#include "views/reduction_chapter.h"
#include "views/step_lines.h"
#include "views/steps_asked.h"
#include "views/ways_words.h"

namespace ohmfold::views {

namespace {

/// A redraw with more parts is not listed part by part.
constexpr std::size_t kMostListed = 12;

Words drawn_part(const Scene& scene, const Network& network, PartId part) {
  const PointId from = network.from(part);
  const PointId to = network.to(part);
  const Words ends = from == to
                         ? say(" with both ends on ", scene.words.point(from))
                         : say(" from ", scene.words.point(from), " to ", scene.words.point(to));
  switch (network.kind(part)) {
    case ElementKind::resistor:
      return say(scene.words.part(part), " (", scene.brief(scene.resistance(part)), ")", ends);
    case ElementKind::battery:
      return say("battery ", scene.words.part(part), ends);
    case ElementKind::current_source:
      return say("source ", scene.words.part(part), ends);
    case ElementKind::port:
    case ElementKind::wire:
    case ElementKind::closed_switch:
    case ElementKind::ammeter:
    case ElementKind::shorted:
    case ElementKind::open_switch:
    case ElementKind::voltmeter:
    case ElementKind::taken_out:
    case ElementKind::switched_off:
      return say(scene.words.part(part), ends);
  }
  return {};
}

/// A redraw in words, where there is no figure of it.
void add_redraw(const Scene& scene, std::uint32_t stage, std::size_t steps, Document& document) {
  const std::size_t count = alive_after(scene.reduction, steps);
  const Words label = say("Redraw ", std::to_string(stage), ": ");
  if (count > kMostListed) {
    document.paragraph(say(label, count_text(count), " parts are left."));
    return;
  }
  const Network network = replay(scene.reduction, steps);
  std::vector<Words> parts;
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    const PartId part{i};
    if (!network.is_alive(part) || network.kind(part) == ElementKind::port) continue;
    parts.push_back(drawn_part(scene, network, part));
  }
  Words words = label;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (i > 0) words.add("; ");
    words.add(parts[i]);
  }
  document.paragraph(say(words, parts.empty() ? "nothing is left." : "."));
}

void add_choice(const Scene& scene, const CaseTrace* proven, Document& document) {
  document.paragraph(where_it_stops(scene));
  if (proven != nullptr) {
    add_proof(scene, *proven, document);
    document.heading(3, say("The way on"));
  }
  document.paragraph(choice_words(scene));
}

/// A step with the redraw that comes of it.
void add_step(const Scene& scene, const Redrawn& redrawn, std::size_t index, Document& document) {
  const StepLog& steps = scene.reduction.steps;
  const Step step = steps[index];
  document.begin_step(step_title(scene, step), asked_of_step(scene, step));
  document.entry(std::to_string(step.number), scene.words.action(step));
  document.paragraph(scene.words.reason(step), 1);
  document.working(step_lines(scene, step));
  const bool ends_stage = index + 1 == steps.size() || steps[index + 1].stage != step.stage;
  if (redrawn.is_shown(index + 1, ends_stage)) {
    redrawn.add_after(index + 1, document);
  } else if (ends_stage) {
    add_redraw(scene, step.stage, index + 1, document);
  }
  document.end_step();
}

/// The resistance, or where the rest needs node-voltage analysis, its potentials.
std::vector<Asked> asked_of_what_is_left(const Scene& scene, const CaseTrace& trace) {
  const Reduction& reduction = scene.reduction;
  const bool analysed =
      reduction.stop == Stop::several_sources ||
      (reduction.stop == Stop::bridge && reduction.end.kind(reduction.source) != ElementKind::port);
  if (analysed) return asked_of_points(scene, trace);
  const bool seen = reduction.source.exists() && trace.equivalent;
  return seen ? asked_of_terminals(scene, *trace.equivalent) : std::vector<Asked>();
}

}  // namespace

std::pair<PointId, PointId> terminals(const Reduction& reduction) {
  const PartId source = reduction.source;
  // A battery that a step has made has no place in the start.
  const bool is_made = source.index >= reduction.start.part_count();
  const Network& network = is_made ? reduction.end : reduction.start;
  // A battery is written from − to +, a source of current feeds its second point; a port counts
  // from its first point.
  if (network.kind(source) == ElementKind::port) return {network.from(source), network.to(source)};
  return {network.to(source), network.from(source)};
}

void add_reduction(const Scene& scene, const CaseTrace& trace, const OutlineOptions& options,
                   Document& document, bool proven) {
  const StepLog& steps = scene.reduction.steps;
  const Selection selection = select(steps.size(), trace.complete);
  const Choice& choice = scene.reduction.choice;
  const Redrawn redrawn(scene, trace, options);
  redrawn.add_start(document);
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (choice.made && i == choice.after) add_choice(scene, proven ? &trace : nullptr, document);
    if (!selection.shows(i)) continue;
    add_step(scene, redrawn, i, document);
    if (i + 1 == selection.first && selection.left_out() > 0) {
      document.paragraph(say("Of ", count_text(selection.count), " steps, ",
                             count_text(selection.left_out()),
                             " are not shown here; the last ones follow."));
    }
  }
  if (choice.made && steps.size() == choice.after) {
    add_choice(scene, proven ? &trace : nullptr, document);
  }
}

void add_steps(const Scene& scene, const CaseTrace& trace, const OutlineOptions& options,
               Document& document) {
  document.heading(3, say("Plan"));
  if (!trace.shares.empty()) {
    add_superposition(scene, trace, options, document);
    return;
  }
  document.paragraph(plan(scene));
  if (!scene.reduction.steps.empty() || scene.reduction.choice.made) {
    document.heading(3, say("Reducing the circuit"));
    add_reduction(scene, trace, options, document, true);
  }
  if (!scene.reduction.choice.made) add_proof(scene, trace, document);
  const std::size_t from = document.blocks.size();
  add_what_is_left(scene, trace, document);
  document.cover(from, say("What is left"), asked_of_what_is_left(scene, trace));
}

}  // namespace ohmfold::views

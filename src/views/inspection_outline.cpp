// Is it series-parallel, and why: each case of an inspection in words.
#include "views/inspection_outline.h"

#include <string_view>

#include "views/amounts.h"
#include "views/chapter.h"
#include "views/proof_chapter.h"
#include "views/reduction_chapter.h"

namespace ohmfold::views {

namespace {

Words steps_words(std::size_t count) {
  return say(count_text(count), count == 1 ? " step" : " steps");
}

/// "3 steps leave one part, R123, between T and G"
Words reduced_words(const Scene& scene) {
  const Reduction& reduction = scene.reduction;
  const auto [first, second] = terminals(reduction);
  const Words between =
      say("between ", scene.words.point(first), " and ", scene.words.point(second));
  const std::size_t steps = reduction.steps.size();
  if (steps == 0)
    return say("only one part, ", scene.words.part(reduction.root), ", lies ", between);
  return say(steps_words(steps), steps == 1 ? " leaves" : " leave", " one part, ",
             scene.words.part(reduction.root), ", ", between);
}

void add_step_list(const Scene& scene, Document& document) {
  const StepLog& steps = scene.reduction.steps;
  const Selection selection = select(steps.size());
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (!selection.shows(i)) continue;
    document.entry(std::to_string(steps[i].number), scene.words.action(steps[i]));
    if (i + 1 != selection.first || selection.left_out() == 0) continue;
    document.paragraph(say("Of ", count_text(selection.count), " steps, ",
                           count_text(selection.left_out()),
                           " are not shown here; the last ones follow."));
  }
}

std::string_view kind_of_left(ElementKind kind) {
  if (kind == ElementKind::resistor) return "";
  if (kind == ElementKind::current_source) return "source";
  return kind == ElementKind::port ? "asked about" : "battery";
}

void add_parts_left(const Scene& scene, const Standstill& standstill, Document& document) {
  document.heading(3, say("What is left"));
  const Network& end = scene.reduction.end;
  Table table;
  for (const char* heading : {"Part", "R", "From", "To"}) {
    table.columns.push_back({say(heading), Align::left});
  }
  const Selection selection = select(standstill.left.size());
  for (std::size_t i = 0; i < standstill.left.size(); ++i) {
    if (!selection.shows(i)) continue;
    const auto& [part, from, to] = standstill.left[i];
    const bool resistor = end.kind(part) == ElementKind::resistor;
    table.rows.push_back(
        {say(scene.words.part(part)),
         resistor ? scene.brief(scene.resistance(part)) : say(kind_of_left(end.kind(part))),
         say(scene.words.point(from)), say(scene.words.point(to))});
    if (i + 1 == selection.first && selection.left_out() > 0) {
      table.rows.push_back({say("…"), {}, {}, {}});
    }
  }
  document.table(std::move(table));
  if (selection.left_out() > 0) {
    document.paragraph(say("Of ", count_text(selection.count), " parts, ",
                           count_text(selection.left_out()), " are not listed here."));
  }
}

void add_seen_by(const Problem& problem, const std::vector<SeenBy>& views, std::size_t batteries,
                 int figures, Document& document) {
  if (views.empty()) return;
  document.heading(3, say("What each source sees by itself"));
  document.paragraph(say(
      "Every other source is replaced by its internal resistance: an ideal source of current by "
      "a gap."));
  for (const SeenBy& view : views) {
    const Scene scene(problem, view.reduction, figures);
    const Words battery = say(Run(PartName{problem.part(view.battery).name}), ": ");
    if (view.bridge) {
      document.entry("",
                     say(battery, "not series-parallel. The points ",
                         scene.words.points(view.bridge->corners), " are corners of a bridge."));
    } else if (view.reduction.stop == Stop::reduced) {
      document.entry("", say(battery, "series-parallel; ", reduced_words(scene), "."));
    } else if (view.reduction.stop == Stop::short_circuit) {
      document.entry("", say(battery, "a short circuit."));
    } else {
      document.entry("", say(battery, "no closed path."));
    }
  }
  if (batteries > views.size()) {
    document.paragraph(say("Of ", count_text(batteries), " batteries, only these are looked at."));
  }
}

/// What no bridge stands in the way of.
void add_plain_verdict(const Scene& scene, Document& document) {
  switch (scene.reduction.stop) {
    case Stop::reduced:
      document.paragraph(say("Series-parallel as seen by ", seen_by_words(scene), ": ",
                             reduced_words(scene), "."));
      break;
    case Stop::short_circuit:
      document.paragraph(say("Series-parallel as seen by ", seen_by_words(scene),
                             ": its two terminals become one point, a short circuit."));
      break;
    case Stop::open:
      document.paragraph(
          say("Nothing to combine: no closed path runs through ", seen_by_words(scene), "."));
      break;
    case Stop::no_source:
      document.paragraph(
          say("There is no source, and no resistance is asked for: nothing to look from."));
      break;
    case Stop::several_sources:
      document.paragraph(
          say("Several sources, ", seen_by_words(scene),
              ", and no embedded bridge: with every source counted as a part, no four corners "
              "are joined by six paths. So each source by itself sees a series-parallel "
              "network, and only the other sources stand in the way of further steps here."));
      break;
    case Stop::bridge:
      break;
  }
  if (!scene.reduction.steps.empty()) {
    document.heading(3, say("The steps"));
    add_step_list(scene, document);
  }
}

void add_bridge_verdict(const Scene& scene, const CaseTrace& trace, Document& document) {
  const Standstill& standstill = *trace.standstill;
  const bool several = !scene.reduction.source.exists();
  Words words = say(
      several ? "Several sources: not series-parallel with " : "Not series-parallel as seen by ",
      seen_by_words(scene), several ? " in place. " : ". ");
  if (standstill.steps == 0) {
    words.add("No step in series or parallel can be made.");
  } else {
    words.add(say("After ", steps_words(standstill.steps), " no further one can be made."));
  }
  document.paragraph(words);
  if (standstill.steps > 0) add_step_list(scene, document);
  add_parts_left(scene, standstill, document);
  document.heading(3, say("Four corners and six paths"));
  add_certificate(scene, *trace.bridge, document);
  document.heading(3, say("Why no step can help"));
  add_argument(scene, *trace.bridge, document);
}

void add_case(const Scene& scene, const CaseTrace& trace, const std::vector<SeenBy>& views,
              Document& document) {
  if (trace.contradiction) {
    add_contradiction(scene, trace, document);
    return;
  }
  if (trace.bridge) {
    add_bridge_verdict(scene, trace, document);
  } else {
    add_plain_verdict(scene, document);
    if (trace.standstill) add_parts_left(scene, *trace.standstill, document);
  }
  if (trace.standstill && !trace.standstill->pairs.empty()) {
    document.heading(3, say("Pairs that look like one and are none"));
    add_pairs(scene, *trace.standstill, trace.standstill->pairs.size(), document);
  }
  add_seen_by(scene.problem, views, sources_left(scene).size(), scene.figures, document);
}

}  // namespace

Document inspection_outline(const Inspection& inspection, int figures) {
  const Problem& problem = *inspection.trace.problem;
  if (figures <= 0) figures = problem.figures;
  Document document;
  document.heading(
      1, say(problem.title.empty() ? std::string("A network of resistors") : problem.title));
  for (std::size_t i = 0; i < inspection.trace.cases.size(); ++i) {
    const CaseTrace& one = inspection.trace.cases[i];
    const Scene scene(problem, one.main, figures);
    add_case_heading(problem, one, i, document, "Inspection");
    add_case(scene, one, inspection.seen_by[i], document);
  }
  return document;
}

}  // namespace ohmfold::views

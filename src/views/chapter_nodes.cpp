// Node-voltage analysis of what no rule reduces: why it is needed, its equations, its potentials.
#include <algorithm>

#include "circuit/set_case.h"
#include "views/amounts.h"
#include "views/elimination_lines.h"
#include "views/node_equations.h"
#include "views/reduction_chapter.h"

namespace ohmfold::views {

namespace {

constexpr std::size_t kMostJoined = 12;

Words several_words() {
  return say("More than one source is left, so no single resistance can stand for the rest.");
}

}  // namespace

std::vector<PointId> points_left(const Reduction& reduction) {
  std::vector<PointId> points;
  for (const PartId part : reduction.left) {
    points.push_back(reduction.end.from(part));
    points.push_back(reduction.end.to(part));
  }
  std::sort(points.begin(), points.end());
  points.erase(std::unique(points.begin(), points.end()), points.end());
  return points;
}

Words where_it_stops(const Scene& scene) {
  const Reduction& reduction = scene.reduction;
  if (reduction.stop == Stop::several_sources) return several_words();
  const Network network = replay(reduction, reduction.choice.after);
  std::vector<Words> parts;
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    const PartId part{i};
    if (!network.is_alive(part) || is_source(network.kind(part))) continue;
    parts.push_back(say(scene.words.part(part), " joins ", scene.words.point(network.from(part)),
                        " and ", scene.words.point(network.to(part))));
  }
  return say(reduction.choice.after == 0 ? "This is a bridge. " : "What is left is a bridge. ",
             sentence(listed(parts, kMostJoined)),
             " No two of them are in parallel: no two join the same two points. No two are in "
             "series: at every point three or more meet, ",
             network.kind(reduction.source) == ElementKind::port
                 ? "or one of the two points asked about lies there."
                 : "the battery counted.");
}

Words port_words(const Reduction& reduction) {
  if (reduction.stop != Stop::bridge) return {};
  if (reduction.choice.method == Method::series_parallel) return {};
  return say(
      "Node-voltage analysis: with 1\u00A0V between the two points it gives the current that "
      "enters, and R = V / I.");
}

namespace {

void add_laws(const Scene& scene, const CaseTrace& trace, const NodeEquations& equations,
              Document& document) {
  const auto& fixed = trace.elimination.fixed;
  const bool some_are_joined = std::any_of(fixed.begin(), fixed.end(), [&](const auto& one) {
    return one.base != trace.elimination.ground;
  });
  Words words;
  if (equations.batteries.empty()) {
    words.add(
        say("The potential of ", scene.words.point(ground_of(scene.problem)), " is 0\u00A0V. "));
  }
  words.add("At each other point the currents that leave it sum to zero");
  words.add(some_are_joined
                ? ". Ohm's law does not give the current in an ideal battery; so the points that "
                  "it joins are taken together, and its current stays inside:"
                : ":");
  document.paragraph(words);
  document.working(equations.symbols);
  document.paragraph(say("With the values put in:"));
  document.working(equations.values);
}

// What comes before the potentials where the way to them is not written out.
Words solved_words(const NodeEquations& equations, std::size_t unknowns) {
  const std::string count = unknowns > 1 ? count_text(unknowns) + " " : "";
  if (!equations.symbols.empty()) return say("Solved together, these ", count, "equations give:");
  if (unknowns < 2) {
    return say(
        "The current law at every point gives as many equations as there are unknown potentials. "
        "Solved exactly, they give:");
  }
  return say("The current law at every point gives ", count, "equations for the ", count,
             "unknown potentials. Solved exactly, they give:");
}

}  // namespace

void add_node_voltages(const Scene& scene, const CaseTrace& trace, Document& document) {
  if (scene.reduction.choice.method == Method::series_parallel) return;
  const PointId ground = ground_of(scene.problem);
  document.heading(3, say("Node-voltage analysis"));
  if (scene.reduction.stop == Stop::several_sources) document.paragraph(several_words());
  const NodeEquations equations = node_equations(scene, trace, ground);
  if (!equations.batteries.empty()) {
    document.paragraph(say("The potential of ", scene.words.point(ground),
                           " is 0\u00A0V, and each ideal battery fixes a difference:"));
    document.working(equations.batteries);
  }
  const bool is_written = !equations.symbols.empty() && is_written_out(scene, trace.elimination);
  if (!equations.symbols.empty()) add_laws(scene, trace, equations, document);
  if (is_written) add_elimination(scene, trace.elimination, document);
  std::vector<Equation> potentials;
  for (const PointId point : points_left(scene.reduction)) {
    if (point.index >= trace.nodes.size() || potentials.size() == kMostTerms) break;
    const Reading& potential = trace.nodes[point.index].potential;
    if (!potential.value) continue;
    Equation line{scene.symbols.potential(point), {}, {}};
    append_value(line, *potential.value, scene.figures);
    potentials.push_back(std::move(line));
  }
  if (potentials.empty()) return;
  document.paragraph(is_written ? say("All potentials:")
                                : solved_words(equations, trace.elimination.unknowns.size()));
  document.working(std::move(potentials));
}

}  // namespace ohmfold::views

// Node-voltage analysis of what no rule reduces: why it is needed, its equations, its potentials.
#include <algorithm>

#include "views/node_equations.h"
#include "views/reduction_chapter.h"

namespace ohmfold::views {

namespace {

constexpr std::size_t kMostJoined = 12;

PointId ground_of(const Problem& problem) {
  if (problem.ground) return *problem.ground;
  for (const Part& part : problem.parts) {
    if (part.kind == PartKind::battery) return part.from;
  }
  return PointId{0};
}

Words several_words() {
  return say("More than one battery is left, so no single resistance can stand for the rest.");
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
  if (!equations.symbols.empty()) {
    document.paragraph(
        say(equations.batteries.empty()
                ? say("The potential of ", scene.words.point(ground), " is 0\u00A0V. ")
                : Words(),
            "At each other point the currents that leave it sum to zero:"));
    document.working(equations.symbols);
    document.paragraph(say("With the values put in:"));
    document.working(equations.values);
  }
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
  document.paragraph(equations.symbols.empty()
                         ? say("The current law at every point gives as many equations as there "
                               "are unknown potentials. Solved exactly, they give:")
                         : say("Solved together, these equations give:"));
  document.working(std::move(potentials));
}

}  // namespace ohmfold::views

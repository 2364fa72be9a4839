// Draws the cases of a solved problem, redraw after redraw, and judges each drawing.
#pragma once

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

#include "drawing/read_back.h"
#include "drawing/svg.h"
#include "ohmfold/draw.h"
#include "ohmfold/trace.h"
#include "views/pictures.h"

namespace ohmfold::test {

/// The numbers of steps after which there is something new to see: none, and the last of each
/// stage.
inline std::vector<std::size_t> ends_of_stages(const StepLog& steps) {
  std::vector<std::size_t> moments{0};
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (i + 1 == steps.size() || steps[i + 1].stage != steps[i].stage) moments.push_back(i + 1);
  }
  return moments;
}

/// The same, and some within stages: none of `stride` steps is left out.
inline std::vector<std::size_t> moments(const StepLog& steps, std::size_t stride) {
  std::vector<std::size_t> all = ends_of_stages(steps);
  for (std::size_t i = 1; i < steps.size(); i += stride) all.push_back(i);
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end()), all.end());
  return all;
}

/// What was found wrong, with the first drawings where it was.
struct Tally {
  static constexpr std::size_t kMostShown = 25;

  std::size_t drawings = 0;
  std::size_t wrong = 0;
  std::string report;

  void add(const std::string& where, const std::vector<std::string>& faults) {
    ++drawings;
    if (faults.empty()) return;
    if (++wrong > kMostShown) return;
    report += where + ":\n";
    for (const std::string& fault : faults) report += "  " + fault + "\n";
  }
};

/// The ways in which each circuit is drawn.
inline std::vector<DrawOptions> ways_to_draw() {
  std::vector<DrawOptions> ways;
  for (const SymbolSet symbols : {SymbolSet::rectangle, SymbolSet::zigzag}) {
    ways.push_back({.symbols = symbols});
    ways.push_back({.symbols = symbols, .currents = true, .potentials = true});
    ways.push_back({.symbols = symbols, .values = false, .marks = false});
  }
  return ways;
}

/// Draws a case after each of some numbers of steps: as draw_svg() does it, but all redraws from
/// one layout.
inline void judge_case(const Trace& trace, std::size_t index, const std::string& where,
                       const std::vector<DrawOptions>& ways, std::size_t stride, Tally& tally) {
  const Reduction& reduction = trace.cases[index].main;
  const views::PartNames names(*trace.problem, reduction);
  const views::Scene scene(*trace.problem, reduction, trace.problem->figures);
  for (std::size_t way = 0; way < ways.size(); ++way) {
    const DrawOptions& options = ways[way];
    const views::Pictures pictures(scene, trace.cases[index], drawing::paper_sizes(),
                                   {.values = options.values,
                                    .currents = options.currents,
                                    .potentials = options.potentials,
                                    .marks = options.marks});
    for (const std::size_t steps : moments(reduction.steps, stride)) {
      const views::Figure figure = pictures.after(steps);
      const std::string svg = drawing::svg(
          figure.schematic, {figure.title, figure.description, "figure"}, options.symbols, true);
      tally.add(where + ", case " + std::to_string(index + 1) + ", after " + std::to_string(steps) +
                    " steps, way " + std::to_string(way),
                faults_of(svg, shown_by(replay(reduction, steps), names)));
    }
  }
}

}  // namespace ohmfold::test

// Solved circuits to draw: those of problems/, and random ones.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

#include "drawing/figures.h"
#include "ohmfold/read.h"
#include "ohmfold/solve.h"
#include "support/circuit.h"
#include "support/random_network.h"
#include "views/names.h"

namespace ohmfold::drawing {

struct NamedTrace {
  std::string name;
  Trace trace;
};

/// All problems of problems/, in the order of their names.
inline const std::vector<NamedTrace>& solved_problems() {
  static const std::vector<NamedTrace> kTraces = [] {
    std::vector<std::filesystem::path> paths;
    for (const auto& entry :
         std::filesystem::directory_iterator(std::string(OHMFOLD_SOURCE_DIR) + "/problems")) {
      if (entry.path().extension() == ".circuit") paths.push_back(entry.path());
    }
    std::sort(paths.begin(), paths.end());
    std::vector<NamedTrace> traces;
    for (const std::filesystem::path& path : paths) {
      std::ostringstream text;
      text << std::ifstream(path).rdbuf();
      traces.push_back({path.stem(), solve(test::problem_of(text.str()))});
    }
    return traces;
  }();
  return kTraces;
}

/// All reductions of a trace: the main ones, those for other questions, those of single sources.
inline std::vector<const Reduction*> reductions_of(const Trace& trace) {
  std::vector<const Reduction*> all;
  for (const CaseTrace& one : trace.cases) {
    all.push_back(&one.main);
    for (const Reduction& further : one.further) all.push_back(&further);
    for (const Share& share : one.shares) all.push_back(&share.alone.main);
  }
  return all;
}

/// Series-parallel networks and multigraphs with wires, gaps and several batteries.
inline std::vector<NamedTrace> random_traces(int count) {
  std::vector<NamedTrace> traces;
  for (int i = 0; i < count; ++i) {
    support::RandomCircuits random(static_cast<std::uint64_t>(i) + 1);
    const bool tree = i % 2 == 0;
    support::Multigraph mix;
    mix.points = 4 + random.below(5);
    mix.resistors = 5 + random.below(8);
    mix.wires = random.below(3);
    mix.open_switches = random.below(2);
    mix.batteries = 1 + random.below(2);
    mix.internal = support::Multigraph::Internal::all;
    mix.connected = true;
    Problem problem = tree ? random.series_parallel(1 + random.below(25)) : random.multigraph(mix);
    traces.push_back({"random " + std::to_string(i), solve(std::move(problem))});
  }
  return traces;
}

/// Names and a value for all parts and points.
inline Captions captions_of(const Problem& problem, const Reduction& reduction) {
  const views::PartNames names(problem, reduction);
  Captions captions;
  const std::size_t parts = std::max(problem.parts.size(), reduction.end.part_count());
  for (std::uint32_t i = 0; i < parts; ++i) {
    const std::string& name = names.of(PartId{i});
    captions.parts.emplace_back();
    if (name.empty()) continue;
    captions.parts.back() = {{TextRole::part_name, name}, {TextRole::value, "12.5 Ω"}};
    captions.currents.push_back(static_cast<int>(i % 3) - 1);
  }
  const std::size_t points = std::max(problem.points.size(), reduction.end.point_count());
  for (std::uint32_t i = 0; i < points; ++i) {
    captions.points.push_back({{TextRole::point_name, names.of(PointId{i})}});
  }
  return captions;
}

}  // namespace ohmfold::drawing

// Reductions and proofs for all cases.
#include "ohmfold/inspect.h"

#include "circuit/set_case.h"
#include "ohmfold/solve.h"
#include "solve/proof.h"
#include "solve/reduce.h"

namespace ohmfold {
namespace {

// So many batteries are each looked from at most.
constexpr std::size_t kMostBatteries = 12;

std::vector<SeenBy> views_of_batteries(const Problem& problem, const Case& setting,
                                       const CaseTrace& trace) {
  std::vector<SeenBy> views;
  if (trace.contradiction || trace.main.stop != Stop::several_sources) return views;
  for (const PartId part : trace.main.left) {
    if (!is_source(trace.main.end.kind(part))) continue;
    if (views.size() == kMostBatteries) break;
    Network network = seen_by(problem, setting, part);
    std::optional<Certificate> bridge = proven_bridge(network);
    views.push_back({part, reduce(std::move(network)), std::move(bridge)});
  }
  return views;
}

}  // namespace

Inspection inspect(const Problem& problem) {
  Inspection inspection{solve(problem, {.reduce_only = true}), {}};
  const Problem& solved = *inspection.trace.problem;
  for (std::size_t i = 0; i < solved.cases.size(); ++i) {
    inspection.seen_by.push_back(
        views_of_batteries(solved, solved.cases[i], inspection.trace.cases[i]));
  }
  return inspection;
}

}  // namespace ohmfold

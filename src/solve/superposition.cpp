// Solves the case once for each source, and adds up.
#include "solve/superposition.h"

#include <algorithm>

#include "check/check.h"
#include "circuit/set_case.h"
#include "solve/answers.h"
#include "solve/blocked_current.h"
#include "solve/drive.h"
#include "solve/ideal_currents.h"
#include "solve/reduce.h"
#include "solve/results.h"

namespace ohmfold {
namespace {

// The one place that says which networks count as reduced for superposition.
bool is_solved_alone(Stop stop) {
  return stop == Stop::reduced || stop == Stop::short_circuit || stop == Stop::open;
}

// By the shortest way; where that is node-voltage analysis and superposition was asked for, by
// deltas and stars.
Reduction reduce_alone(const Network& network, const SolveOptions& options) {
  const bool asked = options.method == Method::superposition;
  SolveOptions own = options;
  if (asked) own.method = Method::automatic;
  Reduction reduction = reduce(network, own);
  if (reduction.stop != Stop::bridge || !asked) return reduction;
  own.method = Method::delta_star;
  return reduce(network, own);
}

// For each source that is left, the sources of the file that it stands for. A step that makes one
// battery of several is gone through backwards.
std::vector<std::vector<PartId>> sources_left(const Reduction& main) {
  std::vector<std::vector<PartId>> groups;
  std::vector<std::uint32_t> group_of(main.end.part_count(), PartId::kNone);
  for (const PartId part : main.left) {
    if (!is_source(main.end.kind(part))) continue;
    group_of[part.index] = static_cast<std::uint32_t>(groups.size());
    groups.emplace_back();
  }
  for (std::size_t i = main.steps.size(); i-- > 0;) {
    const Step step = main.steps[i];
    if (step.rule != RuleName::batteries) continue;
    for (const PartId part : step.takes) group_of[part.index] = group_of[step.makes.index];
  }
  for (std::uint32_t i = 0; i < main.start.part_count(); ++i) {
    if (group_of[i] != PartId::kNone) groups[group_of[i]].push_back(PartId{i});
  }
  std::sort(groups.begin(), groups.end());
  return groups;
}

bool has_open_battery(const Network& start) {
  std::vector<PartId> ideal;
  for (std::uint32_t i = 0; i < start.part_count(); ++i) {
    const PartId part{i};
    const bool ideal_battery =
        start.kind(part) == ElementKind::battery && start.battery(part).internal.is_zero();
    if (ideal_battery || is_wire(start.kind(part))) ideal.push_back(part);
  }
  const IdealForest forest = ideal_forest(start, ideal);
  const auto is_battery = [&](PartId part) { return start.kind(part) == ElementKind::battery; };
  return std::any_of(forest.chords.begin(), forest.chords.end(), is_battery) ||
         std::any_of(forest.branches.begin(), forest.branches.end(),
                     [&](const auto& branch) { return branch.on_loop && is_battery(branch.part); });
}

// False where the exact values of all parts would be too long to write.
bool solve_alone(const Problem& problem, const SolveOptions& options, CaseTrace& alone) {
  alone.kind = kind_of(alone.main);
  Flow<ExactField> flow(ExactField{}, alone.main.end.part_count());
  drive_left(alone.main, flow);
  if (!all_values_fit(alone.main, flow, problem.parts.size(), options.most_bits)) return false;
  alone.equivalent = seen_resistance(alone.main);
  fill_in_results(problem, flow, alone);
  alone.checks = check_case(problem, alone);
  demand_that_all_hold(alone.checks, "for a source alone");
  return true;
}

}  // namespace

std::optional<std::vector<Share>> find_shares(const Problem& problem, const Case& setting,
                                              const SolveOptions& options, const Reduction& main) {
  const std::vector<std::vector<PartId>> groups = sources_left(main);
  const bool too_many =
      groups.size() > kMostShares || groups.size() * problem.parts.size() > kMostSharedParts;
  if (too_many || has_open_battery(main.start)) return std::nullopt;
  std::vector<Share> shares;
  for (const std::vector<PartId>& sources : groups) {
    Share share;
    share.sources = sources;
    const Network start = with_sources(problem, setting, sources);
    // Sources of current that are each other's only way back cannot be taken apart.
    if (find_blocked_current(start)) return std::nullopt;
    share.alone.main = reduce_alone(start, options);
    if (!is_solved_alone(share.alone.main.stop)) return std::nullopt;
    shares.push_back(std::move(share));
  }
  for (Share& share : shares) {
    if (!solve_alone(problem, options, share.alone)) return std::nullopt;
  }
  return shares;
}

Flow<ExactField> sum_of_shares(const Network& start, const std::vector<Share>& shares) {
  Flow<ExactField> flow(ExactField{}, start.part_count());
  std::vector<bool> has_share(start.part_count(), false);
  for (const Share& share : shares) {
    for (const PartId source : share.sources) has_share[source.index] = true;
    for (const BranchResult& branch : share.alone.branches) {
      const std::uint32_t i = branch.part.index;
      if (branch.current.value) {
        flow.current[i] += branch.current.value->number;
      } else {
        flow.open_share[i] = branch.current.why == Undetermined::ideal_loop;
      }
      const Reading voltage = voltage_in_share(start, share, branch.part);
      if (voltage.value) flow.voltage[i] += voltage.value->number;
    }
  }
  // One on no closed path drives nothing, and its own voltage lies between its terminals.
  for (const BatteryData& battery : start.batteries()) {
    if (!has_share[battery.part.index]) flow.voltage[battery.part.index] += battery.emf.number;
  }
  return flow;
}

}  // namespace ohmfold

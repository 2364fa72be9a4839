// Series in the wider sense.
#include "coach/one_current.h"

#include <optional>
#include <utility>

#include "circuit/spanning.h"

namespace ohmfold {
namespace {

// By part: does it lie on a closed path of the living parts other than `without`? (And those
// parts, in the order of the answer.)
struct Loops {
  std::vector<PartId> parts;
  std::vector<bool> lies_on;  // by PartId
};

Loops loops_without(const Network& network, PartId without) {
  Loops loops;
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    const PartId part{i};
    if (network.is_alive(part) && part != without) loops.parts.push_back(part);
  }
  loops.lies_on = on_loops(network, span_forest(network, loops.parts));
  return loops;
}

// The parts in the order of a chain, where they are a whole stretch of one; otherwise nothing.
std::optional<Place> stretch(const Network& network, const std::vector<PartId>& parts) {
  if (!rule(RuleName::series).judge(network, {parts, {}, {}}).allowed) return std::nullopt;
  const Edit edit = rule(RuleName::series).apply(network, {parts, {}, {}});
  if (edit.removes.size() != parts.size()) return std::nullopt;
  return Place{edit.removes, edit.adds.front().from, edit.adds.front().to};
}

}  // namespace

Verdict judge_one_current(const Network& network, const std::vector<PartId>& parts) {
  Verdict verdict = rule(RuleName::series).judge(network, {parts, {}, {}});
  if (verdict.allowed && stretch(network, parts)) return verdict;
  for (const PartId part : parts) {
    if (network.kind(part) != ElementKind::resistor) return verdict;
  }
  if (parts.size() < 2) return verdict;
  const Loops all = loops_without(network, PartId{});
  const Loops rest = loops_without(network, parts.front());
  Verdict wider{true, {}};
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (!all.lies_on[parts[i].index]) return verdict;
    if (i == 0) continue;
    if (rest.lies_on[parts[i].index]) return verdict;
    wider.facts.emplace_back(CarryOneCurrent{parts.front(), parts[i]});
  }
  return wider;
}

Edit sum_for_one_current(const Network& network, const std::vector<PartId>& parts) {
  if (auto place = stretch(network, parts)) {
    return rule(RuleName::series).apply(network, std::move(*place));
  }
  Edit edit;
  Ratio sum = network.resistance(parts.front());
  for (std::size_t i = 1; i < parts.size(); ++i) {
    sum = Ratio::series(sum, network.resistance(parts[i]));
    edit.merges.push_back(network.from(parts[i]));
    edit.merges.push_back(network.to(parts[i]));
  }
  edit.adds.push_back({network.from(parts.front()), network.to(parts.front()), sum});
  edit.merging = Merging::by_twos;
  edit.removes = parts;
  edit.formula = Formula::sum;
  edit.back = {Law::same_current, Law::ohm_voltage};
  return edit;
}

}  // namespace ohmfold

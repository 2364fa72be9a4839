// Looks for a loop of ideal parts that the voltage law forbids.
#include "solve/contradiction.h"

#include <algorithm>
#include <unordered_map>

#include "solve/conditions.h"
#include "solve/ideal_currents.h"

namespace ohmfold {
namespace {

Number emf_of(const Network& network, PartId part) {
  return network.kind(part) == ElementKind::battery ? network.battery(part).emf.number : Number(0);
}

class LoopSearch {
 public:
  explicit LoopSearch(const Network& network) : network_(network) {
    std::vector<PartId> ideal;
    for (std::uint32_t i = 0; i < network.part_count(); ++i) {
      const PartId part{i};
      const bool battery =
          network.kind(part) == ElementKind::battery && network.battery(part).internal.is_zero();
      if (battery || is_wire(network.kind(part))) ideal.push_back(part);
    }
    forest_ = ideal_forest(network, ideal);
  }

  std::optional<Contradiction> run() {
    for (const auto& branch : forest_.branches) {
      const Number emf = emf_of(network_, branch.part);
      const Number above = offset_[branch.above.index];
      offset_[branch.below.index] =
          network_.from(branch.part) == branch.above ? above + emf : above - emf;
      branch_to_[branch.below.index] = &branch;
    }
    for (const PartId chord : forest_.chords) {
      const Number rise = offset_[network_.to(chord).index] - offset_[network_.from(chord).index];
      const Number remainder = emf_of(network_, chord) - rise;
      if (!remainder.is_zero()) return describe(chord, remainder);
    }
    return std::nullopt;
  }

 private:
  std::vector<PartId> path_to_root(PointId point) {
    std::vector<PartId> path;
    for (auto at = branch_to_.find(point.index); at != branch_to_.end();
         at = branch_to_.find(at->second->above.index)) {
      path.push_back(at->second->part);
    }
    return path;
  }

  Contradiction describe(PartId chord, const Number& remainder) {
    std::vector<PartId> up = path_to_root(network_.from(chord));
    std::vector<PartId> down = path_to_root(network_.to(chord));
    while (!up.empty() && !down.empty() && up.back() == down.back()) {
      up.pop_back();
      down.pop_back();
    }
    Contradiction found;
    found.loop.push_back(chord);
    found.loop.insert(found.loop.end(), down.begin(), down.end());
    found.loop.insert(found.loop.end(), up.rbegin(), up.rend());
    const auto is_battery = [&](PartId part) {
      return network_.kind(part) == ElementKind::battery;
    };
    // The battery first; the order round the loop stays.
    std::rotate(found.loop.begin(), std::find_if(found.loop.begin(), found.loop.end(), is_battery),
                found.loop.end());
    const auto batteries = std::count_if(found.loop.begin(), found.loop.end(), is_battery);
    found.kind =
        batteries == 1 ? ContradictionKind::battery_shorted : ContradictionKind::batteries_disagree;
    for (const PartId part : found.loop) {
      found.points.push_back(network_.from(part));
      found.points.push_back(network_.to(part));
    }
    std::sort(found.points.begin(), found.points.end());
    found.points.erase(std::unique(found.points.begin(), found.points.end()), found.points.end());
    found.remainder.number = abs(remainder);
    found.agree = sign_condition(remainder);
    return found;
  }

  const Network& network_;
  IdealForest forest_;
  std::unordered_map<std::uint32_t, Number> offset_;  // by point, against the root of its tree
  std::unordered_map<std::uint32_t, const IdealForest::Branch*> branch_to_;  // by point below
};

}  // namespace

std::optional<Contradiction> find_contradiction(const Network& start) {
  return LoopSearch(start).run();
}

}  // namespace ohmfold

// Currents through ideal wires, closed switches, ammeters and ideal batteries: the current law at
// the original points.
#pragma once

#include "ohmfold/network.h"
#include "solve/flow.h"

namespace ohmfold {

/// The parts of a network whose current no law of their own gives, as a graph: a spanning forest
/// and, for each of its parts, what lies beyond it.
struct IdealForest {
  struct Branch {
    PartId part;
    PointId above, below;  ///< ends; `below` is away from the root
    bool on_loop = false;  ///< it closes a loop of ideal parts: its own share is not determined
  };
  std::vector<Branch> branches;  ///< from the roots outwards
  std::vector<PartId> chords;    ///< ideal parts outside the forest: each closes a loop
};

/// Requires living parts in `ideal`. Cost: near linear.
[[nodiscard]] IdealForest ideal_forest(const Network& network, const std::vector<PartId>& ideal);

/// The parts of a case whose currents are still to be found once its steps are undone: wires, and
/// batteries that share with other ideal parts in a way that may be open. By id.
template <class Field>
std::vector<PartId> ideal_parts(const Network& start, const Flow<Field>& flow) {
  std::vector<PartId> parts;
  for (std::uint32_t i = 0; i < start.part_count(); ++i) {
    if (is_wire(start.kind(PartId{i})) || flow.open_share[i]) parts.push_back(PartId{i});
  }
  return parts;
}

/// Finds the currents of the ideal parts of `start` from those of all others, which are in `flow`.
///
/// Cutting one ideal part out of its tree leaves a piece; the current law over that piece gives its
/// current. Where ideal parts form a loop, any current may circulate in it: then open_share is set,
/// and the current stored is the one without any current in the chords, which satisfies the current
/// law everywhere. Cost: linear in the parts.
template <class Field>
void find_ideal_currents(const Network& start, const IdealForest& forest, const Field& field,
                         Flow<Field>& flow) {
  std::vector<bool> is_ideal(start.part_count(), false);
  for (const auto& branch : forest.branches) is_ideal[branch.part.index] = true;
  for (const PartId chord : forest.chords) is_ideal[chord.index] = true;

  // What the other parts bring to each point.
  std::vector<typename Field::Value> brought(start.point_count(), field.from(Number(0)));
  for (std::uint32_t i = 0; i < start.part_count(); ++i) {
    const PartId part{i};
    if (is_ideal[i] || !start.is_alive(part) || start.kind(part) == ElementKind::port) continue;
    auto& at_from = brought[start.from(part).index];
    auto& at_to = brought[start.to(part).index];
    at_from = field.subtract(at_from, flow.current[i]);
    at_to = field.add(at_to, flow.current[i]);
  }
  for (std::size_t i = forest.branches.size(); i-- > 0;) {
    const auto& branch = forest.branches[i];
    auto& below = brought[branch.below.index];
    auto& above = brought[branch.above.index];
    // All that arrives below leaves through this part towards the root.
    flow.current[branch.part.index] = start.from(branch.part) == branch.below
                                          ? below
                                          : field.subtract(field.from(Number(0)), below);
    flow.open_share[branch.part.index] = branch.on_loop;
    above = field.add(above, below);
  }
  for (const PartId chord : forest.chords) flow.open_share[chord.index] = true;
}

}  // namespace ohmfold

// Steps that rest on equal potentials, checked by solving the network before the step.
#pragma once

#include <optional>

#include "check/elimination.h"
#include "check/excerpt.h"
#include "check/report.h"
#include "check/step.h"

namespace ohmfold::check {

/// The points that the step joins, as pairs that must be at the same potential.
[[nodiscard]] StepFinding check_joined(const Network& before, const Step& step);

/// The same with the ends of each part taken. Fails where the network is anything else than
/// resistors and one source, where a point is not joined to it, or where a part is made.
[[nodiscard]] StepFinding check_equal(const Network& before, const Excerpt& excerpt,
                                      const Step& step, const std::optional<NewPart>& made);

/// The one source of a network of resistors; none where it is anything else.
[[nodiscard]] PartId only_source(const Network& network);

/// Are the points of each pair at the same potential, as the source drives the network? Whatever
/// its voltage and internal resistance are: 1 A is fed in at one terminal and drawn at the other.
/// `resistance_of(PartId)` gives the value of each living resistor. Requires that check_equal
/// holds. Cost: as Elimination.
template <class Field, class ResistanceOf>
[[nodiscard]] StepFinding check_potentials(const Field& field, const Network& before,
                                           const std::vector<std::pair<PointId, PointId>>& equal,
                                           ResistanceOf resistance_of) {
  constexpr std::size_t kMostCore = 1000;
  const PartId source = only_source(before);
  const auto one = field.from(Number(1));
  const auto zero = field.from(Number(0));
  Elimination<Field> equations(field, before.point_count());
  for (std::uint32_t i = 0; i < before.part_count(); ++i) {
    const PartId part{i};
    if (!before.is_alive(part) || part == source) continue;
    equations.join(before.from(part).index, before.to(part).index,
                   field.divide(one, resistance_of(part)));
  }
  equations.inject(before.from(source).index, one);
  equations.inject(before.to(source).index, field.subtract(zero, one));
  std::vector<bool> keep(before.point_count(), false);
  keep[before.to(source).index] = true;
  if (!equations.eliminate(keep, kMostCore)) {
    return {false, "the network is too large to compare potentials"};
  }
  const auto potential = equations.potentials();
  for (const auto& [first, second] : equal) {
    const auto& at_first = potential[first.index];
    const auto& at_second = potential[second.index];
    if (at_first == at_second) continue;
    return {false,
            name_of(first) + " and " + name_of(second) + " are not at the same potential: off by " +
                field.text(field.subtract(at_first, at_second)) + " V where the source gives 1 A"};
  }
  return {};
}

}  // namespace ohmfold::check

// The part of checking a step that needs numbers: the conductance, over any field.
#pragma once

#include "check/elimination.h"
#include "check/excerpt.h"
#include "check/report.h"
#include "check/step.h"

namespace ohmfold::check {

/// Is the conductance between the ends of the part made the one that the parts taken have between
/// them? Requires that check_structure holds.
template <class Field>
[[nodiscard]] StepFinding check_conductance(const Field& field, const Network& before,
                                            const Step& step, const NewPart& made) {
  constexpr std::size_t kMostCore = 1000;
  const Excerpt excerpt(before, step.takes);
  const std::uint32_t from = *excerpt.number_of(made.from);
  const std::uint32_t to = *excerpt.number_of(made.to);
  // A part that is made into a dead end, or onto one point, conducts nothing; nor did those taken.
  if (from == to || !excerpt.is_boundary(from) || !excerpt.is_boundary(to)) return {};
  if (!cln::plusp(made.resistance.p())) return {false, "the part made has no resistance"};

  DisjointSets wired = excerpt.wired();
  Elimination<Field> equations(field, excerpt.point_count());
  const auto one = field.from(Number(1));
  for (const Excerpt::Part& part : excerpt.parts()) {
    if (part.kind != ElementKind::resistor) continue;
    const auto resistance = field.from(before.resistance(part.id));
    equations.join(wired.find(part.from), wired.find(part.to), field.divide(one, resistance));
  }
  std::vector<bool> keep(excerpt.point_count(), false);
  keep[wired.find(from)] = keep[wired.find(to)] = true;
  if (!equations.eliminate(keep, kMostCore)) return {false, "too many parts taken at once"};
  const auto had = equations.conductance(wired.find(from), wired.find(to));
  const auto has = field.divide(one, field.from(made.resistance));
  if (had == has) return {};
  return {false, "conductance between " + name_of(made.from) + " and " + name_of(made.to) +
                     ": off by " + field.text(field.subtract(has, had)) + " S, compared with " +
                     field.text(had) + " S"};
}

}  // namespace ohmfold::check

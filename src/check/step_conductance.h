// The part of checking a step that needs numbers: the conductance, over any field.
#pragma once

#include <optional>
#include <vector>

#include "check/elimination.h"
#include "check/excerpt.h"
#include "check/report.h"
#include "check/step.h"

namespace ohmfold::check {

/// What the parts taken conduct between the ends of the part made, all their other points
/// eliminated; nothing where the part made hangs loose or has both ends on one point, so that no
/// conductance matters; zero where too many parts are taken at once to say. `resistance_of(PartId)`
/// gives the value of a part taken. Requires that check_structure holds.
template <class Field, class ResistanceOf>
[[nodiscard]] std::optional<typename Field::Value> conductance_taken(const Field& field,
                                                                     const Network& before,
                                                                     const Step& step,
                                                                     const NewPart& made,
                                                                     ResistanceOf resistance_of) {
  constexpr std::size_t kMostCore = 1000;
  const Excerpt excerpt(before, step.takes);
  const std::uint32_t from = *excerpt.number_of(made.from);
  const std::uint32_t to = *excerpt.number_of(made.to);
  if (from == to || !excerpt.is_boundary(from) || !excerpt.is_boundary(to)) return std::nullopt;

  DisjointSets wired = excerpt.wired();
  Elimination<Field> equations(field, excerpt.point_count());
  const auto one = field.from(Number(1));
  for (const Excerpt::Part& part : excerpt.parts()) {
    if (part.kind != ElementKind::resistor) continue;
    equations.join(wired.find(part.from), wired.find(part.to),
                   field.divide(one, resistance_of(part.id)));
  }
  std::vector<bool> keep(excerpt.point_count(), false);
  keep[wired.find(from)] = keep[wired.find(to)] = true;
  if (!equations.eliminate(keep, kMostCore)) return field.from(Number(0));
  return equations.conductance(wired.find(from), wired.find(to));
}

/// Is the conductance `had` that of a part made of `resistance`?
template <class Field>
[[nodiscard]] StepFinding compare_conductance(const Field& field, const NewPart& made,
                                              const typename Field::Value& had,
                                              const typename Field::Value& resistance) {
  const auto zero = field.from(Number(0));
  if (resistance == zero) return {false, "the part made has no resistance"};
  const auto has = field.divide(field.from(Number(1)), resistance);
  if (had == has) return {};
  return {false, "conductance between " + name_of(made.from) + " and " + name_of(made.to) +
                     ": off by " + field.text(field.subtract(has, had)) + " S, compared with " +
                     field.text(had) + " S"};
}

/// Is the conductance between the ends of the part made the one that the parts taken have between
/// them? Requires that check_structure holds.
template <class Field>
[[nodiscard]] StepFinding check_conductance(const Field& field, const Network& before,
                                            const Step& step, const NewPart& made) {
  const auto had = conductance_taken(
      field, before, step, made, [&](PartId part) { return field.from(before.resistance(part)); });
  if (!had) return {};
  return compare_conductance(field, made, *had, field.from(made.resistance));
}

}  // namespace ohmfold::check

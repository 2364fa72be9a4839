// Several parts in place of several others: conductances between any number of terminals.
#pragma once

#include "check/elimination.h"
#include "check/excerpt.h"
#include "check/report.h"
#include "check/step.h"

namespace ohmfold::check {

/// The part of checking such a step that needs no numbers: resistors come between points of what is
/// taken and new points, and what is taken is resistors alone.
[[nodiscard]] StepFinding check_several(const Network& before, const Excerpt& excerpt,
                                        const Step& step);

/// Do the parts of `step.adds` conduct the same between each two terminals as those taken, all
/// other points eliminated? `resistance_of(PartId)` gives the value of a part taken. Requires that
/// check_several holds. Cost: the third power of the points at worst.
template <class Field, class ResistanceOf>
[[nodiscard]] StepFinding check_replacement(const Field& field, const Network& before,
                                            const Step& step, ResistanceOf resistance_of) {
  constexpr std::size_t kMostCore = 1000;
  const Excerpt excerpt(before, step.takes);
  const auto one = field.from(Number(1));
  const std::size_t old_points = excerpt.point_count();
  Elimination<Field> had(field, old_points);
  Elimination<Field> has(field, old_points + step.new_points);
  for (const Excerpt::Part& part : excerpt.parts()) {
    had.join(part.from, part.to, field.divide(one, resistance_of(part.id)));
  }
  const auto number_of = [&](PointId point) {
    const auto number = excerpt.number_of(point);
    if (number) return *number;
    return static_cast<std::uint32_t>(old_points + point.index - before.point_count());
  };
  for (const NewPart& part : step.adds) {
    const auto resistance = field.from(part.resistance);
    if (resistance == field.from(Number(0))) return {false, "a part made has no resistance"};
    has.join(number_of(part.from), number_of(part.to), field.divide(one, resistance));
  }
  std::vector<bool> keep(old_points, false);
  for (std::uint32_t i = 0; i < old_points; ++i) keep[i] = excerpt.is_boundary(i);
  std::vector<bool> keep_too = keep;
  keep_too.resize(old_points + step.new_points, false);
  if (!had.eliminate(keep, kMostCore) || !has.eliminate(keep_too, kMostCore)) {
    return {false, "too many parts are taken at once"};
  }
  for (std::uint32_t i = 0; i < old_points; ++i) {
    for (std::uint32_t j = i + 1; j < old_points; ++j) {
      if (!keep[i] || !keep[j]) continue;
      const auto before_it = had.conductance(i, j);
      const auto after_it = has.conductance(i, j);
      if (before_it == after_it) continue;
      return {false, "conductance between " + name_of(excerpt.point(i)) + " and " +
                         name_of(excerpt.point(j)) + ": off by " +
                         field.text(field.subtract(after_it, before_it)) + " S, compared with " +
                         field.text(before_it) + " S"};
    }
  }
  return {};
}

}  // namespace ohmfold::check

// What the steps beyond series and parallel do, and why they may.
#include <algorithm>
#include <cstdint>

#include "ohmfold/error.h"
#include "views/symmetry_words.h"
#include "views/wording.h"

namespace ohmfold::views {

Words Wording::made(const Step& step) const {
  std::vector<PartId> ids;
  for (std::uint32_t i = 0; i < step.adds.size(); ++i) ids.push_back({step.makes.index + i});
  return parts(ids, 6);
}

namespace {

// The points that the parts made join, without the new ones.
std::vector<PointId> corners(const Step& step, std::size_t points_of_file_and_before) {
  std::vector<PointId> points;
  for (const NewPart& part : step.adds) {
    for (const PointId point : {part.from, part.to}) {
      if (point.index < points_of_file_and_before) points.push_back(point);
    }
  }
  std::sort(points.begin(), points.end());
  points.erase(std::unique(points.begin(), points.end()), points.end());
  return points;
}

}  // namespace

Words Wording::rewriting(const Step& step) const {
  const Words taken = parts(step.takes);
  switch (step.rule) {
    case RuleName::equal_potentials:
      if (step.takes.empty()) return say("Make ", points(step.merges), " one point.");
      return say("Leave out ", taken, ": no voltage across ",
                 step.takes.size() == 1 ? "it." : "them.");
    case RuleName::delta_star:
      return say("Turn the delta ", taken, " into the star ", made(step), ".");
    case RuleName::star_delta:
      return say("Turn the star ", taken, " into the delta ", made(step), ".");
    case RuleName::node_elimination:
      return say("Turn the star ", taken, " into the mesh ", made(step), ".");
    case RuleName::gap:
    case RuleName::ideal_wire:
    case RuleName::shorted:
    case RuleName::dead_end:
    case RuleName::series:
    case RuleName::parallel:
    case RuleName::batteries:
      break;
  }
  throw InternalError("a step that rewrites nothing");
}

Words Wording::rewriting_reason(const Step& step) const {
  const Words taken = parts(step.takes);
  if (step.rule == RuleName::equal_potentials) return equal_potentials_reason(step);
  if (step.rule == RuleName::delta_star) {
    const PointId middle = step.adds.front().to;
    const Words ends = points(corners(step, middle.index));
    return say(taken, " form a triangle between ", ends, ". Three arms that meet at a new point, ",
               point(middle), ", look the same from ", ends,
               ". Each arm is the product of the two sides at its corner, divided by the sum of "
               "the three sides.");
  }
  const Words ends = points(corners(step, SIZE_MAX));
  const bool three = step.rule == RuleName::star_delta;
  return say("Only ", taken, " meet at point ", point(step.first), ". ",
             three ? "Three sides" : "Parts", " between each two of ", ends,
             " look the same from there. Each of them is ",
             three ? "the sum of the products of each two arms, divided by the arm that it does "
                     "not touch."
                   : "the product of the two arms that it replaces, times the sum of the "
                     "reciprocals of all arms.");
}

Words Wording::equal_potentials_reason(const Step& step) const {
  Words words = potential_words(*this, step.why);
  words.add(" ");
  if (step.takes.empty()) {
    words.add(
        say("No current would run through a wire between them, so they are joined and called ",
            point(*std::min_element(step.merges.begin(), step.merges.end())), "."));
  } else {
    const bool one = step.takes.size() == 1;
    words.add(say("So ", parts(step.takes), one ? " carries" : " carry", " no current."));
  }
  const PartId source = reduction_.source;
  const Network& start = reduction_.start;
  if (start.kind(source) == ElementKind::port) {
    words.add(say(" This holds only as seen from ", point(start.from(source)), " and ",
                  point(start.to(source)), "."));
  } else {
    words.add(say(" This holds only as seen by ", described(source), "."));
  }
  return words;
}

}  // namespace ohmfold::views

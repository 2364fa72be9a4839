// What a step that makes several parts must look like.
#include "check/step_replacement.h"

namespace ohmfold::check {
namespace {

StepFinding failed(std::string detail) {
  return {false, std::move(detail)};
}

}  // namespace

StepFinding check_several(const Network& before, const Excerpt& excerpt, const Step& step) {
  if (!step.merges.empty()) return failed("points are merged where several parts are made");
  for (const Excerpt::Part& part : excerpt.parts()) {
    if (part.kind == ElementKind::resistor) continue;
    return failed(name_of(part.id) + " is no resistor, and several parts take its place");
  }
  for (const NewPart& part : step.adds) {
    if (part.kind != ElementKind::resistor) return failed("a part made is no resistor");
    for (const PointId end : {part.from, part.to}) {
      const bool is_new =
          end.index >= before.point_count() && end.index < before.point_count() + step.new_points;
      if (is_new || excerpt.number_of(end)) continue;
      return failed(name_of(end) + " is an end of a part made, but of no part taken");
    }
  }
  return {};
}

}  // namespace ohmfold::check

// What a step that rests on equal potentials must look like.
#include "check/step_potentials.h"

namespace ohmfold::check {
namespace {

StepFinding failed(std::string detail) {
  return {false, std::move(detail)};
}

}  // namespace

PartId only_source(const Network& network) {
  PartId source;
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    const PartId part{i};
    if (!network.is_alive(part) || network.kind(part) == ElementKind::resistor) continue;
    if (!is_source(network.kind(part)) || source.exists()) return {};
    source = part;
  }
  return source;
}

StepFinding check_joined(const Network& before, const Step& step) {
  StepFinding finding;
  for (const PointId point : step.merges) {
    const bool in_use = point.index < before.point_count() && before.representative(point) == point;
    if (!in_use) return failed(name_of(point) + " is merged, but not in use");
    if (point != step.merges.front()) finding.equal.emplace_back(step.merges.front(), point);
  }
  return finding;
}

StepFinding check_equal(const Network& before, const Excerpt& excerpt, const Step& step,
                        const std::optional<NewPart>& made) {
  if (made || !step.adds.empty()) return failed("a part is made where potentials are equal");
  const PartId source = only_source(before);
  if (!source.exists()) return failed("there is not one source alone that drives resistors");
  StepFinding finding = check_joined(before, step);
  for (const Excerpt::Part& part : excerpt.parts()) {
    if (part.id == source) return failed(name_of(source) + " is the source, and taken");
    finding.equal.emplace_back(excerpt.point(part.from), excerpt.point(part.to));
  }
  DisjointSets joined(before.point_count());
  for (std::uint32_t i = 0; i < before.part_count(); ++i) {
    const PartId part{i};
    if (!before.is_alive(part) || part == source) continue;
    joined.join(before.from(part).index, before.to(part).index);
  }
  const std::uint32_t terminal = before.from(source).index;
  const bool closes = joined.joined(terminal, before.to(source).index);
  for (const auto& [first, second] : finding.equal) {
    if (closes && joined.joined(first.index, terminal) && joined.joined(second.index, terminal)) {
      continue;
    }
    return failed("the source does not drive " + name_of(first) + " and " + name_of(second));
  }
  return finding;
}

}  // namespace ohmfold::check

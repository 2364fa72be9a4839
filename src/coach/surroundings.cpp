// What surrounds a part whose current, voltage or power is claimed.
#include "coach/surroundings.h"

#include <algorithm>
#include <utility>

namespace ohmfold {
namespace {

constexpr std::size_t kMostResistors = 60;
constexpr std::size_t kMostGroups = 6;

}  // namespace

Number Group::sum() const {
  Number total(0);
  for (const Member& member : members) total += member.resistance;
  return total;
}

std::vector<PartId> Group::others() const {
  std::vector<PartId> parts;
  for (std::size_t i = 0; i < members.size(); ++i) {
    if (i == self) continue;
    if (members[i].part.exists()) {
      parts.push_back(members[i].part);
    } else {
      parts.insert(parts.end(), members[i].leaves.begin(), members[i].leaves.end());
    }
  }
  return parts;
}

Surroundings::Surroundings(const CaseBook& book, PartId part) : book_(book), part_(part) {
  const Network& start = book.networks.original();
  for (std::uint32_t i = 0; i < book.problem().parts.size(); ++i) {
    const PartId one{i};
    if (start.kind(one) == ElementKind::battery) {
      battery_ = start.batteries().size() == 1 ? one : PartId{};
    }
    const bool carries =
        start.kind(one) == ElementKind::resistor && book.networks.left_out(one).empty();
    if (carries && resistors_.size() < kMostResistors) resistors_.push_back(one);
  }
  find_own_groups();
  if (groups_.empty() && book.is_of_file(part)) find_groups_of_solution();
}

std::optional<Number> Surroundings::size(Claimed claimed, PartId part) const {
  const Target target{claimed, part, {}, {}};
  if (const OwnValue* own = book_.claimed(target)) return abs(own->number);
  const Truth truth = book_.truth(target);
  if (!truth.value) return std::nullopt;
  return abs(truth.value->number);
}

std::optional<Number> Surroundings::resistance(PartId part) const {
  const auto own = book_.own_resistance(part);
  const std::optional<Number> value = own ? own->number : size(Claimed::value, part);
  return value && value->is_positive() ? value : std::nullopt;
}

std::optional<Number> Surroundings::emf() const {
  if (!battery_.exists()) return std::nullopt;
  return book_.networks.original().battery(battery_).emf.number;
}

std::optional<Number> Surroundings::internal() const {
  if (!battery_.exists()) return std::nullopt;
  return book_.networks.original().battery(battery_).internal.number;
}

void Surroundings::find_own_groups() {
  PartId inner = part_;
  for (PartId outer = book_.container(inner); outer.exists() && groups_.size() < kMostGroups;
       inner = std::exchange(outer, book_.container(outer))) {
    const Making* making = book_.making(outer);
    const auto current = size(Claimed::current, outer);
    const auto voltage = size(Claimed::voltage, outer);
    if (making == nullptr || !making->how || !current || !voltage) continue;
    Group group;
    group.how = *making->how;
    group.current = *current;
    group.voltage = *voltage;
    group.is_part_itself = inner == part_;
    for (const PartId operand : making->operands) {
      const auto r = resistance(operand);
      const auto i = size(Claimed::current, operand);
      const auto v = size(Claimed::voltage, operand);
      if (!r || !i || !v) break;
      if (operand == inner) group.self = group.members.size();
      group.members.push_back({operand, book_.leaves_of({operand}), *r, *i, *v});
    }
    if (group.members.size() == making->operands.size()) groups_.push_back(std::move(group));
  }
}

// Up along the steps of the solution, current and voltage of each block from those of its parts.
void Surroundings::find_groups_of_solution() {
  const Reduction& main = book_.solved().main;
  // A case that contradicts itself, for one, was not reduced.
  if (main.end.part_count() < main.start.part_count()) return;
  std::vector<std::optional<Group::Member>> members(main.end.part_count());
  for (const PartId part : resistors_) {
    const auto r = resistance(part);
    const auto i = size(Claimed::current, part);
    const auto v = size(Claimed::voltage, part);
    if (r && i && v) members[part.index] = Group::Member{part, {part}, *r, *i, *v};
  }
  PartId holder = part_;
  for (std::size_t k = 0; k < main.steps.size() && groups_.size() < kMostGroups; ++k) {
    const Step step = main.steps[k];
    const bool series = step.rule == RuleName::series;
    if (!series && step.rule != RuleName::parallel) continue;
    Group group;
    group.how = series ? Joining::series : Joining::parallel;
    bool holds = false;
    std::vector<PartId> leaves;
    for (const PartId taken : step.takes) {
      if (!members[taken.index]) break;
      if (taken == holder) {
        group.self = group.members.size();
        holds = true;
      }
      const Group::Member& member = *members[taken.index];
      leaves.insert(leaves.end(), member.leaves.begin(), member.leaves.end());
      group.members.push_back(member);
    }
    if (group.members.size() != step.takes.size()) continue;
    const Number whole = main.end.knows_resistance(step.makes)
                             ? main.end.resistance(step.makes).lowest_terms()
                             : Number(0);
    if (whole.is_zero()) continue;
    const Group::Member& first = group.members.front();
    group.current = series ? first.current : first.voltage / whole;
    group.voltage = series ? first.current * whole : first.voltage;
    members[step.makes.index] =
        Group::Member{{}, std::move(leaves), whole, group.current, group.voltage};
    if (!holds) continue;
    group.is_part_itself = holder == part_;
    holder = step.makes;
    groups_.push_back(std::move(group));
  }
}

}  // namespace ohmfold

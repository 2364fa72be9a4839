// All that is known of one case while a work on it is judged.
#include "coach/case_book.h"

#include <algorithm>
#include <utility>

#include "circuit/set_case.h"
#include "solve/answers.h"
#include "solve/reduce.h"

namespace ohmfold {
namespace {

// In larger circuits nobody asks what a part is made of, and telling it costs the square of them.
constexpr std::size_t kMostLeaves = 2'000;
// So many wrong numbers of a case are compared with solutions of other networks.
constexpr int kMostSearches = 100;

Truth size_of(const std::map<PartId, Number>& sizes, PartId part, Unit unit) {
  const auto found = sizes.find(part);
  if (found == sizes.end()) return Undetermined::beyond_method;
  return Quantity(found->second, unit);
}

}  // namespace

CaseBook::CaseBook(const Exercise& exercise, std::size_t case_index)
    : networks(exercise.trace.cases[case_index]), exercise_(&exercise), case_index_(case_index) {
  for (std::uint32_t i = 0; i < problem().parts.size(); ++i) {
    parts_.emplace(problem().parts[i].name, PartId{i});
  }
  for (std::uint32_t i = 0; i < problem().points.size(); ++i) {
    points_.emplace(problem().points[i], PointId{i});
  }
}

std::optional<PartId> CaseBook::part_named(const std::string& name) const {
  const auto found = parts_.find(name);
  if (found == parts_.end()) return std::nullopt;
  return found->second;
}

std::optional<PointId> CaseBook::point_named(const std::string& name) const {
  const auto found = points_.find(name);
  if (found == points_.end()) return std::nullopt;
  return found->second;
}

std::vector<std::string_view> CaseBook::part_names() const {
  std::vector<std::string_view> names;
  for (const Part& part : problem().parts) names.push_back(part.name);
  for (const auto& [part, making] : made_) {
    if (!making.name.empty()) names.push_back(making.name);
  }
  return names;
}

std::vector<std::string_view> CaseBook::point_names() const {
  return {problem().points.begin(), problem().points.end()};
}

std::vector<std::string> CaseBook::names_by_part() const {
  std::vector<std::string> names(networks.part_count());
  for (std::uint32_t i = 0; i < problem().parts.size(); ++i) names[i] = problem().parts[i].name;
  for (const auto& [part, making] : made_) {
    if (!making.name.empty()) {
      names.at(part.index) = making.name;
      continue;
    }
    // A combination within a claim has no name: it is told by what it is made of.
    std::string& name = names.at(part.index);
    for (const PartId operand : making.operands) {
      if (!name.empty()) name += making.how == Joining::parallel ? " || " : " + ";
      name += names.at(operand.index);
    }
    name.insert(0, 1, '(').append(1, ')');
  }
  return names;
}

std::vector<std::string> CaseBook::names_by_point() const {
  std::vector<std::string> names = problem().points;
  names.resize(std::max(names.size(), networks.own().point_count()));
  for (const auto& [name, point] : points_) names.at(point.index) = name;
  for (std::size_t i = problem().points.size(); i < names.size(); ++i) {
    if (names[i].empty()) names[i] = "N" + std::to_string(i - problem().points.size() + 1);
  }
  return names;
}

void CaseBook::name_point(PointId point, const std::string& name) {
  points_.emplace(name, point);
}

void CaseBook::add_made(PartId part, Making making) {
  for (const PartId operand : making.operands) inside_[operand] = part;
  if (!making.name.empty()) parts_.emplace(making.name, part);
  made_[part] = std::move(making);
}

const Making* CaseBook::making(PartId part) const {
  const auto found = made_.find(part);
  return found == made_.end() ? nullptr : &found->second;
}

PartId CaseBook::container(PartId part) const {
  const auto found = inside_.find(part);
  return found == inside_.end() ? PartId{} : found->second;
}

std::vector<PartId> CaseBook::leaves_of(const std::vector<PartId>& parts) const {
  std::vector<PartId> leaves;
  if (problem().parts.size() > kMostLeaves) return leaves;
  for (const PartId part : parts) {
    if (const Making* made = making(part)) {
      leaves.insert(leaves.end(), made->leaves.begin(), made->leaves.end());
    } else {
      leaves.push_back(part);
    }
  }
  std::sort(leaves.begin(), leaves.end());
  leaves.erase(std::unique(leaves.begin(), leaves.end()), leaves.end());
  return leaves;
}

namespace {

struct AsTarget {
  Target operator()(const CurrentThrough& q) const { return {Claimed::current, q.part, {}, {}}; }
  Target operator()(const VoltageAcross& q) const { return {Claimed::voltage, q.part, {}, {}}; }
  Target operator()(const PowerIn& q) const { return {Claimed::power, q.part, {}, {}}; }
  Target operator()(const ValueOf& q) const { return {Claimed::value, q.part, {}, {}}; }
  Target operator()(const PotentialAt& q) const { return {Claimed::potential, {}, q.point, {}}; }
  Target operator()(const VoltageBetween& q) const {
    return {Claimed::voltage_between, {}, q.from, q.to};
  }
  Target operator()(const ResistanceBetween& q) const {
    return {Claimed::resistance_between, {}, q.from, q.to};
  }
  Target operator()(const ResistanceSeenBy& q) const {
    return {Claimed::resistance_seen_by, q.battery, {}, {}};
  }
  Target operator()(const TheveninBetween& q) const {
    return {Claimed::voltage_between, {}, q.from, q.to};
  }
};

// An irrational value is compared by a rational that rounds alike.
constexpr int kFiguresOfIrrational = 30;

}  // namespace

Target target_of(const Question& question) {
  return std::visit(AsTarget{}, question);
}

std::optional<Truth> CaseBook::answered(const Target& target) const {
  for (const Answer& answer : solved().answers) {
    if (target_of(answer.question) != target) continue;
    if (!answer.irrational) return answer.value;
    const Number near = rounding_like(*answer.irrational, kFiguresOfIrrational);
    return Truth(Quantity(near, unit_of(answer.question, problem())));
  }
  return behind_asked_points(target);
}

// Where two points are asked about as a battery with a resistance, the resistance between them is
// that one.
std::optional<Truth> CaseBook::behind_asked_points(const Target& target) const {
  if (target.claimed != Claimed::resistance_between) return std::nullopt;
  for (const Answer& answer : solved().answers) {
    const auto* asked = std::get_if<TheveninBetween>(&answer.question);
    if (asked == nullptr || !answer.thevenin) continue;
    if (std::minmax(asked->from, asked->to) == std::minmax(target.first, target.second)) {
      return answer.thevenin->resistance;
    }
  }
  return std::nullopt;
}

Truth CaseBook::truth(const Target& target) const {
  const CaseTrace& trace = solved();
  if (target.part.exists() && !is_of_file(target.part)) return made_truth(target);
  if (auto found = answered(target)) return *found;
  const auto of_branch = [&](auto member) -> Truth {
    if (target.part.index >= trace.branches.size()) return Undetermined::too_long;
    return trace.branches[target.part.index].*member;
  };
  const auto at = [&](PointId point) -> Truth {
    if (point.index < trace.nodes.size()) return trace.nodes[point.index].potential;
    const auto middle = potential(point);
    return middle ? Truth(Quantity(*middle, Unit::volt)) : Truth(Undetermined::beyond_method);
  };
  switch (target.claimed) {
    case Claimed::current:
      return of_branch(&BranchResult::current);
    case Claimed::voltage:
      return of_branch(&BranchResult::voltage);
    case Claimed::power:
      return of_branch(&BranchResult::power);
    case Claimed::potential:
      return at(target.first);
    case Claimed::voltage_between: {
      const Truth first = at(target.first);
      const Truth second = at(target.second);
      if (!first.value) return first;
      if (!second.value) return second;
      return Quantity(first.value->number - second.value->number, Unit::volt);
    }
    case Claimed::value:
    case Claimed::resistance_between:
    case Claimed::resistance_seen_by:
    case Claimed::whole_resistance:
      return resistance_truth(target);
  }
  return Undetermined::too_long;
}

Truth CaseBook::made_truth(const Target& target) const {
  const Truth current = size_of(made_current_, target.part, Unit::ampere);
  const Truth voltage = size_of(made_voltage_, target.part, Unit::volt);
  switch (target.claimed) {
    case Claimed::value: {
      const auto value = networks.resistance(target.part);
      return value ? Truth(Quantity(*value, Unit::ohm)) : Truth(Undetermined::beyond_method);
    }
    case Claimed::current:
      return current;
    case Claimed::voltage:
      return voltage;
    case Claimed::power:
      if (!current.value || !voltage.value) return Undetermined::beyond_method;
      return Quantity(current.value->number * voltage.value->number, Unit::watt);
    case Claimed::voltage_between:
    case Claimed::potential:
    case Claimed::resistance_between:
    case Claimed::resistance_seen_by:
    case Claimed::whole_resistance:
      break;
  }
  return Undetermined::beyond_method;
}

// Resistances between points are found by a reduction of their own, each once.
Truth CaseBook::resistance_truth(const Target& target) const {
  const auto found = resistances_.find(target);
  if (found != resistances_.end()) return found->second;
  const auto find = [&]() -> Truth {
    switch (target.claimed) {
      case Claimed::value: {
        const Unit unit = unit_of_value(problem().part(target.part).kind);
        for (const Setting& setting : setting().settings) {
          if (setting.part != target.part) continue;
          if (setting.kind != SettingKind::value) return Undetermined::taken_out;
          return Quantity(setting.value, unit);
        }
        return Quantity(problem().part(target.part).value, unit);
      }
      case Claimed::whole_resistance:
        if (solved().equivalent) return *solved().equivalent;
        return Undetermined::beyond_method;
      case Claimed::resistance_between:
        // The middle of a star is no point of the circuit in the file.
        if (std::max(target.first, target.second).index >= problem().points.size()) {
          return Undetermined::beyond_method;
        }
        return seen_resistance(reduce(
            resistors_between(problem(), setting(), target.first, target.second), SolveOptions{}));
      default:
        return seen_resistance(reduce(seen_by(problem(), setting(), target.part), SolveOptions{}));
    }
  };
  return resistances_.emplace(target, find()).first->second;
}

std::optional<Number> CaseBook::potential(PointId point) const {
  const auto added = new_potentials_.find(point);
  if (added != new_potentials_.end()) return added->second;
  if (points_moved_ || point.index >= solved().nodes.size()) return std::nullopt;
  return number_of(solved().nodes[point.index].potential);
}

void CaseBook::note_true_flow(PartId made, Joining how, const std::vector<PartId>& operands) {
  const std::optional<Number> resistance = networks.resistance(made);
  const PartId first = operands.front();
  const bool series = how == Joining::series;
  const auto carried =
      number_of(truth({series ? Claimed::current : Claimed::voltage, first, PointId{}, PointId{}}));
  if (!resistance || !carried) return;
  const Number size = abs(*carried);
  made_current_[made] = series ? size : size / *resistance;
  made_voltage_[made] = series ? size * *resistance : size;
}

void CaseBook::note_true_arms(PartId first, std::size_t count) {
  const Network& network = networks.truth();
  // The middle of a star has the potential that lets no current stay there.
  Number sum(0);
  Number conductance(0);
  PointId middle;
  for (std::uint32_t i = 0; i < count; ++i) {
    const PartId arm{first.index + i};
    const auto at = potential(network.from(arm));
    if (potential(network.to(arm)) || !at) continue;
    middle = network.to(arm);
    const Number one = Number(1) / network.resistance(arm).lowest_terms();
    sum += *at * one;
    conductance += one;
  }
  if (middle.exists() && middle.index >= problem().points.size() && !conductance.is_zero()) {
    new_potentials_[middle] = sum / conductance;
  }
  for (std::uint32_t i = 0; i < count; ++i) {
    const PartId arm{first.index + i};
    const auto from = potential(network.from(arm));
    const auto to = potential(network.to(arm));
    if (!from || !to) continue;
    made_voltage_[arm] = abs(*from - *to);
    made_current_[arm] = made_voltage_[arm] / network.resistance(arm).lowest_terms();
  }
}

std::optional<OwnValue> CaseBook::own_resistance(PartId part) const {
  const auto found = own_resistance_.find(part);
  if (found != own_resistance_.end()) return found->second;
  if (!is_of_file(part) || problem().part(part).unknown) return std::nullopt;
  const Network& start = networks.original();
  if (start.kind(part) != ElementKind::resistor) return std::nullopt;
  const Number given = start.resistance(part).lowest_terms();
  return OwnValue{given, Range::of(given), {}};
}

void CaseBook::set_own_resistance(PartId part, OwnValue value) {
  own_resistance_[part] = std::move(value);
}

const OwnValue* CaseBook::claimed(const Target& target) const {
  const auto found = claimed_.find(target);
  return found == claimed_.end() ? nullptr : &found->second;
}

void CaseBook::set_claimed(const Target& target, OwnValue value) {
  claimed_[target] = std::move(value);
}

bool CaseBook::may_search() const {
  return searches_++ < kMostSearches;
}

bool CaseBook::rests_on_wrong(const std::vector<std::size_t>& claims) const {
  return std::any_of(claims.begin(), claims.end(),
                     [&](std::size_t claim) { return !quality(claim).is_right; });
}

Quality CaseBook::quality(std::size_t claim) const {
  const auto found = quality_.find(claim);
  return found == quality_.end() ? Quality{} : found->second;
}

}  // namespace ohmfold

// Works with a wrong resistance of the whole network: that of another network.
#include "coach/error_scene.h"

namespace ohmfold::test {
namespace {

using enum KnownError;

// The resistance that the battery X0 feeds; nothing where there is no path.
std::optional<Number> whole_of(const Problem& problem) {
  const Exercise exercise = prepare(problem);
  const CaseTrace& solved = exercise.trace.cases.front();
  if (solved.contradiction || !solved.equivalent || !solved.equivalent->value) return std::nullopt;
  return solved.equivalent->value->number;
}

// "equivalent resistance" of the problem, given as that of another.
std::optional<ErrorWork> taken_for(const Problem& problem, const Problem& other) {
  const auto right = whole_of(problem);
  const auto wrong = whole_of(other);
  if (!right || !wrong || *right == *wrong || wrong->is_zero()) return std::nullopt;
  return ErrorWork{prepare(problem),
                   "equivalent resistance = " + exactly_written(*wrong) + " ohm\n", "",
                   std::nullopt, std::nullopt};
}

Part ideal(PartKind kind, const std::string& name, PointId from, PointId to) {
  Part part;
  part.name = name;
  part.kind = kind;
  part.from = from;
  part.to = to;
  return part;
}

Problem random_problem(RandomCircuits& random) {
  return random.series_parallel(3 + random.below(5));
}

std::size_t any_resistor(const Problem& problem, RandomCircuits& random) {
  return 1 + random.below(problem.parts.size() - 1);
}

PointId any_point(const Problem& problem, RandomCircuits& random) {
  return PointId{static_cast<std::uint32_t>(random.below(problem.points.size()))};
}

void set(Problem& problem, std::size_t part, SettingKind kind) {
  problem.cases.front().settings.push_back(
      {PartId{static_cast<std::uint32_t>(part)}, kind, Number(0)});
}

// A part left out, or taken for a wire.
std::optional<ErrorWork> make_part_otherwise(SettingKind kind, RandomCircuits& random) {
  const Problem problem = random_problem(random);
  Problem other = problem;
  set(other, any_resistor(problem, random), kind);
  return taken_for(problem, other);
}

// A wire past a resistor is not seen.
std::optional<ErrorWork> make_shorted_counted(RandomCircuits& random) {
  const Problem other = random_problem(random);
  Problem problem = other;
  const Part& past = other.parts[any_resistor(other, random)];
  problem.parts.push_back(ideal(PartKind::wire, "W", past.from, past.to));
  return taken_for(problem, other);
}

// A part that hangs from one point.
std::optional<ErrorWork> make_dead_end_counted(bool beside, RandomCircuits& random) {
  Problem problem = random_problem(random);
  const auto whole = whole_of(problem);
  const PointId from = any_point(problem, random);
  const PointId end{static_cast<std::uint32_t>(problem.points.size())};
  problem.points.emplace_back("Loose");
  Part part = ideal(PartKind::resistor, "D", from, end);
  part.value = random.resistance();
  problem.parts.push_back(part);
  const Number wrong = beside ? 1 / (1 / *whole + 1 / part.value) : *whole + part.value;
  return ErrorWork{prepare(problem), "equivalent resistance = " + exactly_written(wrong) + " ohm\n",
                   "", std::nullopt, std::nullopt};
}

// A switch between two points that no resistor joins, open or closed, is taken for closed or open.
std::optional<ErrorWork> make_switch(bool is_open, RandomCircuits& random) {
  Problem problem = random_problem(random);
  const PointId from = any_point(problem, random);
  const PointId to = any_point(problem, random);
  const bool joined = std::any_of(
      problem.parts.begin(), problem.parts.end(),
      [&](const Part& part) { return std::minmax(part.from, part.to) == std::minmax(from, to); });
  if (from == to || joined) return std::nullopt;
  problem.parts.push_back(ideal(PartKind::knife_switch, "S", from, to));
  Problem other = problem;
  const std::size_t part = problem.parts.size() - 1;
  set(problem, part, is_open ? SettingKind::open : SettingKind::closed);
  set(other, part, is_open ? SettingKind::closed : SettingKind::open);
  return taken_for(problem, other);
}

// An ammeter before a resistor is taken for a gap, a voltmeter beside one for a wire.
std::optional<ErrorWork> make_meter(bool ammeter, RandomCircuits& random) {
  Problem problem = random_problem(random);
  const std::size_t at = any_resistor(problem, random);
  if (ammeter) {
    const PointId middle{static_cast<std::uint32_t>(problem.points.size())};
    problem.points.emplace_back("Meter");
    problem.parts.push_back(ideal(PartKind::ammeter, "M", problem.parts[at].from, middle));
    problem.parts[at].from = middle;
  } else {
    problem.parts.push_back(
        ideal(PartKind::voltmeter, "M", problem.parts[at].from, problem.parts[at].to));
  }
  Problem other = problem;
  set(other, problem.parts.size() - 1, ammeter ? SettingKind::removed : SettingKind::shorted);
  return taken_for(problem, other);
}

std::optional<ErrorWork> make_other_points(RandomCircuits& random) {
  Problem problem = random_problem(random);
  problem.parts.front().internal = 1;
  const std::string& first = problem.points[any_point(problem, random).index];
  const std::string& second = problem.points[any_point(problem, random).index];
  if (first == second) return std::nullopt;
  Problem asked = problem;
  asked.questions = {ResistanceBetween{any_point(problem, random), any_point(problem, random)}};
  const auto& question = std::get<ResistanceBetween>(asked.questions.front());
  if (question.from == question.to) return std::nullopt;
  Problem other = problem;
  for (std::uint32_t i = 0; i < problem.points.size(); ++i) {
    if (problem.points[i] == first) other.parts.front().from = PointId{i};
    if (problem.points[i] == second) other.parts.front().to = PointId{i};
  }
  const auto wrong = whole_of(other);
  const Exercise exercise = prepare(asked);
  const Reading& right = exercise.trace.cases.front().answers.front().value;
  if (!wrong || !right.value || right.value->number == *wrong) return std::nullopt;
  return ErrorWork{
      exercise,
      to_string(asked.questions.front(), asked) + " = " + exactly_written(*wrong) + " ohm\n", "",
      std::nullopt, std::nullopt};
}

}  // namespace

std::vector<ErrorRow> whole_network_rows() {
  const auto otherwise = [](SettingKind kind) {
    return [kind](RandomCircuits& random) { return make_part_otherwise(kind, random); };
  };
  const auto with = [](auto make, bool which) {
    return [make, which](RandomCircuits& random) { return make(which, random); };
  };
  return {{part_forgotten, otherwise(SettingKind::removed)},
          {part_taken_for_wire, otherwise(SettingKind::shorted)},
          {shorted_part_counted, make_shorted_counted},
          {dead_end_counted, with(make_dead_end_counted, false)},
          {dead_end_counted, with(make_dead_end_counted, true)},
          {gap_taken_for_wire, with(make_switch, true)},
          {switch_taken_for_gap, with(make_switch, false)},
          {meter_taken_for_other, with(make_meter, true)},
          {meter_taken_for_other, with(make_meter, false)},
          {other_two_points, make_other_points}};
}

}  // namespace ohmfold::test

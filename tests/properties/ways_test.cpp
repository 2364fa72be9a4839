// What holds of every way beyond series and parallel: the same answers, steps that pass the checks,
// and checks that catch a changed one.
#include <gtest/gtest.h>

#include <array>

#include "check/step.h"
#include "ohmfold/solve.h"
#include "rounds.h"
#include "support/random_network.h"

namespace ohmfold::test {
namespace {

using support::Multigraph;
using support::RandomCircuits;

constexpr std::array kWays = {Method::automatic, Method::equal_potentials, Method::delta_star,
                              Method::node_voltage};

// One battery and enough resistors that most of them are bridges; every second one has equal
// values, so that symmetries and balances occur.
Problem entangled(RandomCircuits& random, std::uint64_t round) {
  Multigraph wanted;
  wanted.points = 4 + random.below(5);
  wanted.resistors = wanted.points + 2 + random.below(6);
  wanted.internal = Multigraph::Internal::some;
  wanted.connected = true;
  Problem problem = random.multigraph(wanted);
  if (round % 2 > 0) return problem;
  for (Part& part : problem.parts) {
    if (part.kind == PartKind::resistor) part.value = Number(1);
  }
  return problem;
}

Trace solved(const Problem& problem, Method method) {
  SolveOptions options;
  options.method = method;
  return solve(problem, options);
}

// solve() throws where a step or a law fails its check.
TEST(Ways, GiveTheSameCurrentsVoltagesAndResistances) {
  RandomCircuits random(30'301);
  std::size_t bridges = 0, by_stars = 0, by_equals = 0;
  for (std::uint64_t i = 0; i < rounds(1'200); ++i) {
    const Problem problem = entangled(random, i);
    SCOPED_TRACE(i);
    const Trace first = solved(problem, Method::node_voltage);
    const CaseTrace& expected = first.cases.front();
    if (expected.kind != Kind::bridge) continue;
    ++bridges;
    for (const Method method : kWays) {
      Trace trace;
      ASSERT_NO_THROW(trace = solved(problem, method));
      const CaseTrace& other = trace.cases.front();
      EXPECT_EQ(other.kind, Kind::bridge);
      EXPECT_EQ(other.equivalent->value, expected.equivalent->value);
      for (std::size_t k = 0; k < problem.parts.size(); ++k) {
        EXPECT_EQ(other.branches[k].current.value, expected.branches[k].current.value);
        EXPECT_EQ(other.branches[k].voltage.value, expected.branches[k].voltage.value);
      }
      by_stars += other.main.choice.method == Method::delta_star ? 1 : 0;
      by_equals += other.main.choice.method == Method::equal_potentials ? 1 : 0;
      if (method != Method::delta_star) continue;
      EXPECT_EQ(other.main.stop, Stop::reduced);
    }
  }
  EXPECT_GT(bridges, 400U);
  EXPECT_GT(by_stars, 300U);
  EXPECT_GT(by_equals, 20U);
}

TEST(Ways, GiveTheSameResistanceBetweenAnyTwoPoints) {
  RandomCircuits random(30'302);
  for (std::uint64_t i = 0; i < rounds(400); ++i) {
    Problem problem = entangled(random, i);
    const auto last = static_cast<std::uint32_t>(problem.points.size() - 1);
    problem.questions = {ResistanceBetween{PointId{0}, PointId{last}}};
    const Trace first = solved(problem, Method::node_voltage);
    for (const Method method : kWays) {
      const Trace other = solved(problem, method);
      EXPECT_EQ(other.cases[0].answers[0].value.value, first.cases[0].answers[0].value.value) << i;
    }
  }
}

TEST(Ways, AreTheSameForPairsOfParts) {
  RandomCircuits random(30'303);
  for (std::uint64_t i = 0; i < rounds(300); ++i) {
    const Problem problem = entangled(random, i);
    SolveOptions pairs;
    pairs.pairs = true;
    const Trace two = solve(problem, pairs);
    const Trace all = solve(problem);
    EXPECT_EQ(two.cases[0].equivalent->value, all.cases[0].equivalent->value) << i;
  }
}

TEST(Ways, ThatStopAtSeriesAndParallelAnswerNothingOfABridge) {
  RandomCircuits random(30'304);
  for (std::uint64_t i = 0; i < rounds(300); ++i) {
    const Problem problem = entangled(random, i);
    const Trace trace = solved(problem, Method::series_parallel);
    const CaseTrace& one = trace.cases.front();
    const bool bridge = one.main.stop == Stop::bridge;
    EXPECT_EQ(bridge, one.kind == Kind::bridge);
    for (const Answer& answer : one.answers) {
      EXPECT_EQ(answer.value.value.has_value(), !bridge) << i;
      if (bridge) {
        EXPECT_EQ(answer.value.why, Undetermined::beyond_method);
      }
    }
  }
}

// The log again, with one value, one point or one part of one step changed.
class Changed {
 public:
  Changed(const Reduction& reduction, std::size_t at, RandomCircuits& random)
      : result_{reduction.start, reduction.start, {}, reduction.stop, {}, {}, {}, {}} {
    for (std::size_t i = 0; i < reduction.steps.size(); ++i) {
      const Step step = reduction.steps[i];
      Edit edit;
      edit.removes.assign(step.takes.begin(), step.takes.end());
      edit.merges.assign(step.merges.begin(), step.merges.end());
      edit.new_points = step.new_points;
      edit.adds.assign(step.adds.begin(), step.adds.end());
      edit.scope = step.scope;
      if (step.makes.exists() && step.adds.empty()) {
        edit.adds.push_back({step.first, step.second, reduction.end.resistance(step.makes)});
      }
      if (i == at) was_changed_ = change(edit, random);
      const PartId made = result_.end.commit(edit);
      result_.steps.append(step.rule, step.stage, {{}, step.first, step.second}, edit, made, {});
    }
  }

  [[nodiscard]] bool was_changed() const { return was_changed_; }
  [[nodiscard]] const Reduction& reduction() const { return result_; }

 private:
  static bool change(Edit& edit, RandomCircuits& random) {
    if (!edit.adds.empty()) {
      NewPart& part = edit.adds[random.below(edit.adds.size())];
      part.resistance = Ratio(part.resistance.lowest_terms() + random.resistance());
      return true;
    }
    return false;
  }

  Reduction result_;
  bool was_changed_ = false;
};

TEST(Ways, AreCaughtWhereOneValueIsChanged) {
  RandomCircuits random(30'305);
  std::size_t caught = 0, stars = 0;
  for (std::uint64_t i = 0; i < rounds(600); ++i) {
    const Problem problem = entangled(random, i);
    const Trace trace = solved(problem, Method::delta_star);
    const Reduction& main = trace.cases.front().main;
    if (main.steps.empty()) continue;
    const std::size_t at = random.below(main.steps.size());
    const Changed changed(main, at, random);
    if (!changed.was_changed()) continue;
    for (const auto arithmetic : {check::Arithmetic::exact, check::Arithmetic::modular}) {
      const std::vector<Check> checks = check_steps(changed.reduction(), 200, arithmetic);
      ASSERT_FALSE(checks.empty());
      EXPECT_FALSE(checks.back().holds) << i << ", step " << at + 1;
      EXPECT_EQ(checks.back().step, at + 1);
    }
    ++caught;
    stars += main.steps[at].adds.empty() ? 0 : 1;
  }
  EXPECT_GT(caught, 300U);
  EXPECT_GT(stars, 20U);
}

TEST(Ways, AreCaughtWhereAnyOtherTwoPointsAreJoined) {
  RandomCircuits random(30'306);
  std::size_t caught = 0;
  for (std::uint64_t i = 0; i < rounds(300); ++i) {
    const Problem problem = entangled(random, i);
    const Trace trace = solved(problem, Method::node_voltage);
    const CaseTrace& one = trace.cases.front();
    if (one.main.stop != Stop::bridge) continue;
    Reduction joined = one.main;
    const PartId part = joined.left[random.below(joined.left.size())];
    const auto& branch = one.branches;
    const PointId a = joined.end.from(part), b = joined.end.to(part);
    if (part.index >= branch.size() || branch[part.index].voltage.value->number.is_zero()) continue;
    Edit edit;
    edit.merges = {std::min(a, b), std::max(a, b)};
    edit.scope = Scope::as_seen_by_the_source;
    joined.end.commit(edit);
    joined.steps.append(RuleName::equal_potentials, 9, {}, edit, {}, {});
    for (const auto arithmetic : {check::Arithmetic::exact, check::Arithmetic::modular}) {
      EXPECT_FALSE(check_steps(joined, 200, arithmetic).back().holds) << i;
    }
    ++caught;
  }
  EXPECT_GT(caught, 50U);
}

}  // namespace
}  // namespace ohmfold::test

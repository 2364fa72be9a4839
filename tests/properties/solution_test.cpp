// What holds of every solution: the current law, an independent solution, and checks that can fail.
#include <gtest/gtest.h>

#include <algorithm>

#include "check/step.h"
#include "ohmfold/error.h"
#include "ohmfold/solve.h"
#include "reference.h"
#include "rounds.h"
#include "support/random_network.h"

namespace ohmfold::test {
namespace {

using support::Multigraph;
using support::RandomCircuits;

// Part counts and kinds that change from round to round.
Multigraph mixed(RandomCircuits& random) {
  Multigraph wanted;
  wanted.points = 2 + random.below(7);
  wanted.resistors = 1 + random.below(10);
  wanted.wires = random.below(4);
  wanted.open_switches = random.below(3);
  wanted.voltmeters = random.below(2);
  wanted.batteries = random.below(4);
  wanted.current_sources = random.below(6) == 0 ? 1 : 0;
  wanted.internal = random.below(2) == 0 ? Multigraph::Internal::all : Multigraph::Internal::some;
  return wanted;
}

// solve() throws where one of its exact checks fails: Kirchhoff's and Ohm's laws, the power
// balance, every step, and node-voltage analysis by another library.
TEST(Solution, OfAnyCircuitPassesEveryCheckOrIsAContradiction) {
  RandomCircuits random(20'101);
  std::size_t contradictions = 0, open_shares = 0, bridges = 0, several = 0;
  for (std::uint64_t i = 0; i < rounds(3'000); ++i) {
    const Problem problem = random.multigraph(mixed(random));
    SCOPED_TRACE(i);
    Trace trace;
    ASSERT_NO_THROW(trace = solve(problem)) << set_case(problem, problem.cases.front()).dump();
    const CaseTrace& result = trace.cases.front();
    contradictions += result.contradiction ? 1 : 0;
    bridges += result.kind == Kind::bridge ? 1 : 0;
    several += result.kind == Kind::several_sources ? 1 : 0;
    open_shares += static_cast<std::size_t>(
        std::count_if(result.branches.begin(), result.branches.end(),
                      [](const BranchResult& b) { return !b.current.value; }));
    if (result.contradiction) continue;
    for (const CheckLaw law : {CheckLaw::current, CheckLaw::power, CheckLaw::node_voltage}) {
      EXPECT_TRUE(std::any_of(result.checks.begin(), result.checks.end(),
                              [&](const Check& c) { return c.law == law; }));
    }
  }
  // The rounds reach what they are meant to reach.
  EXPECT_GT(contradictions, 20U);
  EXPECT_GT(open_shares, 20U);
  EXPECT_GT(bridges, 10U);
  EXPECT_GT(several, 100U);
}

TEST(Solution, EqualsTheDenseNodeVoltageSolutionInEveryBranch) {
  RandomCircuits random(20'102);
  for (std::uint64_t i = 0; i < rounds(2'000); ++i) {
    Multigraph wanted;
    wanted.points = 2 + random.below(8);
    wanted.resistors = wanted.points + random.below(8);
    wanted.batteries = 1 + random.below(3);
    wanted.internal = Multigraph::Internal::all;
    wanted.connected = true;
    const Problem problem = random.multigraph(wanted);
    const std::vector<Number> expected = dense_currents(problem);
    const Trace trace = solve(problem);
    for (const BranchResult& branch : trace.cases.front().branches) {
      ASSERT_TRUE(branch.current.value) << i;
      EXPECT_EQ(branch.current.value->number, expected[branch.part.index]) << i;
    }
  }
}

TEST(Solution, OfASeriesParallelNetworkReducesToOnePart) {
  RandomCircuits random(20'103);
  for (std::uint64_t i = 0; i < rounds(2'000); ++i) {
    const Problem problem = random.series_parallel(1 + random.below(30));
    const Trace trace = solve(problem);
    EXPECT_EQ(trace.cases.front().kind, Kind::series_parallel) << i;
    EXPECT_EQ(trace.cases.front().main.stop, Stop::reduced) << i;
  }
}

TEST(Solution, OnDemandAlongOnePathEqualsTheCompleteOne) {
  RandomCircuits random(20'104);
  SolveOptions large;
  large.most_bits = 0;  // as if every network were too large
  for (std::uint64_t i = 0; i < rounds(500); ++i) {
    Problem problem = random.series_parallel(2 + random.below(25));
    const Trace complete = solve(problem);
    for (std::uint32_t k = 0; k < problem.parts.size(); ++k) {
      problem.questions.emplace_back(CurrentThrough{PartId{k}});
      problem.questions.emplace_back(PowerIn{PartId{k}});
    }
    const Trace asked = solve(problem, large);
    ASSERT_FALSE(asked.cases.front().complete);
    const auto& answers = asked.cases.front().answers;
    for (std::uint32_t k = 0; k < problem.parts.size(); ++k) {
      const BranchResult& branch = complete.cases.front().branches[k];
      EXPECT_EQ(answers[2 * k].value.value, branch.current.value) << i;
      EXPECT_EQ(answers[2 * k + 1].value.value, branch.power.value) << i;
    }
    const auto& checks = asked.cases.front().checks;
    EXPECT_TRUE(std::any_of(checks.begin(), checks.end(), [](const Check& c) {
      return c.law == CheckLaw::current && c.primes > 0;
    }));
  }
}

TEST(Steps, WithOneChangedValueFailTheStepChecker) {
  RandomCircuits random(20'105);
  std::size_t tried = 0;
  for (std::uint64_t i = 0; i < rounds(1'000); ++i) {
    const Problem problem = random.series_parallel(2 + random.below(12));
    const Reduction reduction = reduce_case(problem, problem.cases.front());
    for (std::size_t k = 0; k < reduction.steps.size(); ++k) {
      const Step step = reduction.steps[k];
      const Network before = replay(reduction, k);
      NewPart made{step.first, step.second, reduction.end.resistance(step.makes)};
      EXPECT_TRUE(check::check_step(before, step, made).holds) << i;
      made.resistance = Ratio(made.resistance.lowest_terms() + random.resistance());
      EXPECT_FALSE(check::check_step(before, step, made).holds) << i;
      ++tried;
    }
  }
  EXPECT_GT(tried, 2'000U);
}

}  // namespace
}  // namespace ohmfold::test

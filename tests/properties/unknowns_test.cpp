// A value of a random circuit is hidden and something is given: the value has to come back.
#include <gtest/gtest.h>

#include <algorithm>

#include "ohmfold/solve.h"
#include "ohmfold/unknown.h"
#include "rounds.h"
#include "support/random_network.h"

namespace ohmfold::test {
namespace {

using support::Multigraph;
using support::RandomCircuits;

Problem random_problem(RandomCircuits& random) {
  if (random.below(2) == 0) return random.series_parallel(2 + random.below(7));
  Multigraph wanted;
  wanted.points = 3 + random.below(4);
  wanted.resistors = wanted.points + random.below(4);
  wanted.batteries = 1 + random.below(2);
  wanted.internal = Multigraph::Internal::all;
  wanted.connected = true;
  return random.multigraph(wanted);
}

/// A question about the circuit, of any kind but for a value.
Question random_question(RandomCircuits& random, const Problem& problem) {
  const PartId part{static_cast<std::uint32_t>(random.below(problem.parts.size()))};
  const PointId from{static_cast<std::uint32_t>(random.below(problem.points.size()))};
  const PointId to{static_cast<std::uint32_t>(random.below(problem.points.size()))};
  switch (random.below(6)) {
    case 0:
      return VoltageAcross{part};
    case 1:
      return VoltageBetween{from, to};
    case 2:
      return PotentialAt{from};
    case 3:
      return PowerIn{part};
    case 4:
      return ResistanceSeenBy{PartId{0}};
    default:
      return CurrentThrough{part};
  }
}

/// Asks the question of the circuit as it is, and gives the answer.
bool give(Problem& problem, const Question& question) {
  Problem asking = problem;
  asking.givens.clear();
  asking.questions = {question};
  const Trace trace = solve(asking);
  const CaseTrace& one = trace.cases.front();
  if (one.contradiction || !one.answers.front().value.value) return false;
  problem.givens.push_back({question, one.answers.front().value.value->number, {}, {}});
  return true;
}

void hide(Problem& problem, PartId part) {
  Part& hidden = problem.parts[part.index];
  hidden.unknown = true;
  hidden.value = Number::symbol(hidden.name);
}

PartId random_part(RandomCircuits& random, const Problem& problem) {
  return PartId{static_cast<std::uint32_t>(random.below(problem.parts.size()))};
}

bool has_value(const CaseTrace& solved, std::size_t answer, const Number& value) {
  const Reading& reading = solved.answers.at(answer).value;
  return reading.value && reading.value->number == value;
}

TEST(Unknown, ValueThatWasHiddenComesBack) {
  RandomCircuits random(50'501);
  std::size_t found = 0, open = 0, two = 0;
  for (std::uint64_t i = 0; i < rounds(900); ++i) {
    SCOPED_TRACE(i);
    Problem problem = random_problem(random);
    const PartId part = random_part(random, problem);
    const Number value = problem.part(part).value;
    if (!give(problem, random_question(random, problem))) continue;
    hide(problem, part);
    problem.questions = {ValueOf{part}};
    const Trace trace = solve(problem);
    const UnknownSolution& unknown = *trace.cases.front().unknown;
    if (unknown.outcome == UnknownOutcome::any_value) {
      ++open;
      continue;
    }
    ASSERT_EQ(unknown.outcome, UnknownOutcome::found)
        << to_string(problem.givens[0].question, problem);
    ++found;
    two += trace.cases.size() == 2 ? 1U : 0U;
    const bool is_there = std::any_of(trace.cases.begin(), trace.cases.end(),
                                      [&](const CaseTrace& c) { return has_value(c, 0, value); });
    EXPECT_TRUE(is_there) << to_string(problem.givens[0].question, problem);
  }
  EXPECT_GT(found, 200U);
  EXPECT_GT(open, 20U);
  EXPECT_GT(two, 10U);
}

TEST(Unknown, TwoHiddenValuesComeBackFromTwoGivensOrAreRefused) {
  RandomCircuits random(50'502);
  std::size_t found = 0;
  for (std::uint64_t i = 0; i < rounds(300); ++i) {
    SCOPED_TRACE(i);
    Problem problem = random_problem(random);
    const PartId first = random_part(random, problem);
    const PartId second = random_part(random, problem);
    if (first == second) continue;
    const Number one = problem.part(first).value;
    const Number other = problem.part(second).value;
    if (!give(problem, random_question(random, problem))) continue;
    if (!give(problem, random_question(random, problem))) continue;
    hide(problem, first);
    hide(problem, second);
    problem.questions = {ValueOf{first}, ValueOf{second}};
    const Trace trace = solve(problem);
    const UnknownSolution& unknown = *trace.cases.front().unknown;
    EXPECT_NE(unknown.outcome, UnknownOutcome::no_value);
    if (unknown.outcome != UnknownOutcome::found) continue;
    ++found;
    const bool is_there = std::any_of(
        trace.cases.begin(), trace.cases.end(),
        [&](const CaseTrace& c) { return has_value(c, 0, one) && has_value(c, 1, other); });
    EXPECT_TRUE(is_there);
  }
  EXPECT_GT(found, 60U);
}

// A given that is a little off gives another value, or none: never the hidden one.
TEST(Unknown, ValueDependsOnWhatIsGiven) {
  RandomCircuits random(50'503);
  for (std::uint64_t i = 0; i < rounds(200); ++i) {
    SCOPED_TRACE(i);
    Problem problem = random.series_parallel(3 + random.below(5));
    const PartId part{static_cast<std::uint32_t>(1 + random.below(problem.parts.size() - 1))};
    const Number value = problem.part(part).value;
    if (!give(problem, CurrentThrough{part})) continue;
    problem.givens[0].value = problem.givens[0].value * Number(1001) / Number(1000);
    hide(problem, part);
    problem.questions = {ValueOf{part}};
    const Trace trace = solve(problem);
    for (const CaseTrace& solved : trace.cases) {
      EXPECT_TRUE(solved.answers.empty() || !has_value(solved, 0, value));
    }
  }
}

}  // namespace
}  // namespace ohmfold::test

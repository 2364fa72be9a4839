// What happens to the answers when the circuit is written or scaled differently.
#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>

#include "ohmfold/solve.h"
#include "rounds.h"
#include "support/random_network.h"

namespace ohmfold::test {
namespace {

using support::Multigraph;
using support::RandomCircuits;

Problem connected_circuit(RandomCircuits& random) {
  Multigraph wanted;
  wanted.points = 2 + random.below(6);
  wanted.resistors = wanted.points + random.below(7);
  wanted.batteries = 1 + random.below(2);
  wanted.internal = Multigraph::Internal::all;
  wanted.connected = true;
  return random.multigraph(wanted);
}

const CaseTrace& only_case(const Trace& trace) {
  return trace.cases.front();
}

Number current(const Trace& trace, std::uint32_t part) {
  return only_case(trace).branches.at(part).current.value.value().number;
}

TEST(Change, ReorderingTheLinesChangesNoAnswer) {
  RandomCircuits random(20'301);
  for (std::uint64_t i = 0; i < rounds(400); ++i) {
    const Problem problem = connected_circuit(random);
    std::vector<std::uint32_t> order(problem.parts.size());
    std::iota(order.begin(), order.end(), 0U);
    for (std::size_t k = order.size(); k > 1; --k) std::swap(order[k - 1], order[random.below(k)]);
    Problem shuffled = problem;
    for (std::size_t k = 0; k < order.size(); ++k) shuffled.parts[k] = problem.parts[order[k]];
    const Trace before = solve(problem);
    const Trace after = solve(shuffled);
    for (std::uint32_t k = 0; k < order.size(); ++k) {
      EXPECT_EQ(current(after, k), current(before, order[k])) << i;
    }
  }
}

TEST(Change, RenumberingThePointsChangesNoAnswer) {
  RandomCircuits random(20'302);
  for (std::uint64_t i = 0; i < rounds(400); ++i) {
    const Problem problem = connected_circuit(random);
    const auto last = static_cast<std::uint32_t>(problem.points.size() - 1);
    Problem mirrored = problem;
    std::reverse(mirrored.points.begin(), mirrored.points.end());
    for (Part& part : mirrored.parts) {
      part.from.index = last - part.from.index;
      part.to.index = last - part.to.index;
      part.name = "renamed_" + part.name;
    }
    const Trace before = solve(problem);
    const Trace after = solve(mirrored);
    for (std::uint32_t k = 0; k < problem.parts.size(); ++k) {
      EXPECT_EQ(current(after, k), current(before, k)) << i;
    }
  }
}

TEST(Change, SwappingAPartsEndsTurnsTheSignsOfItsCurrentAndVoltageAlone) {
  RandomCircuits random(20'303);
  for (std::uint64_t i = 0; i < rounds(400); ++i) {
    const Problem problem = connected_circuit(random);
    std::uint32_t swapped = 0;
    do {
      swapped = static_cast<std::uint32_t>(random.below(problem.parts.size()));
    } while (problem.parts[swapped].kind == PartKind::battery);
    Problem turned = problem;
    std::swap(turned.parts[swapped].from, turned.parts[swapped].to);
    const Trace before = solve(problem);
    const Trace after = solve(turned);
    for (std::uint32_t k = 0; k < problem.parts.size(); ++k) {
      const Number sign = k == swapped ? -1 : 1;
      EXPECT_EQ(current(after, k), sign * current(before, k)) << i;
      EXPECT_EQ(only_case(after).branches[k].power.value,
                only_case(before).branches[k].power.value);
    }
  }
}

TEST(Change, ScalingAllResistancesDividesCurrentsAndLeavesVoltages) {
  RandomCircuits random(20'304);
  for (std::uint64_t i = 0; i < rounds(400); ++i) {
    const Problem problem = connected_circuit(random);
    const Number factor = random.resistance();
    Problem scaled = problem;
    for (Part& part : scaled.parts) {
      (part.kind == PartKind::battery ? part.internal : part.value) =
          factor * (part.kind == PartKind::battery ? part.internal : part.value);
    }
    const Trace before = solve(problem);
    const Trace after = solve(scaled);
    for (std::uint32_t k = 0; k < problem.parts.size(); ++k) {
      EXPECT_EQ(factor * current(after, k), current(before, k)) << i;
      EXPECT_EQ(only_case(after).branches[k].voltage.value,
                only_case(before).branches[k].voltage.value);
    }
  }
}

Number resistance_between(Problem problem, PointId a, PointId b) {
  problem.questions = {ResistanceBetween{a, b}};
  const Reading reading = solve(problem).cases.front().answers.front().value;
  return reading.value.value().number;
}

Problem resistors_only(RandomCircuits& random) {
  Multigraph wanted;
  wanted.points = 2 + random.below(5);
  wanted.resistors = wanted.points + random.below(6);
  wanted.batteries = 0;
  wanted.connected = true;
  return random.multigraph(wanted);
}

// Foster, Reissner Anniversary Volume (1949) 333: the sum over resistors of R(ends)/value is points
// - 1.
TEST(Theorem, FosterSumIsOneLessThanThePoints) {
  RandomCircuits random(20'305);
  for (std::uint64_t i = 0; i < rounds(200); ++i) {
    const Problem problem = resistors_only(random);
    Number sum;
    for (const Part& part : problem.parts) {
      sum += resistance_between(problem, part.from, part.to) / part.value;
    }
    EXPECT_EQ(sum, Number(static_cast<int>(problem.points.size()) - 1)) << i;
  }
}

// Rayleigh; Doyle and Snell, Random Walks and Electric Networks (1984): raising one resistance
// never lowers the resistance between two points.
TEST(Theorem, RayleighRaisingOneResistanceNeverLowersTheWhole) {
  RandomCircuits random(20'306);
  std::size_t raised = 0;
  for (std::uint64_t i = 0; i < rounds(500); ++i) {
    Problem problem = resistors_only(random);
    const PointId a{0};
    const PointId b{static_cast<std::uint32_t>(problem.points.size() - 1)};
    const Number before = resistance_between(problem, a, b);
    Part& part = problem.parts[random.below(problem.parts.size())];
    part.value += random.resistance();
    const Number after = resistance_between(problem, a, b);
    EXPECT_GE(after, before) << i;
    raised += after > before ? 1U : 0U;
  }
  EXPECT_GT(raised, 200U);
}

// Klein and Randic, J. Math. Chem. 12 (1993) 81: the resistance between points is a distance.
TEST(Theorem, ResistanceIsAMetric) {
  RandomCircuits random(20'307);
  for (std::uint64_t i = 0; i < rounds(300); ++i) {
    const Problem problem = resistors_only(random);
    if (problem.points.size() < 3) continue;
    const PointId a{0}, b{1}, c{2};
    EXPECT_LE(resistance_between(problem, a, c),
              resistance_between(problem, a, b) + resistance_between(problem, b, c));
  }
}

// Adds a battery of 1 V inside resistor `at`, at its first end.
Problem with_volt_in(Problem problem, std::uint32_t at) {
  Part battery;
  battery.name = "E";
  battery.kind = PartKind::battery;
  battery.value = Number(1);
  battery.from = problem.parts[at].from;
  battery.to = PointId{static_cast<std::uint32_t>(problem.points.size())};
  problem.points.push_back("inside");
  problem.parts[at].from = battery.to;
  problem.parts.push_back(battery);
  return problem;
}

// Reciprocity follows from Tellegen's theorem, Philips Res. Rep. 7 (1952) 259: 1 V in one branch
// drives the same current in another as 1 V there drives here.
TEST(Theorem, ReciprocityBetweenAnyTwoBranches) {
  RandomCircuits random(20'308);
  for (std::uint64_t i = 0; i < rounds(500); ++i) {
    const Problem problem = resistors_only(random);
    const auto x = static_cast<std::uint32_t>(random.below(problem.parts.size()));
    const auto y = static_cast<std::uint32_t>(random.below(problem.parts.size()));
    EXPECT_EQ(current(solve(with_volt_in(problem, x)), y),
              current(solve(with_volt_in(problem, y)), x))
        << i;
  }
}

}  // namespace
}  // namespace ohmfold::test

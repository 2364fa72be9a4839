// What holds of circuits with several sources, batteries and sources of current.
#include <gtest/gtest.h>

#include "ohmfold/solve.h"
#include "rounds.h"
#include "support/random_network.h"

namespace ohmfold::test {
namespace {

using support::Multigraph;
using support::RandomCircuits;

// Cuts the first battery in two, so that there is a chain; the second may drive against the first.
void split_first(Problem& problem, RandomCircuits& random) {
  const PointId middle{static_cast<std::uint32_t>(problem.points.size())};
  problem.points.push_back("MID");
  Part second = problem.parts.front();
  second.name = "SECOND";
  second.value = static_cast<int>(random.below(24));
  second.from = middle;
  if (random.below(2) == 0) std::swap(second.from, second.to);
  problem.parts.front().to = middle;
  problem.parts.push_back(second);
}

// A connected circuit with at least two sources, some of them of current.
Problem several_sources(RandomCircuits& random) {
  Multigraph wanted;
  wanted.points = 3 + random.below(5);
  wanted.resistors = wanted.points + random.below(4);
  wanted.wires = random.below(2);
  wanted.open_switches = random.below(2);
  wanted.batteries = 1 + random.below(3);
  wanted.current_sources = random.below(3);
  wanted.internal = random.below(2) == 0 ? Multigraph::Internal::all : Multigraph::Internal::some;
  wanted.connected = true;
  Problem problem = random.multigraph(wanted);
  if (random.below(3) == 0) split_first(problem, random);
  return problem;
}

SolveOptions by(Method method) {
  SolveOptions options;
  options.method = method;
  return options;
}

TEST(Sources, BySuperpositionAndByNodeVoltagesGiveTheSame) {
  RandomCircuits random(20'301);
  std::size_t superposed = 0, chains = 0;
  for (std::uint64_t i = 0; i < rounds(3'000); ++i) {
    const Problem problem = several_sources(random);
    const Trace one = solve(problem, by(Method::superposition));
    const CaseTrace& sums = one.cases.front();
    for (std::size_t k = 0; k < sums.main.steps.size(); ++k) {
      chains += sums.main.steps[k].rule == RuleName::batteries ? 1 : 0;
    }
    if (sums.contradiction || sums.shares.empty()) continue;
    ++superposed;
    const Trace other = solve(problem, by(Method::node_voltage));
    const CaseTrace& nodes = other.cases.front();
    for (std::size_t k = 0; k < problem.parts.size(); ++k) {
      EXPECT_EQ(sums.branches[k].current.value, nodes.branches[k].current.value) << i;
      EXPECT_EQ(sums.branches[k].voltage.value, nodes.branches[k].voltage.value) << i;
      EXPECT_EQ(sums.branches[k].power.value, nodes.branches[k].power.value) << i;
    }
    for (std::size_t k = 0; k < problem.points.size(); ++k) {
      EXPECT_EQ(sums.nodes[k].potential.value, nodes.nodes[k].potential.value) << i;
    }
  }
  EXPECT_GT(superposed, 300U);
  EXPECT_GT(chains, 100U);
}

TEST(Sources, AllTurnedRoundTurnEveryCurrent) {
  RandomCircuits random(20'302);
  for (std::uint64_t i = 0; i < rounds(1'000); ++i) {
    const Problem problem = several_sources(random);
    Problem turned = problem;
    for (Part& part : turned.parts) {
      if (part.kind == PartKind::battery || part.kind == PartKind::current_source) {
        part.value = -part.value;
      }
    }
    const Trace one = solve(problem);
    const Trace other = solve(turned);
    if (one.has_contradiction()) continue;
    for (std::size_t k = 0; k < problem.parts.size(); ++k) {
      const auto& current = one.cases[0].branches[k].current.value;
      const auto& against = other.cases[0].branches[k].current.value;
      ASSERT_EQ(current.has_value(), against.has_value()) << i;
      if (current) {
        EXPECT_EQ(current->number, -against->number) << i;
      }
    }
  }
}

// The currents before the battery rule and after it, found by others: the checks of solve() solve
// the whole network by node voltages, and the rule's steps are on the way.
TEST(Sources, InAChainAnywhereOnARingCarryOneCurrent) {
  RandomCircuits random(20'303);
  for (std::uint64_t i = 0; i < rounds(1'000); ++i) {
    Problem problem;
    problem.cases.push_back({"", {}});
    const auto points = static_cast<std::uint32_t>(2 + random.below(8));
    Number emf, resistance;
    for (std::uint32_t k = 0; k < points; ++k) {
      problem.points.push_back("P" + std::to_string(k));
      const bool battery = k == 0 || random.below(2) == 0;
      const bool along = random.below(2) == 0;
      Part part;
      part.name = "X" + std::to_string(k);
      part.kind = battery ? PartKind::battery : PartKind::resistor;
      part.value = battery ? Number(static_cast<int>(random.below(24))) : random.resistance();
      if (battery) part.internal = random.resistance();
      const PointId here{k}, next{(k + 1) % points};
      part.from = along ? here : next;
      part.to = along ? next : here;
      if (battery) emf += along ? part.value : -part.value;
      resistance += battery ? part.internal : part.value;
      problem.parts.push_back(part);
    }
    const Trace trace = solve(problem);
    for (std::uint32_t k = 0; k < points; ++k) {
      const bool along = problem.parts[k].from == PointId{k};
      const Number around = emf / resistance;
      EXPECT_EQ(trace.cases[0].branches[k].current.value->number, along ? around : -around) << i;
    }
  }
}

Part load_of(const Number& ohm, PointId from, PointId to) {
  Part load;
  load.name = "LOAD";
  load.value = ohm;
  load.from = from;
  load.to = to;
  return load;
}

// The load's current in the circuit itself, and on the battery that the equivalent says.
TEST(Thevenin, InPlaceOfTheCircuitGivesAnyLoadTheSameCurrent) {
  RandomCircuits random(20'304);
  std::size_t tried = 0;
  for (std::uint64_t i = 0; i < rounds(1'500); ++i) {
    Problem problem = several_sources(random);
    const PointId first{static_cast<std::uint32_t>(random.below(problem.points.size()))};
    const PointId second{static_cast<std::uint32_t>((first.index + 1) % problem.points.size())};
    problem.questions = {TheveninBetween{first, second}};
    const Trace trace = solve(problem);
    if (trace.has_contradiction()) continue;
    const Thevenin found = trace.cases[0].answers[0].thevenin.value();
    ASSERT_TRUE(found.voltage.value && found.resistance.value) << i;
    const Number ohm = random.resistance();
    problem.parts.push_back(load_of(ohm, first, second));
    problem.questions = {
        CurrentThrough{PartId{static_cast<std::uint32_t>(problem.parts.size() - 1)}}};
    const Trace loaded = solve(problem);
    ASSERT_FALSE(loaded.has_contradiction()) << i;
    EXPECT_EQ(loaded.cases[0].answers[0].value.value->number,
              found.voltage.value->number / (found.resistance.value->number + ohm))
        << i;
    ++tried;
  }
  EXPECT_GT(tried, 500U);
}

}  // namespace
}  // namespace ohmfold::test

// The networks that a person's steps change: the true ones and their own.
#include "coach/networks.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "coach/forced_step.h"
#include "coach/route_arithmetic.h"
#include "ohmfold/solve.h"
#include "solve/reduce.h"
#include "support/circuit.h"
#include "support/random_network.h"

namespace ohmfold {
namespace {

using test::fraction;

const char* const kTwoBranches =
    "battery E = 30 V from G to T\nresistor R1 = 4 ohm from T to A\n"
    "resistor R2 = 9 ohm from A to G\nresistor R3 = 7 ohm from A to B\n"
    "resistor R4 = 11 ohm from B to G\n";

struct Sample {
  Problem problem;
  Trace trace;
  Networks networks;

  explicit Sample(const std::string& text)
      : problem(test::problem_of(text)), trace(solve(problem)), networks(trace.cases.front()) {}
  StepResult combine(Joining how, const std::vector<std::string>& names) {
    std::vector<PartId> parts;
    parts.reserve(names.size());
    for (const std::string& name : names) parts.push_back(test::part(problem, name));
    return networks.combine(how, parts);
  }
};

TEST(Networks, StayTheTrueOnesWhileStepsAreRight) {
  Sample sample(kTwoBranches);
  const StepResult step = sample.combine(Joining::series, {"R3", "R4"});
  EXPECT_EQ(step.verdict, StepVerdict::right);
  EXPECT_EQ(step.value, Number(18));
  EXPECT_TRUE(step.in_main);
  EXPECT_FALSE(sample.networks.has_diverged());
  EXPECT_TRUE(sample.networks.has_together({step.makes, test::part(sample.problem, "R1")}));
  EXPECT_FALSE(sample.networks.has_together({step.makes, test::part(sample.problem, "R3")}));
}

TEST(Networks, GoTwoWaysAfterAWrongStep) {
  Sample sample(kTwoBranches);
  const StepResult wrong = sample.combine(Joining::series, {"R1", "R2"});
  EXPECT_EQ(wrong.verdict, StepVerdict::refused);
  ASSERT_TRUE(wrong.makes.exists());
  EXPECT_TRUE(sample.networks.has_diverged());
  EXPECT_FALSE(sample.networks.is_lost());
  const StepResult right = sample.combine(Joining::series, {"R3", "R4"});
  EXPECT_EQ(right.verdict, StepVerdict::right);
  const StepResult own = sample.networks.combine(Joining::parallel, {wrong.makes, right.makes});
  EXPECT_EQ(own.verdict, StepVerdict::right_on_own);
}

TEST(Networks, KnowWhyAPartIsLeftOut) {
  Sample sample(std::string(kTwoBranches) + "resistor R5 = 5 ohm from B to D\n");
  EXPECT_FALSE(sample.networks.left_out(test::part(sample.problem, "R5")).empty());
  EXPECT_TRUE(sample.networks.left_out(test::part(sample.problem, "R4")).empty());
}

TEST(Networks, ReserveIdsThatNoPartHas) {
  Sample sample(kTwoBranches);
  const PartId reserved = sample.networks.reserve();
  const StepResult step = sample.combine(Joining::series, {"R3", "R4"});
  EXPECT_NE(step.makes, reserved);
  EXPECT_FALSE(sample.networks.has_together({reserved}));
}

// In a cube three and three points are at one potential: however many are joined one after the
// other, the network with all of them joined is among those that are kept.
TEST(Networks, KeepTheOneInWhichAllPointsAreJoined) {
  std::string cube = "battery E = 6 V from H to A\n";
  int count = 0;
  for (const char* edge :
       {"A B", "A C", "A D", "B F", "B G", "C F", "C K", "D G", "D K", "F H", "G H", "K H"}) {
    const std::string ends(edge);
    cube += "resistor R" + std::to_string(++count) + " = 12 ohm from " + ends.substr(0, 1) +
            " to " + ends.substr(2) + "\n";
  }
  Sample sample(cube);
  const auto join = [&](const char* one, const char* two) {
    sample.networks.join(test::point(sample.problem, one), test::point(sample.problem, two));
  };
  join("B", "C");
  join("B", "D");
  join("F", "G");
  join("F", "K");
  const StepResult step = sample.combine(Joining::parallel, {"R4", "R5", "R6", "R7", "R8", "R9"});
  EXPECT_EQ(step.verdict, StepVerdict::right);
  EXPECT_EQ(step.value, Number(2));
}

// --- wrong steps ---------------------------------------------------------------------------------
std::vector<Number> wholes_after(const Network& network, Joining how,
                                 const std::vector<PartId>& parts) {
  std::vector<Number> wholes;
  for (const Edit& edit : forced_steps(network, how, parts)) {
    Network wrong = network;
    wrong.commit(edit);
    const Reduction reduction = reduce(std::move(wrong));
    if (reduction.stop == Stop::reduced) {
      wholes.push_back(reduction.end.resistance(reduction.root).lowest_terms());
    }
  }
  return wholes;
}

// 4 + 9 beside 7 + 11: 13 * 18 / 31. Or the branch hangs behind both: 13 alone.
TEST(ForcedSteps, OfSeriesMoveWhatElseMeetsThere) {
  const Problem problem = test::problem_of(kTwoBranches);
  const Network network = support::network_of(problem);
  const std::vector<Number> wholes = wholes_after(
      network, Joining::series, {test::part(problem, "R1"), test::part(problem, "R2")});
  EXPECT_EQ(std::count(wholes.begin(), wholes.end(), fraction(13 * 18, 31)), 1);
}

TEST(ForcedSteps, NeverShortASource) {
  support::RandomCircuits random(413);
  for (int round = 0; round < 300; ++round) {
    const Network network = support::network_of(random.series_parallel(3 + random.below(7)));
    const PartId one{static_cast<std::uint32_t>(1 + random.below(network.part_count() - 1))};
    const PartId two{static_cast<std::uint32_t>(1 + random.below(network.part_count() - 1))};
    if (one == two) continue;
    for (const Joining how : {Joining::series, Joining::parallel}) {
      for (const Edit& edit : forced_steps(network, how, {one, two})) {
        Network wrong = network;
        const PartId made = wrong.commit(edit);
        ASSERT_NE(wrong.from(PartId{0}), wrong.to(PartId{0})) << network.dump();
        const Number a = network.resistance(one).lowest_terms();
        const Number b = network.resistance(two).lowest_terms();
        const Number value = how == Joining::series ? a + b : a * b / (a + b);
        ASSERT_EQ(wrong.resistance(made).lowest_terms(), value);
      }
    }
  }
}

// --- arithmetic with ranges ----------------------------------------------------------------------
// Whatever its operands can stand for, the result is within its range.
TEST(RouteArithmetic, HoldsAllThatTheOperandsCanStandFor) {
  support::RandomCircuits random(414);
  for (int round = 0; round < 500; ++round) {
    const auto route = [&](std::size_t claim) {
      const Number middle = random.resistance() - 3;
      const Number half = Number::quotient(static_cast<int>(random.below(5)), 4);
      return Route{middle, {middle - half, middle + half}, {claim}};
    };
    const Route a = route(1);
    const Route b = route(2);
    const auto within = [](const Route& result, const Number& value) {
      return result.range.low <= value && value <= result.range.high;
    };
    const auto over = quotient(a, b);
    const bool through_zero = !b.range.low.is_positive() && !b.range.high.is_negative();
    EXPECT_EQ(over.has_value(), !through_zero && !b.value.is_zero());
    for (const Number& x : {a.range.low, a.value, a.range.high}) {
      for (const Number& y : {b.range.low, b.value, b.range.high}) {
        EXPECT_TRUE(within(a + b, x + y));
        EXPECT_TRUE(within(a - b, x - y));
        EXPECT_TRUE(within(a * b, x * y));
        EXPECT_TRUE(!over || within(*over, x / y));
      }
    }
    EXPECT_EQ((a * b).claims, (std::vector<std::size_t>{1, 2}));
    EXPECT_FALSE(size_of(a).value.is_negative());
  }
}

}  // namespace
}  // namespace ohmfold

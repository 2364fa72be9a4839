// Series in the wider sense, against looking for closed paths by hand.
#include "coach/one_current.h"

#include <gtest/gtest.h>

#include "solve/reduce.h"
#include "support/circuit.h"
#include "support/walk.h"

namespace ohmfold {
namespace {

using support::RandomCircuits;

bool is_allowed(const Network& network, const Problem& problem, const std::string& one,
                const std::string& two) {
  return judge_one_current(network, {test::part(problem, one), test::part(problem, two)}).allowed;
}

TEST(OneCurrent, RunsThroughPartsWithABlockBetweenThem) {
  const Problem problem = test::problem_of(
      "battery E = 30 V from G to T\nresistor R1 = 1 ohm from T to A\n"
      "resistor R2 = 2 ohm from A to B\nresistor R3 = 3 ohm from A to B\n"
      "resistor R4 = 4 ohm from B to G\nresistor R5 = 5 ohm from A to D\n");
  const Network network = support::network_of(problem);
  EXPECT_TRUE(is_allowed(network, problem, "R1", "R4"));
  EXPECT_FALSE(is_allowed(network, problem, "R1", "R2"));
  EXPECT_FALSE(is_allowed(network, problem, "R2", "R3"));
  EXPECT_FALSE(is_allowed(network, problem, "R1", "R5"));  // a dead end carries none
  EXPECT_FALSE(is_allowed(network, problem, "E", "R1"));   // no resistor
}

TEST(OneCurrent, IsJudgedAsByLookingForClosedPaths) {
  RandomCircuits random(411);
  std::size_t together = 0;
  for (int round = 0; round < 400; ++round) {
    const Network network = support::network_of(random.series_parallel(2 + random.below(9)));
    for (std::uint32_t a = 0; a < network.part_count(); ++a) {
      for (std::uint32_t b = 0; b < network.part_count(); ++b) {
        const bool resistors = network.kind(PartId{a}) == ElementKind::resistor &&
                               network.kind(PartId{b}) == ElementKind::resistor;
        if (a == b || !resistors) continue;
        const bool one = support::carry_one_current(network, PartId{a}, PartId{b});
        ASSERT_EQ(judge_one_current(network, {PartId{a}, PartId{b}}).allowed, one)
            << network.dump() << "\n"
            << a << " " << b;
        together += one ? 1 : 0;
      }
    }
  }
  EXPECT_GT(together, 500U);
}

TEST(OneCurrent, PutsTheSumWhereNothingElseChanges) {
  RandomCircuits random(412);
  int made = 0;
  for (int round = 0; round < 400; ++round) {
    const Network network = support::network_of(random.series_parallel(3 + random.below(8)));
    const PartId one{static_cast<std::uint32_t>(1 + random.below(network.part_count() - 1))};
    const PartId two{static_cast<std::uint32_t>(1 + random.below(network.part_count() - 1))};
    if (one == two || !judge_one_current(network, {one, two}).allowed) continue;
    Network next = network;
    next.commit(sum_for_one_current(network, {one, two}));
    const Reduction before = reduce(network);
    const Reduction after = reduce(next);
    ASSERT_EQ(after.stop, Stop::reduced) << network.dump();
    EXPECT_EQ(after.end.resistance(after.root).lowest_terms(),
              before.end.resistance(before.root).lowest_terms())
        << network.dump();
    ++made;
  }
  EXPECT_GT(made, 50);
}

}  // namespace
}  // namespace ohmfold

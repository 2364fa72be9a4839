// Which pairs are listed where series and parallel end, and what the rules say of them.
#include "bridge/standstill.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "bridge/shapes.h"
#include "ohmfold/rule.h"
#include "solve/reduce.h"
#include "support/circuit.h"
#include "support/random_network.h"

namespace ohmfold::test {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

std::vector<std::string> pairs(const std::string& text, Likeness likeness) {
  const Problem problem = problem_of(text);
  std::vector<std::string> found;
  for (const TemptingPair& pair : stand_still(reduce(support::network_of(problem))).pairs) {
    if (pair.likeness != likeness) continue;
    found.push_back(problem.part(pair.first).name + ' ' + problem.part(pair.second).name);
  }
  return found;
}

constexpr const char* kBridge =
    "battery E = 12 V from G to T\n"
    "resistor R1 = 4 from T to A\nresistor R2 = 24 from A to G\nresistor R3 = 18 from T to B\n"
    "resistor R4 = 6 from B to G\nresistor R5 = 3 from A to B\n";

TEST(Standstill, ListsPairsThatShareAPointAndOppositeSides) {
  EXPECT_THAT(pairs(kBridge, Likeness::share_a_point),
              ElementsAre("R1 R2", "R1 R3", "R1 R5", "R2 R4", "R2 R5", "R3 R4", "R3 R5", "R4 R5"));
  EXPECT_THAT(pairs(kBridge, Likeness::opposite_sides), ElementsAre("R1 R4", "R2 R3"));
  EXPECT_THAT(pairs(kBridge, Likeness::same_value), IsEmpty());
}

// A prism of triangles A B C and P Q R; only the two parts named here have 7 ohm.
TEST(Standstill, ListsTwoOfEqualValueThatShareNoPoint) {
  EXPECT_THAT(pairs("battery E = 12 V from A to Q\n"
                    "resistor R1 = 7 from A to B\nresistor R2 = 1 from B to C\n"
                    "resistor R3 = 1 from C to A\nresistor R4 = 2 from P to Q\n"
                    "resistor R5 = 3 from Q to R\nresistor R6 = 7 from R to P\n"
                    "resistor R7 = 1 from A to P\nresistor R8 = 1 from B to Q\n"
                    "resistor R9 = 1 from C to R\n",
                    Likeness::same_value),
              ElementsAre("R1 R6"));
}

TEST(Standstill, IsReachedAfterTheStepsThatCanBeMade) {
  const Problem problem = problem_of(std::string(kBridge) +
                                     "resistor R6 = 1 from A to B\nresistor R7 = 1 from T to X\n");
  const Reduction reduction = reduce(support::network_of(problem));
  const Standstill at = stand_still(reduction);
  EXPECT_EQ(at.steps, 2U);  // R7 is a dead end, R5 and R6 are in parallel
  EXPECT_EQ(at.left.size(), 6U);
}

TEST(Standstill, HasBothRulesRefuseEveryPair) {
  support::RandomCircuits random(31);
  std::size_t listed = 0;
  for (int round = 0; round < 300; ++round) {
    const Reduction reduction = reduce(support::network_of(random.multigraph(
        {.points = 6, .resistors = 12, .batteries = 1 + random.below(2), .connected = true})));
    for (const TemptingPair& pair : stand_still(reduction).pairs) {
      ++listed;
      const Place place{{pair.first, pair.second}, {}, {}};
      for (const RuleName name : {RuleName::series, RuleName::parallel}) {
        ASSERT_FALSE(rule(name).judge(reduction.end, place).allowed) << reduction.end.dump();
      }
      ASSERT_FALSE(pair.not_series.empty());
      ASSERT_FALSE(pair.not_parallel.empty());
    }
  }
  EXPECT_GT(listed, 1000U);
}

TEST(Standstill, ListsNoMoreThanCanBeReadAndCountsTheRest) {
  const Standstill at = stand_still(reduce(complete(20)));
  EXPECT_EQ(at.pairs.size(), kMostPairs);
  // 20 points with 19 resistors each.
  EXPECT_EQ(at.pairs.size() + at.more_pairs, 20U * 19 * 18 / 2);
}

}  // namespace
}  // namespace ohmfold::test

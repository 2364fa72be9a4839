// Deltas, stars and meshes: where they are, what they become, and why not.
#include <gmock/gmock.h>

#include "rule_case.h"

namespace ohmfold::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

// A bridge: T and G are its terminals.
constexpr const char* kBridge =
    "battery E = 12 V from G to T\n"
    "resistor R1 = 1 ohm from T to A\n"
    "resistor R2 = 2 ohm from A to G\n"
    "resistor R3 = 3 ohm from T to B\n"
    "resistor R4 = 4 ohm from B to G\n"
    "resistor R5 = 5 ohm from A to B\n";

// A hub H with four arms.
constexpr const char* kHub =
    "battery E = 12 V from G to T\n"
    "resistor R1 = 1 ohm from T to H\n"
    "resistor R2 = 2 ohm from G to H\n"
    "resistor R3 = 3 ohm from H to A\n"
    "resistor R4 = 4 ohm from H to B\n"
    "resistor R5 = 5 ohm from A to B\n"
    "resistor R6 = 6 ohm from T to A\n"
    "resistor R7 = 7 ohm from G to B\n";

Number value(const Edit& edit, std::size_t at) {
  return edit.adds[at].resistance.lowest_terms();
}

TEST(DeltaStar, FindsDeltasThatShareNoPart) {
  const RuleCase c(kBridge);
  EXPECT_THAT(c.find(RuleName::delta_star), ElementsAre("R1 R3 R5"));
}

TEST(DeltaStar, RecordsTheThreeCorners) {
  const RuleCase c(kBridge);
  const Verdict verdict = c.judge(RuleName::delta_star, "R5 R4 R2");
  ASSERT_TRUE(verdict.allowed);
  const auto fact = only_fact<FormDelta>(verdict);
  EXPECT_THAT((std::vector{fact.a, fact.b, fact.c}), ElementsAre(c.at("G"), c.at("A"), c.at("B")));
}

// Rt = 1*3/9, Ra = 1*5/9, Rb = 3*5/9, worked by hand.
TEST(DeltaStar, MakesEachArmTheProductOfTwoSidesOverTheSum) {
  RuleCase c(kBridge);
  const Edit edit = rule(RuleName::delta_star).apply(c.network(), c.place("R1 R3 R5"));
  ASSERT_EQ(edit.adds.size(), 3U);
  EXPECT_EQ(edit.new_points, 1U);
  for (const NewPart& arm : edit.adds) EXPECT_EQ(arm.to.index, c.network().point_count());
  EXPECT_EQ(edit.adds[0].from, c.at("T"));
  EXPECT_EQ(value(edit, 0), fraction(1, 3));
  EXPECT_EQ(edit.adds[1].from, c.at("A"));
  EXPECT_EQ(value(edit, 1), fraction(5, 9));
  EXPECT_EQ(value(edit, 2), fraction(5, 3));
}

TEST(DeltaStar, RefusesWhatFormsNoTriangle) {
  const RuleCase c(kBridge);
  EXPECT_EQ(only_fact<FormNoDelta>(c.judge(RuleName::delta_star, "R1 R3 R4")).part, c.id("R4"));
  EXPECT_EQ(only_fact<FormNoDelta>(c.judge(RuleName::delta_star, "R1 R4 R5")).part, c.id("R4"));
  EXPECT_EQ(only_fact<NotAResistor>(c.judge(RuleName::delta_star, "R1 R2 E")).part, c.id("E"));
  EXPECT_EQ(only_fact<WrongNumber>(c.judge(RuleName::delta_star, "R1 R3")).wanted, 3U);
}

TEST(DeltaStar, RefusesThreePartsOfWhichTwoAreInParallel) {
  const RuleCase c(
      "battery E = 1 V from G to T\n"
      "resistor R1 = 1 ohm from T to A\n"
      "resistor R2 = 1 ohm from T to A\n"
      "resistor R3 = 1 ohm from A to G\n");
  EXPECT_FALSE(c.judge(RuleName::delta_star, "R1 R2 R3").allowed);
  EXPECT_THAT(c.find(RuleName::delta_star), IsEmpty());
}

TEST(StarDelta, FindsPointsWithThreeResistorsAndNothingElse) {
  const RuleCase c(kBridge);
  EXPECT_THAT(c.find(RuleName::star_delta), ElementsAre("R1 R2 R5"));
  EXPECT_TRUE(c.judge(RuleName::star_delta, "R3 R4 R5").allowed);
}

// With arms of 1, 2 and 5 ohm the sum of products is 17: sides 17/5, 17/2 and 17, worked by hand.
TEST(StarDelta, MakesEachSideTheSumOfProductsOverTheOppositeArm) {
  RuleCase c(kBridge);
  const Edit edit = rule(RuleName::star_delta).apply(c.network(), c.place("R1 R2 R5"));
  ASSERT_EQ(edit.adds.size(), 3U);
  EXPECT_EQ(edit.new_points, 0U);
  EXPECT_EQ(value(edit, 0), fraction(17, 5));  // T to G
  EXPECT_EQ(value(edit, 1), fraction(17, 2));  // T to B
  EXPECT_EQ(value(edit, 2), Number(17));       // G to B
}

TEST(StarDelta, RefusesWhereTheSourceOrAFourthPartIsJoined) {
  const RuleCase bridge(
      "battery E = 12 V from G to T\n"
      "resistor R1 = 1 ohm from T to A\n"
      "resistor R2 = 1 ohm from T to B\n"
      "resistor R3 = 1 ohm from T to G\n"
      "resistor R4 = 1 ohm from A to B\n");
  EXPECT_EQ(only_fact<SourceBetween>(bridge.judge(RuleName::star_delta, "R1 R2 R3")).point,
            bridge.at("T"));
  const RuleCase hub(kHub);
  EXPECT_EQ(only_fact<AlsoMeets>(hub.judge(RuleName::star_delta, "R1 R2 R3")).part, hub.id("R4"));
}

TEST(StarDelta, RefusesArmsThatEndTogetherOrMeetNowhere) {
  const RuleCase c(
      "battery E = 12 V from G to T\n"
      "resistor R1 = 1 ohm from T to A\n"
      "resistor R2 = 1 ohm from A to T\n"
      "resistor R3 = 1 ohm from A to G\n"
      "resistor R4 = 1 ohm from T to B\n"
      "resistor R5 = 1 ohm from B to B\n");
  EXPECT_EQ(only_fact<EndTogether>(c.judge(RuleName::star_delta, "R1 R2 R3")).point, c.at("T"));
  only_fact<ShareNoPoint>(c.judge(RuleName::star_delta, "R1 R3 R4"));
  only_fact<BothEndsOn>(c.judge(RuleName::star_delta, "R1 R3 R5"));
}

TEST(NodeElimination, TakesFourArmsOrMore) {
  const RuleCase c(kHub);
  EXPECT_THAT(c.find(RuleName::node_elimination), ElementsAre("R1 R2 R3 R4"));
  EXPECT_TRUE(only_fact<WrongNumber>(c.judge(RuleName::node_elimination, "R5 R7 R4")).or_more);
}

// The conductances are 1, 1/2, 1/3 and 1/4, together 25/12; Rij = Ri Rj 25/12, worked by hand.
TEST(NodeElimination, MakesAPartBetweenEachTwoEnds) {
  RuleCase c(kHub);
  const Edit edit = rule(RuleName::node_elimination).apply(c.network(), c.place("R1 R2 R3 R4"));
  ASSERT_EQ(edit.adds.size(), 6U);
  EXPECT_EQ(value(edit, 0), fraction(25, 6));  // R1 R2
  EXPECT_EQ(value(edit, 1), fraction(25, 4));  // R1 R3
  EXPECT_EQ(value(edit, 5), Number(25));       // R3 R4
}

}  // namespace
}  // namespace ohmfold::test

// Gaps, ideal wires, short-circuited parts and dead ends.
#include <gmock/gmock.h>

#include "rule_case.h"

namespace ohmfold::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

TEST(Gap, LeavesOutOpenSwitchesVoltmetersAndPartsTakenOut) {
  const RuleCase c(
      "battery E = 12 V from G to T\nresistor R1 = 1 ohm from T to G\n"
      "resistor R2 = 1 ohm from T to G\nswitch S from T to A\nvoltmeter M from A to G\n"
      "case \"one\": S open, R2 removed\n");
  EXPECT_THAT(c.find(RuleName::gap), ElementsAre("R2", "S", "M"));
  EXPECT_EQ(only_fact<IsOpenSwitch>(c.judge(RuleName::gap, "S")).part, c.id("S"));
  only_fact<IsVoltmeter>(c.judge(RuleName::gap, "M"));
  only_fact<IsTakenOut>(c.judge(RuleName::gap, "R2"));
  EXPECT_FALSE(c.judge(RuleName::gap, "R1").allowed);
  only_fact<IsNotAGap>(c.judge(RuleName::gap, "R1"));
}

constexpr const char* kWires =
    "battery E = 12 V from G to T\nwire from T to A\nammeter M from A to B\n"
    "resistor R1 = 1 ohm from B to C\nresistor R0 = 0 ohm from C to D\nswitch S from D to G\n"
    "resistor R2 = 1 ohm from T to B\n"
    "case \"one\": S closed\n";

TEST(IdealWire, TakesEachClusterOfWiresAsOnePlace) {
  const RuleCase c(kWires);
  EXPECT_THAT(c.find(RuleName::ideal_wire), ElementsAre("wire 1 M", "R0 S"));
}

TEST(IdealWire, MakesThePointsOfAClusterOnePointTheFirstInTheFile) {
  RuleCase c(kWires);
  const Place cluster = rule(RuleName::ideal_wire).find(c.network(), whole(c.network())).front();
  c.network().commit(rule(RuleName::ideal_wire).apply(c.network(), cluster));
  EXPECT_EQ(c.network().representative(c.at("A")), c.at("T"));
  EXPECT_EQ(c.network().representative(c.at("B")), c.at("T"));
  EXPECT_EQ(c.network().from(c.id("R1")), c.at("T"));
  EXPECT_EQ(c.network().representative(c.at("C")), c.at("C"));
}

TEST(IdealWire, RefusesAResistor) {
  const RuleCase c(kWires);
  EXPECT_EQ(only_fact<IsNotAWire>(c.judge(RuleName::ideal_wire, "M R1")).part, c.id("R1"));
}

TEST(Shorted, HoldsOnceAWireHasMadeBothEndsOnePoint) {
  RuleCase c(kWires);
  only_fact<EndsApart>(c.judge(RuleName::shorted, "R2"));
  for (const Place& place : rule(RuleName::ideal_wire).find(c.network(), whole(c.network()))) {
    c.network().commit(rule(RuleName::ideal_wire).apply(c.network(), place));
  }
  EXPECT_THAT(c.find(RuleName::shorted), ElementsAre("R2"));
  EXPECT_EQ(only_fact<BothEndsOn>(c.judge(RuleName::shorted, "R2")).point, c.at("T"));
}

constexpr const char* kLoose =
    "battery E = 12 V from G to T\nresistor R1 = 1 ohm from T to A\nresistor R2 = 1 ohm from A to "
    "G\n"
    "resistor R3 = 1 ohm from A to B\nresistor R4 = 1 ohm from B to C\nresistor R5 = 1 ohm from B "
    "to C\n"
    "resistor R6 = 1 ohm from P to Q\n";

TEST(DeadEnd, TakesAPieceThatHangsFromOnePointWithItsLoops) {
  const RuleCase c(kLoose);
  EXPECT_THAT(c.find(RuleName::dead_end), ElementsAre("R3 R4 R5", "R6"));
  EXPECT_EQ(only_fact<HangsFrom>(c.judge(RuleName::dead_end, "R3 R4 R5")).point, c.at("A"));
  only_fact<JoinedToNothing>(c.judge(RuleName::dead_end, "R6"));
}

TEST(DeadEnd, RefusesAPartOnAClosedPathThroughTheBattery) {
  const RuleCase c(kLoose);
  EXPECT_EQ(only_fact<LiesOnALoop>(c.judge(RuleName::dead_end, "R1")).part, c.id("R1"));
  EXPECT_EQ(only_fact<LiesOnALoop>(c.judge(RuleName::dead_end, "R1 R2")).part, c.id("R1"));
}

TEST(DeadEnd, SeesTheOnlyLinkBetweenTwoFedCircuits) {
  const RuleCase c(
      "battery E1 = 12 V from G to T\nresistor R1 = 1 ohm from T to G\n"
      "resistor R2 = 5 ohm from G to K\n"
      "battery E2 = 6 V from K to L\nresistor R3 = 1 ohm from L to K\n");
  EXPECT_THAT(c.find(RuleName::dead_end), ElementsAre("R2"));
  EXPECT_EQ(only_fact<IsOnlyLink>(c.judge(RuleName::dead_end, "R2")).part, c.id("R2"));
}

TEST(DeadEnd, TakesABatteryThatFeedsNothing) {
  const RuleCase c(
      "battery E1 = 12 V from G to T\nresistor R1 = 1 ohm from T to G\n"
      "battery E2 = 6 V from T to K\nresistor R2 = 5 ohm from K to L\n");
  EXPECT_THAT(c.find(RuleName::dead_end), ElementsAre("E2 R2"));
}

TEST(DeadEnd, KeepsTheOnlyBatteryOfAnOpenCircuitAsThePlaceToLookFrom) {
  const RuleCase c(
      "battery E1 = 12 V from G to T\nresistor R1 = 1 ohm from T to A\n"
      "resistor R2 = 1 ohm from G to B\n");
  EXPECT_THAT(c.find(RuleName::dead_end), ElementsAre("R1", "R2"));
}

TEST(DeadEnd, FindsNothingWhereEveryPartIsFed) {
  const RuleCase c(
      "battery E = 12 V from G to T\nresistor R1 = 1 ohm from T to A\n"
      "resistor R2 = 1 ohm from A to G\nresistor R3 = 1 ohm from T to G\n");
  EXPECT_THAT(c.find(RuleName::dead_end), IsEmpty());
}

}  // namespace
}  // namespace ohmfold::test

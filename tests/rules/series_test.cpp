// Where resistors are in series, and why not.
#include <gmock/gmock.h>

#include "rule_case.h"

namespace ohmfold::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

constexpr const char* kForkedChain =
    "battery E = 12 V from G to T\n"
    "resistor R1 = 1 ohm from T to A\n"
    "resistor R2 = 2 ohm from A to B\n"
    "resistor R3 = 3 ohm from C to B\n"
    "resistor R4 = 4 ohm from C to G\n"
    "resistor R5 = 5 ohm from A to G\n";

TEST(Series, TakesAWholeChainInOrderFromEndToEnd) {
  const RuleCase c(kForkedChain);
  EXPECT_THAT(c.find(RuleName::series), ElementsAre("R2 R3 R4"));
}

TEST(Series, RecordsWhichPartsMeetAtEachInnerPoint) {
  const RuleCase c(kForkedChain);
  const Verdict verdict = c.judge(RuleName::series, "R2 R3 R4");
  ASSERT_TRUE(verdict.allowed);
  ASSERT_EQ(verdict.facts.size(), 2U);
  const auto fact = std::get<MeetOnlyAt>(verdict.facts[0]);
  EXPECT_EQ(fact.first, c.id("R2"));
  EXPECT_EQ(fact.second, c.id("R3"));
  EXPECT_EQ(fact.point, c.at("B"));
}

TEST(Series, StopsWhereAThirdPartMeets) {
  const RuleCase c(kForkedChain);
  const auto fact = only_fact<AlsoMeets>(c.judge(RuleName::series, "R1 R2"));
  EXPECT_EQ(fact.part, c.id("R5"));
  EXPECT_EQ(fact.point, c.at("A"));
}

TEST(Series, DoesNotPassTheBattery) {
  const RuleCase c(kForkedChain);
  const auto fact = only_fact<SourceBetween>(c.judge(RuleName::series, "R4 R5"));
  EXPECT_EQ(fact.source, c.id("E"));
  EXPECT_EQ(fact.point, c.at("G"));
}

TEST(Series, RefusesPartsThatShareNoPoint) {
  const RuleCase c(kForkedChain);
  only_fact<ShareNoPoint>(c.judge(RuleName::series, "R1 R3"));
}

TEST(Series, HoldsForPartsOfOneChainWithOthersBetween) {
  const RuleCase c(kForkedChain);
  EXPECT_TRUE(c.judge(RuleName::series, "R4 R2").allowed);
}

TEST(Series, NeedsTwoParts) {
  const RuleCase c(kForkedChain);
  only_fact<TooFewParts>(c.judge(RuleName::series, "R2"));
}

TEST(Series, RefusesABattery) {
  const RuleCase c(kForkedChain);
  EXPECT_EQ(only_fact<NotAResistor>(c.judge(RuleName::series, "E R1")).part, c.id("E"));
}

TEST(Series, AddsResistancesAndRunsAlongItsFirstPart) {
  RuleCase c(kForkedChain);
  const PartId made = c.apply(RuleName::series, "R2 R3 R4");
  EXPECT_EQ(c.network().resistance(made).lowest_terms(), Number(9));
  EXPECT_EQ(c.network().from(made), c.at("A"));
  EXPECT_EQ(c.network().to(made), c.at("G"));
}

TEST(Series, TurnsWithAFirstPartThatIsWrittenBackwards) {
  RuleCase c(
      "battery E = 12 V from G to T\nresistor R1 = 1 ohm from A to T\n"
      "resistor R2 = 2 ohm from A to G\n");
  const PartId made = c.apply(RuleName::series, "R1 R2");
  EXPECT_EQ(c.network().from(made), c.at("G"));
  EXPECT_EQ(c.network().to(made), c.at("T"));
}

TEST(Series, LeavesAChainAloneThatClosesOnItself) {
  const RuleCase c(
      "battery E = 12 V from G to T\nresistor R1 = 1 ohm from T to G\n"
      "resistor R2 = 2 ohm from T to A\nresistor R3 = 3 ohm from A to T\n");
  EXPECT_THAT(c.find(RuleName::series), IsEmpty());
  only_fact<ChainCloses>(c.judge(RuleName::series, "R2 R3"));
}

}  // namespace
}  // namespace ohmfold::test

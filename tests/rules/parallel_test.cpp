// Where resistors are in parallel, and why not.
#include <gmock/gmock.h>

#include "rule_case.h"

namespace ohmfold::test {
namespace {

using testing::ElementsAre;

constexpr const char* kThreeAbreast =
    "battery E = 12 V from G to T\n"
    "resistor R1 = 6 ohm from T to A\n"
    "resistor R2 = 6 ohm from A to G\n"
    "resistor R3 = 3 ohm from G to A\n"
    "lamp     L  = 2 ohm from A to G\n"
    "resistor R5 = 1 ohm from T to G\n"
    "resistor R6 = 1 ohm from A to A\n";

TEST(Parallel, TakesAllPartsBetweenTwoPointsAtOnceWhicheverWayTheyAreWritten) {
  const RuleCase c(kThreeAbreast);
  EXPECT_THAT(c.find(RuleName::parallel), ElementsAre("R2 R3 L"));
}

TEST(Parallel, RecordsTheTwoPointsInCommon) {
  const RuleCase c(kThreeAbreast);
  const Verdict verdict = c.judge(RuleName::parallel, "R2 R3");
  ASSERT_TRUE(verdict.allowed);
  const auto fact = only_fact<JoinSameTwoPoints>(verdict);
  EXPECT_EQ(fact.first, c.at("A"));
  EXPECT_EQ(fact.second, c.at("G"));
}

TEST(Parallel, NamesTheEndsThatDiffer) {
  const RuleCase c(kThreeAbreast);
  const auto fact = only_fact<EndsDiffer>(c.judge(RuleName::parallel, "R2 R5"));
  EXPECT_EQ(fact.first_end, c.at("A"));
  EXPECT_EQ(fact.second_end, c.at("T"));
}

TEST(Parallel, DoesNotTakeABatteryWithTheResistorAcrossIt) {
  const RuleCase c(kThreeAbreast);
  EXPECT_EQ(only_fact<NotAResistor>(c.judge(RuleName::parallel, "R5 E")).part, c.id("E"));
}

TEST(Parallel, RefusesAPartWithBothEndsOnOnePoint) {
  const RuleCase c(kThreeAbreast);
  only_fact<BothEndsOn>(c.judge(RuleName::parallel, "R6 R2"));
}

TEST(Parallel, NeedsTwoParts) {
  const RuleCase c(kThreeAbreast);
  only_fact<TooFewParts>(c.judge(RuleName::parallel, "R2"));
}

TEST(Parallel, AddsReciprocals) {
  RuleCase c(kThreeAbreast);
  const PartId made = c.apply(RuleName::parallel, "R2 R3 L");
  EXPECT_EQ(c.network().resistance(made).lowest_terms(), Number(1));
  EXPECT_EQ(c.network().from(made), c.at("A"));
  EXPECT_EQ(c.network().to(made), c.at("G"));
}

}  // namespace
}  // namespace ohmfold::test

// Batteries of one chain: where they add, with which signs, and where they do not.
#include <gtest/gtest.h>

#include "rules/rule_case.h"

namespace ohmfold::test {
namespace {

constexpr RuleName kBatteries = RuleName::batteries;

const BatteryData& made_by(RuleCase& one, const std::string& names) {
  return one.network().battery(one.apply(kBatteries, names));
}

const char* const kStacked =
    "battery E1 = 9 V internal 1 ohm from G to M\nbattery E2 = 3 V internal 2 ohm from M to T\n"
    "resistor R = 10 ohm from T to G\n";
const char* const kOpposed =
    "battery E1 = 4 V from G to M\nresistor R1 = 3 ohm from M to A\n"
    "battery E2 = 12 V internal 0.5 ohm from T to A\nresistor R2 = 10 ohm from T to G\n";

TEST(Batteries, OfOneChainAddTheirVoltagesAndInternalResistances) {
  RuleCase one(kStacked);
  EXPECT_EQ(one.find(kBatteries), std::vector<std::string>{"E1 E2"});
  const BatteryData& made = made_by(one, "E1 E2");
  EXPECT_EQ(made.emf.number, Number(12));
  EXPECT_EQ(made.internal.number, Number(3));
}

TEST(Batteries, StandAtThePlaceOfTheFirstAndJoinTheEndsOfTheOther) {
  RuleCase one(kStacked);
  const PartId made = one.apply(kBatteries, "E1 E2");
  EXPECT_EQ(one.network().from(made), one.at("G"));
  EXPECT_EQ(one.network().to(made), one.at("M"));
  EXPECT_EQ(one.network().representative(one.at("T")), one.at("M"));
  EXPECT_EQ(one.network().alive_count(), 2U);
}

TEST(Batteries, WithResistorsBetweenSubtractWhereOneDrivesAgainstTheOther) {
  RuleCase one(kOpposed);
  const Verdict verdict = one.judge(kBatteries, "E1 E2");
  ASSERT_TRUE(verdict.allowed);
  EXPECT_EQ(only_fact<DriveAgainst>(verdict).second, one.id("E2"));
  const PartId made = one.apply(kBatteries, "E1 E2");
  EXPECT_EQ(one.network().battery(made).emf.number, Number(8)) << "turned: not negative";
  EXPECT_EQ(one.network().from(made), one.at("M"));
  EXPECT_EQ(one.network().to(made), one.at("G"));
  EXPECT_EQ(one.network().representative(one.at("A")), one.network().representative(one.at("T")));
}

TEST(Batteries, OfThreeInAChainComeInFileOrderWhateverTheChainsOrder) {
  RuleCase one(
      "battery E2 = 1 V from A to B\nbattery E3 = 2 V from C to B\nbattery E1 = 4 V from G to A\n"
      "resistor R = 1 ohm from C to G\n");
  EXPECT_EQ(one.find(kBatteries), std::vector<std::string>{"E2 E3 E1"});
  EXPECT_EQ(made_by(one, "E2 E3 E1").emf.number, Number(3));
}

TEST(Batteries, OfALoopOfNothingElseBecomeOneWithBothEndsOnOnePoint) {
  RuleCase one(
      "battery E1 = 6 V internal 1 ohm from G to T\nbattery E2 = 4 V internal 1 ohm from G to T\n");
  const PartId made = one.apply(kBatteries, "E1 E2");
  EXPECT_EQ(one.network().battery(made).emf.number, Number(2));
  EXPECT_EQ(one.network().from(made), one.network().to(made));
}

TEST(Batteries, AreApartWhereAThirdPartMeets) {
  RuleCase one(
      "battery E1 = 9 V from G to M\nbattery E2 = 3 V from M to T\nresistor R = 1 ohm from T to G\n"
      "resistor R2 = 1 ohm from M to G\n");
  EXPECT_TRUE(one.find(kBatteries).empty());
  const Verdict verdict = one.judge(kBatteries, "E1 E2");
  EXPECT_FALSE(verdict.allowed);
  EXPECT_TRUE(std::holds_alternative<AlsoMeets>(verdict.facts.at(0)));
}

TEST(Batteries, AreApartWhereASourceOfCurrentLiesBetween) {
  RuleCase one(
      "battery E1 = 9 V from G to M\nsource J = 1 A from M to N\nbattery E2 = 3 V from N to T\n"
      "resistor R = 1 ohm from T to A\nresistor R2 = 1 ohm from A to G\n"
      "resistor R3 = 1 ohm from A to T\n");
  EXPECT_FALSE(one.judge(kBatteries, "E1 E2").allowed);
}

TEST(Batteries, OfALoopWithoutResistanceStay) {
  RuleCase one("battery E1 = 6 V from G to T\nbattery E2 = 6 V from G to T\n");
  EXPECT_TRUE(one.find(kBatteries).empty());
  EXPECT_TRUE(only_fact<ChainCloses>(one.judge(kBatteries, "E1 E2")).part.exists());
}

TEST(Batteries, AreNoResistorsAndMoreThanOne) {
  RuleCase one(kStacked);
  EXPECT_EQ(only_fact<NotABattery>(one.judge(kBatteries, "E1 R")).part, one.id("R"));
  EXPECT_FALSE(one.judge(kBatteries, "E1").allowed);
}

}  // namespace
}  // namespace ohmfold::test

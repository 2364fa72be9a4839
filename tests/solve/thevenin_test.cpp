// A circuit as seen from two of its points.
#include <gtest/gtest.h>

#include <algorithm>

#include "solve/solved.h"

namespace ohmfold::test {
namespace {

Thevenin found(const Solved& s, std::size_t k = 0) {
  return s.only().answers.at(k).thevenin.value();
}

const char* const kDivider =
    "battery E = 12 V from G to T\nresistor R1 = 3 ohm from T to A\nresistor R2 = 6 ohm from A to "
    "B\nwire from B to G\n";

TEST(Thevenin, OfADividerHasItsVoltageResistanceAndShortCircuitCurrent) {
  const Solved s(std::string(kDivider) + "find thevenin between A and B\n");
  EXPECT_EQ(found(s).voltage.value.value().number, Number(8));
  EXPECT_EQ(found(s).resistance.value.value().number, Number(2));
  EXPECT_EQ(found(s).short_circuit_current.value.value().number, Number(4));
  EXPECT_EQ(s.answer(0).value, found(s).voltage.value);
  const Reduction& shown = s.only().further.at(s.only().answers[0].shown_by.value());
  EXPECT_EQ(shown.stop, Stop::reduced);
}

TEST(Thevenin, IsCheckedWithAWirePutIn) {
  const Solved s(std::string(kDivider) + "find thevenin between A and B\n");
  const auto& checks = s.only().checks;
  for (const CheckLaw law : {CheckLaw::short_circuit, CheckLaw::resistance}) {
    EXPECT_TRUE(std::any_of(checks.begin(), checks.end(),
                            [&](const Check& c) { return c.law == law && c.holds; }));
  }
}

TEST(Thevenin, CountsFromTheFirstPointToTheSecond) {
  const Solved s(std::string(kDivider) + "find thevenin between B and A\n");
  EXPECT_EQ(found(s).voltage.value.value().number, Number(-8));
  EXPECT_EQ(found(s).short_circuit_current.value.value().number, Number(-4));
}

TEST(Thevenin, ReplacesBatteriesByTheirInternalResistanceAndSourcesByGaps) {
  const Solved s(
      "battery E = 12 V internal 1 ohm from G to T\nresistor R1 = 2 ohm from T to A\n"
      "source J = 2 A from G to A\nfind thevenin between A and G\n");
  EXPECT_EQ(found(s).voltage.value.value().number, Number(18));
  EXPECT_EQ(found(s).resistance.value.value().number, Number(3));
  EXPECT_EQ(found(s).short_circuit_current.value.value().number, Number(6));
}

TEST(Thevenin, OfABridgeAndOfSeveralBatteries) {
  const Solved s(
      "battery E1 = 10 V from G to T\nbattery E2 = 4 V internal 1 ohm from G to C\n"
      "resistor R1 = 1 ohm from T to A\nresistor R2 = 2 ohm from A to G\nresistor R3 = 3 ohm from "
      "T "
      "to B\nresistor R4 = 4 ohm from B to G\nresistor R5 = 5 ohm from A to C\n"
      "find thevenin between A and B\n");
  EXPECT_TRUE(found(s).short_circuit_current.value);
}

TEST(Thevenin, AcrossAnIdealBatteryHasNoResistanceAndNoLimitToTheCurrent) {
  const Solved s(std::string(kDivider) + "find thevenin between T and G\n");
  EXPECT_EQ(found(s).voltage.value.value().number, Number(12));
  EXPECT_EQ(found(s).resistance.value.value().number, Number(0));
  EXPECT_EQ(found(s).short_circuit_current.why, Undetermined::unlimited);
}

TEST(Thevenin, AcrossAWireIsAWire) {
  const Solved s(std::string(kDivider) + "find thevenin between B and G\n");
  EXPECT_EQ(found(s).voltage.value.value().number, Number(0));
  EXPECT_EQ(found(s).short_circuit_current.why, Undetermined::ideal_loop);
}

TEST(Thevenin, BetweenPointsWithoutAPathHasNothing) {
  const Solved s(std::string(kDivider) +
                 "resistor R9 = 1 ohm from X to Y\nfind thevenin between A and X\n");
  EXPECT_EQ(found(s).voltage.why, Undetermined::floating);
  EXPECT_EQ(found(s).resistance.why, Undetermined::no_path);
  EXPECT_FALSE(found(s).short_circuit_current.value);
}

TEST(Thevenin, WithoutSourcesIsAResistor) {
  const Solved s(
      "resistor R1 = 3 ohm from A to B\nresistor R2 = 6 ohm from A to B\n"
      "find thevenin between A and B\n");
  EXPECT_EQ(found(s).voltage.value.value().number, Number(0));
  EXPECT_EQ(found(s).resistance.value.value().number, Number(2));
  EXPECT_EQ(found(s).short_circuit_current.value.value().number, Number(0));
}

TEST(Thevenin, OfACircuitTooLargeToWriteHasItsResistance) {
  SolveOptions small;
  small.most_bits = 0;
  const Solved s(std::string(kDivider) + "find thevenin between A and B\n", small);
  EXPECT_EQ(found(s).voltage.why, Undetermined::too_long);
  EXPECT_EQ(found(s).resistance.value.value().number, Number(2));
  EXPECT_EQ(found(s).short_circuit_current.why, Undetermined::too_long);
}

}  // namespace
}  // namespace ohmfold::test

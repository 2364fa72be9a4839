// Several sources: each alone, and the sum.
#include <gmock/gmock.h>

#include <algorithm>

#include "solve/solved.h"

namespace ohmfold::test {
namespace {

const char* const kSheds =
    "battery E1 = 30 V from G to P\nresistor R1 = 6 ohm from P to A\n"
    "battery E2 = 24 V from G to Q\nresistor R2 = 3 ohm from Q to A\n"
    "resistor R3 = 6 ohm from A to G\n";

SolveOptions by(Method method) {
  SolveOptions options;
  options.method = method;
  return options;
}

Number alone(const Solved& s, std::size_t share, const std::string& name) {
  const CaseTrace& trace = s.only().shares.at(share).alone;
  return trace.branches.at(part(s.problem(), name).index).current.value.value().number;
}

TEST(Superposition, SolvesEachSourceAloneAndAddsWithSigns) {
  const Solved s(kSheds);
  EXPECT_EQ(s.only().kind, Kind::several_sources);
  ASSERT_EQ(s.only().shares.size(), 2U);
  EXPECT_EQ(s.only().shares[0].sources, std::vector{part(s.problem(), "E1")});
  EXPECT_EQ(alone(s, 0, "R1"), fraction(15, 4));
  EXPECT_EQ(alone(s, 0, "E2"), fraction(-5, 2)) << "through the wire in its place";
  EXPECT_EQ(alone(s, 1, "E2"), Number(4));
  EXPECT_EQ(s.current("E1"), fraction(7, 4));
  EXPECT_EQ(s.current("E2"), fraction(3, 2));
  EXPECT_EQ(s.current("R3"), fraction(13, 4));
  EXPECT_EQ(s.voltage("E2"), Number(24));
  EXPECT_EQ(s.power("R3"), fraction(507, 8)) << "not the sum of the powers alone";
}

TEST(Superposition, ReducesAndChecksEachNetwork) {
  const Solved s(kSheds);
  for (const Share& share : s.only().shares) {
    EXPECT_EQ(share.alone.main.stop, Stop::reduced);
    EXPECT_TRUE(share.alone.equivalent->value);
    EXPECT_FALSE(share.alone.returns.empty());
    for (const CheckLaw law : {CheckLaw::step, CheckLaw::current, CheckLaw::node_voltage}) {
      EXPECT_TRUE(std::any_of(share.alone.checks.begin(), share.alone.checks.end(),
                              [&](const Check& check) { return check.law == law && check.holds; }));
    }
  }
}

TEST(Superposition, IsTheLawOfEveryCurrentAndVoltage) {
  const Solved s(kSheds);
  const auto count = std::count_if(s.only().returns.begin(), s.only().returns.end(),
                                   [](const Return& r) { return r.law == Law::superposition; });
  EXPECT_EQ(count, 10);
}

TEST(Superposition, TurnsTheVoltageOfWhatStandsForABattery) {
  const Solved s(
      "battery E1 = 12 V internal 2 ohm from G to T\nbattery E2 = 6 V internal 1 ohm from G to T\n"
      "resistor R = 3 ohm from T to G\n");
  ASSERT_EQ(s.only().shares.size(), 2U);
  EXPECT_EQ(s.voltage("E1"), s.voltage("R"));
  EXPECT_EQ(s.voltage("E2"), s.voltage("R"));
}

TEST(Superposition, ReplacesASourceOfCurrentByAGap) {
  const Solved s(
      "battery E = 12 V from G to T\nresistor R1 = 2 ohm from T to A\nresistor R2 = 4 ohm from A "
      "to "
      "G\nsource J = 3 A from G to A\n");
  ASSERT_EQ(s.only().shares.size(), 2U);
  EXPECT_EQ(s.only().shares[0].alone.main.start.kind(part(s.problem(), "J")),
            ElementKind::switched_off);
  EXPECT_EQ(alone(s, 0, "R1"), Number(2));
  EXPECT_EQ(alone(s, 1, "R1"), Number(-2));
  EXPECT_EQ(s.current("R1"), Number(0));
  EXPECT_EQ(s.current("R2"), Number(3));
  EXPECT_EQ(s.voltage("J"), Number(-12));
}

TEST(Superposition, KeepsTheBatteriesOfAChainTogether) {
  const Solved s(
      "battery E1 = 9 V from G to M\nbattery E2 = 3 V from M to P\nresistor R1 = 6 ohm from P to "
      "A\n"
      "battery E3 = 10 V from G to Q\nresistor R2 = 4 ohm from Q to A\n"
      "resistor R3 = 12 ohm from A to G\n");
  ASSERT_EQ(s.only().shares.size(), 2U);
  EXPECT_EQ(s.only().shares[0].sources.size(), 2U);
  EXPECT_EQ(s.current("R3"), fraction(3, 4));
  EXPECT_EQ(s.current("E2"), fraction(1, 2));
}

TEST(Superposition, GivesWayToNodeVoltagesWhereANetworkDoesNotReduce) {
  const Solved s(
      "battery E1 = 12 V from G to T\nresistor R1 = 1 ohm from T to A\nresistor R2 = 2 ohm from A "
      "to G\nresistor R3 = 3 ohm from T to B\nresistor R4 = 4 ohm from B to G\n"
      "resistor R5 = 5 ohm from A to B\nbattery E2 = 3 V internal 1 ohm from A to B\n");
  EXPECT_EQ(s.only().kind, Kind::several_sources);
  EXPECT_TRUE(s.only().shares.empty());
}

TEST(Superposition, GivesWayWhereIdealBatteriesShareInAnOpenWay) {
  const Solved s(
      "battery E1 = 6 V from G to T\nbattery E2 = 6 V from G to T\nresistor R = 3 ohm from T to "
      "G\n",
      by(Method::superposition));
  EXPECT_TRUE(s.only().shares.empty());
  EXPECT_EQ(s.current("R"), Number(2));
  EXPECT_EQ(s.branch("E1").current.why, Undetermined::ideal_loop);
}

TEST(Superposition, LeavesABatteryOnNoClosedPathItsVoltage) {
  const Solved s(std::string(kSheds) + "battery E3 = 22 V internal 3 ohm from A to X\n");
  ASSERT_EQ(s.only().shares.size(), 2U);
  EXPECT_EQ(s.voltage("E3"), Number(22));
  EXPECT_EQ(s.current("E3"), Number(0));
  EXPECT_EQ(s.potential("X").value.value().number, fraction(83, 2));
}

TEST(Superposition, IsNotTakenWhereNodeVoltagesAreWishedFor) {
  const Solved s(kSheds, by(Method::node_voltage));
  EXPECT_TRUE(s.only().shares.empty());
  EXPECT_EQ(s.current("R3"), fraction(13, 4));
}

TEST(Superposition, LeavesWhatIsNotDeterminedOpen) {
  const Solved s(std::string(kSheds) +
                 "wire W1 from A to B\nwire W2 from A to B\nresistor R4 = 6 ohm from B to G\n"
                 "voltmeter M from B to X\nresistor R5 = 1 ohm from X to Y\n");
  ASSERT_EQ(s.only().shares.size(), 2U);
  EXPECT_EQ(s.branch("W1").current.why, Undetermined::ideal_loop);
  EXPECT_EQ(s.branch("M").voltage.why, Undetermined::floating);
  EXPECT_EQ(s.current("M"), Number(0));
  EXPECT_EQ(s.current("R5"), Number(0));
}

}  // namespace
}  // namespace ohmfold::test

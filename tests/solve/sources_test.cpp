// Batteries in one chain, sources of current, and what cannot be.
#include <gmock/gmock.h>

#include "solve/solved.h"

namespace ohmfold::test {
namespace {

const char* const kCharger =
    "battery E1 = 16 V internal 1 ohm from G to T\nresistor R = 0.4 ohm from T to A\n"
    "battery E2 = 12 V internal 0.6 ohm from G to A\n";

TEST(BatteryChain, ReducesToOneBatteryThatFeedsOnePart) {
  const Solved s(kCharger);
  EXPECT_EQ(s.only().kind, Kind::series_parallel);
  EXPECT_EQ(s.only().main.stop, Stop::reduced);
  EXPECT_EQ(s.only().main.steps[0].rule, RuleName::batteries);
  EXPECT_EQ(s.only().equivalent->value.value().number, fraction(2, 5));
  EXPECT_EQ(s.current("E1"), Number(2));
  EXPECT_EQ(s.current("E2"), Number(-2));
  EXPECT_EQ(s.voltage("E1"), Number(14));
  EXPECT_EQ(s.voltage("E2"), fraction(66, 5));
  EXPECT_EQ(s.power("E2"), fraction(-132, 5));
}

TEST(BatteryChain, OfNothingButBatteriesIsLimitedByTheirInternalResistances) {
  const Solved s(
      "battery E1 = 6 V internal 1 ohm from G to T\nbattery E2 = 3 V internal 2 ohm from G to T\n");
  EXPECT_EQ(s.current("E1"), Number(1));
  EXPECT_EQ(s.current("E2"), Number(-1));
  EXPECT_EQ(s.voltage("E1"), Number(5));
  EXPECT_TRUE(s.only().cautions.empty()) << "no battery is short-circuited by a wire";
}

TEST(BatteryChain, FoundOnlyAfterParallelResistorsHaveBecomeOne) {
  const Solved s(
      "battery E1 = 9 V from G to A\nresistor R1 = 6 ohm from A to B\n"
      "resistor R2 = 3 ohm from A to B\nbattery E2 = 3 V from B to C\n"
      "resistor R3 = 4 ohm from C to G\n");
  EXPECT_EQ(s.only().main.stop, Stop::reduced);
  EXPECT_EQ(s.current("E2"), Number(2));
  EXPECT_EQ(s.current("R2"), fraction(4, 3));
}

TEST(BatteryChain, BesideAnEqualIdealBatteryLeavesEveryShareOpen) {
  const Solved s(
      "battery E1 = 4 V from G to M\nbattery E2 = 5 V from M to T\nbattery E3 = 9 V from G to T\n"
      "resistor R = 3 ohm from T to G\n");
  for (const char* name : {"E1", "E2", "E3"}) {
    EXPECT_EQ(s.branch(name).current.why, Undetermined::ideal_loop) << name;
    EXPECT_FALSE(s.branch(name).current.value) << name;
  }
  EXPECT_EQ(s.current("R"), Number(3));
  EXPECT_TRUE(s.only().shares.empty());
}

TEST(BatteryChain, IsAddedAtOnceAlsoWhereResistorsAreTakenTwoAtATime) {
  SolveOptions pairs;
  pairs.pairs = true;
  const char* const text =
      "battery E1 = 1 V from A to B\nbattery E2 = 2 V from B to C\nbattery E3 = 4 V from D to C\n"
      "battery E4 = 8 V from D to E\nresistor R = 7 ohm from E to A\n";
  const Solved s(text, pairs);
  EXPECT_EQ(s.only().main.steps.size(), 1U);
  EXPECT_EQ(s.current("R"), Number(1));
  EXPECT_EQ(s.current("E3"), Number(-1));
}

TEST(BatteryChain, OfManyAsksForNoResistancesByItself) {
  std::string text = "resistor R = 1 ohm from P13 to P0\n";
  for (int i = 0; i < 13; ++i) {
    text += "battery E" + std::to_string(i) + " = 1 V from P" + std::to_string(i) + " to P" +
            std::to_string(i + 1) + "\n";
  }
  EXPECT_EQ(Solved(text).only().answers.size(), 3U * 14U);
  EXPECT_EQ(Solved(text).current("R"), Number(13));
}

TEST(BatteryChain, TooLargeToWriteStillFindsWhatIsAskedFor) {
  SolveOptions small;
  small.most_bits = 0;
  const Solved s(std::string(kCharger) +
                     "find current through E2\nfind voltage across E2\n"
                     "find current through R\n",
                 small);
  EXPECT_FALSE(s.only().complete);
  EXPECT_EQ(s.answer(0).value.value().number, Number(-2));
  EXPECT_EQ(s.answer(1).value.value().number, fraction(66, 5));
  EXPECT_EQ(s.answer(2).value.value().number, Number(2));
}

const char* const kBench =
    "source J = 2 A from G to A\nresistor R1 = 4 ohm from A to G\nresistor R2 = 5 ohm from A to B\n"
    "resistor R3 = 7 ohm from B to G\n";

TEST(CurrentSource, FeedsWhatReducesWithItsGivenCurrent) {
  const Solved s(kBench);
  EXPECT_EQ(s.only().kind, Kind::series_parallel);
  EXPECT_EQ(s.only().main.stop, Stop::reduced);
  EXPECT_EQ(s.only().equivalent->value.value().number, Number(3));
  EXPECT_EQ(s.current("J"), Number(2));
  EXPECT_EQ(s.current("R1"), fraction(3, 2));
  EXPECT_EQ(s.current("R3"), fraction(1, 2));
  EXPECT_EQ(s.only().returns.front().law, Law::given_current);
}

TEST(CurrentSource, CountsItsVoltageFirstLessSecondAndItsPowerAsDelivered) {
  const Solved s(kBench);
  EXPECT_EQ(s.voltage("J"), Number(-6));
  EXPECT_EQ(s.power("J"), Number(12));
}

TEST(CurrentSource, MayTakeUpPower) {
  const Solved s(
      "source J = 1 A from T to G\nbattery E = 6 V from G to T\nresistor R = 3 ohm from T to G\n");
  EXPECT_EQ(s.current("E"), Number(3));
  EXPECT_EQ(s.voltage("J"), Number(6));
  EXPECT_EQ(s.power("J"), Number(-6));
}

TEST(CurrentSource, AnswersQuestionsAboutItAlsoInCases) {
  const Solved s(std::string(kBench) +
                 "case \"more\": J = 4 A\ncase \"out\": J removed\ncase \"wire\": J shorted\n"
                 "find current through J\nfind voltage across J\nfind power in J\n"
                 "find resistance seen by J\n");
  EXPECT_EQ(s.answer(0, 0).value.value().number, Number(4));
  EXPECT_EQ(s.answer(1, 0).value.value().number, Number(-12));
  EXPECT_EQ(s.answer(2, 0).value.value().number, Number(48));
  EXPECT_EQ(s.answer(3, 0).value.value().number, Number(3));
  EXPECT_EQ(s.answer(0, 1).why, Undetermined::taken_out);
  EXPECT_EQ(s.answer(0, 2).value.value().number, Number(0));
}

TEST(CurrentSource, OnABridgeKeepsItsCurrentAndSeesItsResistance) {
  const Solved s(
      "source J = 1 A from G to T\nresistor R1 = 1 ohm from T to A\nresistor R2 = 2 ohm from A to "
      "G\nresistor R3 = 3 ohm from T to B\nresistor R4 = 4 ohm from B to G\n"
      "resistor R5 = 5 ohm from A to B\n");
  EXPECT_EQ(s.only().kind, Kind::bridge);
  EXPECT_EQ(s.only().equivalent->value.value().number, -s.voltage("J"));
  EXPECT_EQ(s.current("R1") + s.current("R3"), Number(1));
}

TEST(CurrentSource, AcrossAWireDrivesItsCurrentThroughIt) {
  const Solved s(
      "source J = 2 A from G to T\nwire W from T to G\nresistor R = 1 ohm from T to G\n");
  EXPECT_EQ(s.current("W"), Number(2));
  EXPECT_EQ(s.current("R"), Number(0));
  EXPECT_EQ(s.power("J"), Number(0));
}

TEST(CurrentSource, OfZeroAmpereIsAGapWithAVoltage) {
  const Solved s(
      "battery E = 6 V from G to T\nresistor R = 3 ohm from T to A\nsource J = 0 A from A to G\n");
  EXPECT_EQ(s.current("R"), Number(0));
  EXPECT_EQ(s.voltage("J"), Number(6));
}

TEST(CurrentSource, InALadderTooLargeToWriteStillFindsWhatIsAskedFor) {
  SolveOptions small;
  small.most_bits = 0;
  const Solved s(std::string(kBench) + "find current through R3\nfind power in R1\n", small);
  EXPECT_EQ(s.answer(0).value.value().number, fraction(1, 2));
  EXPECT_EQ(s.answer(1).value.value().number, Number(9));
}

TEST(CurrentSources, OneAfterTheOtherOfEqualCurrentLeaveThePointBetweenOpen) {
  const Solved s(
      "source J1 = 2 A from G to A\nsource J2 = 2 A from A to T\nresistor R = 3 ohm from T to G\n");
  EXPECT_EQ(s.current("R"), Number(2));
  EXPECT_FALSE(s.branch("J1").voltage.value);
  EXPECT_FALSE(s.branch("J1").power.value);
  EXPECT_FALSE(s.potential("A").value);
}

std::optional<Contradiction> contradiction_of(const std::string& text) {
  return Solved(text).only().contradiction;
}

TEST(CurrentSources, WithoutAWayBackContradictThemselves) {
  const auto open =
      contradiction_of("source J = 2 A from G to T\nresistor R = 1 ohm from T to A\n");
  ASSERT_TRUE(open);
  EXPECT_EQ(open->kind, ContradictionKind::current_blocked);
  EXPECT_EQ(open->loop.size(), 1U);
  EXPECT_EQ(open->surplus.number, Number(2));
}

TEST(CurrentSources, OneAfterTheOtherOfUnequalCurrentContradictEachOther) {
  const auto found = contradiction_of(
      "source J1 = 2 A from G to A\nsource J2 = 3 A from A to T\nresistor R = 1 ohm from T to G\n");
  ASSERT_TRUE(found);
  EXPECT_EQ(found->kind, ContradictionKind::current_blocked);
  EXPECT_EQ(found->loop.size(), 2U);
  EXPECT_EQ(found->surplus.number, Number(1));
}

TEST(CurrentSources, BesideEachOtherAddAndMayFeedALoopOfThemselves) {
  const Solved s(
      "source J1 = 2 A from G to T\nsource J2 = 1 A from T to G\nresistor R = 3 ohm from T to G\n");
  EXPECT_EQ(s.current("R"), Number(1));
  const Solved ring("source J1 = 2 A from G to T\nsource J2 = 2 A from T to G\n");
  EXPECT_FALSE(ring.only().contradiction);
  EXPECT_FALSE(ring.branch("J1").voltage.value);
}

std::vector<RemarkKind> remarks(const Solved& s, std::size_t i = 0) {
  std::vector<RemarkKind> kinds;
  for (const Remark& remark : s.at(i).remarks) kinds.push_back(remark.kind);
  return kinds;
}

TEST(Remarks, SayWhichBatteryIsChargedAndWhichDeliversNothing) {
  const Solved s(
      std::string(kCharger) +
      "case \"low\": E2 = 12 V\ncase \"full\": E2 = 16 V\ncase \"turned\": E2 = -12 V\n");
  EXPECT_THAT(remarks(s, 0), testing::ElementsAre(RemarkKind::battery_charged));
  EXPECT_EQ(s.at(0).remarks[0].part, part(s.problem(), "E2"));
  EXPECT_EQ(s.at(0).remarks[0].value, Quantity(Number(2), Unit::ampere));
  EXPECT_THAT(remarks(s, 1),
              testing::ElementsAre(RemarkKind::battery_idle, RemarkKind::battery_idle));
  EXPECT_TRUE(remarks(s, 2).empty());
}

TEST(Remarks, AreNotMadeOfOneBatteryInAnOpenCircuit) {
  EXPECT_TRUE(
      remarks(Solved("battery E = 6 V from G to T\nresistor R = 1 ohm from T to A\n")).empty());
}

}  // namespace
}  // namespace ohmfold::test

// What the ideal model fixes and what it leaves open; directions; and each kind of case.
#include <gmock/gmock.h>

#include "solve/solved.h"

namespace ohmfold::test {
namespace {

TEST(Results, KeepEveryPartsOwnSign) {
  const Solved s(
      "battery E = 12 V from G to T\nresistor R1 = 2 ohm from A to T\n"
      "resistor R2 = 4 ohm from A to G\n");
  EXPECT_EQ(s.current("E"), Number(2));
  EXPECT_EQ(s.current("R1"), Number(-2));
  EXPECT_EQ(s.current("R2"), Number(2));
  EXPECT_EQ(s.voltage("R1"), Number(-4));
}

TEST(Results, AnAmmeterReadsTheCurrentOfItsOwnBranchAfterItsPointsWereMerged) {
  const Solved s(
      "battery E = 12 V from G to T\nresistor R1 = 6 ohm from T to A\nammeter M from A to G\n"
      "resistor R2 = 3 ohm from T to G\n");
  EXPECT_EQ(s.current("M"), Number(2));
  EXPECT_EQ(s.voltage("M"), Number(0));
}

TEST(Results, TwoWiresInParallelShareTheirCurrentInAWayThatIsNotDetermined) {
  const Solved s(
      "battery E = 12 V from G to T\nresistor R1 = 6 ohm from T to A\nwire W1 from A to B\n"
      "wire W2 from A to B\nwire W3 from B to G\n");
  EXPECT_FALSE(s.branch("W1").current.value);
  EXPECT_EQ(s.branch("W1").current.why, Undetermined::ideal_loop);
  EXPECT_FALSE(s.branch("W2").current.value);
  EXPECT_EQ(s.current("W3"), Number(2));
  EXPECT_EQ(s.branch("W1").power.value.value().number, Number(0));
}

TEST(Results, AFarEndBehindAnOpenSwitchHasThePotentialOfTheEndThatIsJoined) {
  const Solved s(
      "battery E = 12 V from G to T\nresistor R1 = 6 ohm from T to G\n"
      "resistor R2 = 1 ohm from T to A\nswitch S from A to G\ncase \"open\": S open\n"
      "find voltage across S\n");
  EXPECT_EQ(s.current("R2"), Number(0));
  EXPECT_EQ(s.potential("A").value.value().number, Number(12));
  EXPECT_EQ(s.answer(0).value.value().number, Number(12));
}

TEST(Results, APieceJoinedToNothingHasNoPotential) {
  const Solved s(
      "battery E = 12 V from G to T\nresistor R1 = 6 ohm from T to G\n"
      "resistor R2 = 1 ohm from P to Q\nfind voltage from P to Q\nfind voltage from T to P\n");
  EXPECT_EQ(s.potential("P").why, Undetermined::floating);
  EXPECT_FALSE(s.potential("P").value);
  EXPECT_EQ(s.answer(0).value.value().number, Number(0));
  EXPECT_FALSE(s.answer(1).value);
}

TEST(Results, AShortedBatteryWithInternalResistanceDrivesItsShortCircuitCurrent) {
  const Solved s(
      "battery E = 12 V internal 0.5 ohm from G to T\nresistor R1 = 6 ohm from T to G\n"
      "wire W from T to G\n");
  EXPECT_EQ(s.only().kind, Kind::series_parallel);
  EXPECT_EQ(s.current("E"), Number(24));
  EXPECT_EQ(s.current("W"), Number(24));
  EXPECT_EQ(s.current("R1"), Number(0));
  EXPECT_EQ(s.voltage("E"), Number(0));
  EXPECT_EQ(s.only().equivalent->value.value().number, Number(0));
}

TEST(Results, AnOpenCircuitHasTheFullVoltageAcrossTheGap) {
  const Solved s(
      "battery E = 12 V internal 1 ohm from G to T\nresistor R1 = 6 ohm from T to A\n"
      "switch S from A to G\ncase \"open\": S open\n");
  EXPECT_EQ(s.only().kind, Kind::open_circuit);
  EXPECT_EQ(s.voltage("S"), Number(12));
  EXPECT_EQ(s.voltage("E"), Number(12));
  EXPECT_EQ(s.current("E"), Number(0));
  EXPECT_EQ(s.only().equivalent->why, Undetermined::no_path);
}

TEST(Results, ASwitchWithoutCasesGivesBothItsStates) {
  const Solved s(
      "battery E = 12 V from G to T\nresistor R1 = 6 ohm from T to G\n"
      "resistor R2 = 6 ohm from T to A\nswitch S from A to G\n");
  EXPECT_EQ(s.current("E", 0), Number(2));
  EXPECT_EQ(s.current("E", 1), Number(4));
  EXPECT_EQ(s.current("S", 1), Number(2));
}

TEST(Results, ABridgeIsNamedAndStillAnswered) {
  // Kuphaldt, Lessons In Electric Circuits, vol. I, ch. 10, delta-Y section.
  const Solved s(
      "battery E = 10 V from G to A\nresistor R1 = 12 ohm from A to B\n"
      "resistor R2 = 18 ohm from A to C\nresistor R3 = 6 ohm from C to B\n"
      "resistor R4 = 18 ohm from B to G\nresistor R5 = 12 ohm from C to G\n");
  EXPECT_EQ(s.only().kind, Kind::bridge);
  EXPECT_EQ(s.only().main.left.size(), 6U);
  EXPECT_EQ(s.only().equivalent->value.value().number, fraction(102, 7));
  EXPECT_EQ(s.current("E"), fraction(35, 51));
  EXPECT_EQ(s.current("R3"), fraction(-5, 51));
}

TEST(Results, SeveralBatteriesAreAnsweredByNodeVoltages) {
  // OpenStax, College Physics 2e, sec. 21.3, worked example on Kirchhoff's rules.
  const Solved s(
      "resistor R1 = 6 ohm from e to a\nresistor R2 = 3 ohm from a to p\n"
      "battery B1 = 18 V from p to e\nresistor R3 = 2 ohm from a to q\nbattery B2 = 45 V from q to "
      "e\n");
  EXPECT_EQ(s.only().kind, Kind::several_sources);
  EXPECT_FALSE(s.only().equivalent);
  EXPECT_EQ(s.current("R1"), fraction(19, 4));
  EXPECT_EQ(s.current("R2"), fraction(-7, 2));
  EXPECT_EQ(s.current("R3"), fraction(33, 4));
}

TEST(Results, EqualIdealBatteriesInParallelShareInAWayThatIsNotDetermined) {
  const Solved s(
      "battery E1 = 6 V from G to T\nbattery E2 = 6 V from G to T\nresistor R = 3 ohm from T to "
      "G\n");
  EXPECT_EQ(s.current("R"), Number(2));
  EXPECT_EQ(s.branch("E1").current.why, Undetermined::ideal_loop);
  EXPECT_FALSE(s.branch("E1").power.value);
}

TEST(Results, ABatteryOfZeroVoltAcrossAWireSharesAsTwoWiresWould) {
  const Solved s(
      "battery E = 0 V from G to T\nresistor R = 0 ohm from T to G\nresistor Q = 1 ohm from T to "
      "G\n");
  EXPECT_FALSE(s.only().contradiction);
  EXPECT_EQ(s.branch("E").current.why, Undetermined::ideal_loop);
  EXPECT_FALSE(s.branch("R").current.value);
  EXPECT_EQ(s.current("Q"), Number(0));
}

TEST(Results, TwoEqualBatteriesJoinedByAWireLeaveTheWiresCurrentOpenToo) {
  const Solved s(
      "battery E1 = 3 V from A to T\nbattery E2 = 3 V from B to T\nwire W from A to B\n"
      "resistor R = 3 ohm from T to A\n");
  EXPECT_EQ(s.branch("W").current.why, Undetermined::ideal_loop);
  EXPECT_EQ(s.branch("E1").current.why, Undetermined::ideal_loop);
  EXPECT_EQ(s.current("R"), Number(1));
}

TEST(Contradiction, AnIdealBatteryAcrossAWireNamesTheLoopAndSparesOtherCases) {
  const Solved s(
      "battery E = 12 V from G to T\nresistor R = 3 ohm from T to G\nwire W from T to A\n"
      "switch S from A to G\n");
  EXPECT_FALSE(s.at(0).contradiction);
  ASSERT_TRUE(s.at(1).contradiction);
  const Contradiction& found = *s.at(1).contradiction;
  EXPECT_EQ(found.kind, ContradictionKind::battery_shorted);
  EXPECT_EQ(found.remainder.number, Number(12));
  EXPECT_EQ(found.loop.front(), part(s.problem(), "E"));
  EXPECT_EQ(found.loop.size(), 3U);
  EXPECT_EQ(found.points.size(), 3U);
  EXPECT_EQ(s.current("E", 0), Number(4));
}

TEST(Contradiction, UnequalIdealBatteriesInParallelLeaveTheDifferenceOver) {
  const Solved s(
      "battery E1 = 12 V from G to T\nbattery E2 = 9 V from G to T\nresistor R = 3 ohm from T to "
      "G\n");
  ASSERT_TRUE(s.only().contradiction);
  EXPECT_EQ(s.only().contradiction->kind, ContradictionKind::batteries_disagree);
  EXPECT_EQ(s.only().contradiction->remainder.number, Number(3));
}

TEST(Answers, ResistancesLiftOutTheSources) {
  const Solved s(
      "battery E1 = 12 V internal 1 ohm from G to T\nresistor R1 = 6 ohm from T to A\n"
      "resistor R2 = 3 ohm from A to G\nbattery E2 = 3 V internal 6 ohm from G to A\n"
      "resistor R3 = 1 ohm from P to Q\n"
      "find resistance between T and G\nfind resistance seen by E1\n"
      "find resistance between T and P\n");
  EXPECT_EQ(s.answer(0).value.value().number, Number(9));
  EXPECT_EQ(s.answer(1).value.value().number, Number(8));
  EXPECT_EQ(s.answer(2).why, Undetermined::no_path);
}

TEST(Answers, WithoutABatteryTheFirstResistanceIsTheMainReduction) {
  const Solved s(
      "resistor R1 = 6 ohm from A to B\nresistor R2 = 3 ohm from A to B\n"
      "find resistance between A and B\n");
  EXPECT_EQ(s.only().kind, Kind::no_source);
  EXPECT_EQ(s.only().main.steps.size(), 1U);
  EXPECT_EQ(s.answer(0).value.value().number, Number(2));
  EXPECT_FALSE(s.only().answers[0].shown_by);
}

TEST(Answers, WithoutAQuestionAskForEverything) {
  const Solved s("battery E = 12 V from G to T\nresistor R1 = 6 ohm from T to G\n");
  ASSERT_EQ(s.only().answers.size(), 7U);
  EXPECT_TRUE(std::holds_alternative<ResistanceSeenBy>(s.only().answers[0].question));
}

TEST(Cautions, NameTheWorstPartOnceForEachDanger) {
  const Solved s(
      "battery E = 100 V internal 0.1 ohm from G to T\nresistor R1 = 2 ohm from T to A\n"
      "resistor R2 = 3 ohm from A to G\n");
  ASSERT_EQ(s.only().cautions.size(), 3U);
  EXPECT_EQ(s.only().cautions[0].kind, CautionKind::part_power);
  EXPECT_EQ(s.only().cautions[0].part, part(s.problem(), "R2"));
  EXPECT_EQ(s.only().cautions[1].kind, CautionKind::high_voltage);
  EXPECT_EQ(s.only().cautions[2].kind, CautionKind::battery_current);
}

TEST(Cautions, AreAbsentFromAHarmlessCircuit) {
  const Solved s("battery E = 1 V from G to T\nresistor R1 = 100 ohm from T to G\n");
  EXPECT_TRUE(s.only().cautions.empty());
}

TEST(Stages, ShowAllThatCanBeSeenAtOnceInOneRedraw) {
  const Solved s(
      "battery E = 12 V from G to T\nresistor R1 = 1 ohm from T to A\nresistor R2 = 1 ohm from A "
      "to B\n"
      "resistor R3 = 1 ohm from B to G\nresistor R4 = 1 ohm from B to G\n"
      "resistor R5 = 1 ohm from T to G\nwire W from G to H\n");
  const StepLog& steps = s.only().main.steps;
  std::vector<std::pair<std::uint32_t, RuleName>> seen;
  for (std::size_t i = 0; i < steps.size(); ++i) seen.emplace_back(steps[i].stage, steps[i].rule);
  using testing::Pair;
  EXPECT_THAT(seen, testing::ElementsAre(Pair(1, RuleName::ideal_wire), Pair(2, RuleName::series),
                                         Pair(2, RuleName::parallel), Pair(3, RuleName::series),
                                         Pair(4, RuleName::parallel)));
}

TEST(Budget, ALargeCaseKeepsWhatIsAskedAndSaysThatTheRestIsLeftOut) {
  SolveOptions options;
  options.most_bits = 0;
  const Solved s(
      "battery E = 12 V from G to T\nresistor R1 = 6 ohm from T to G\n"
      "resistor R2 = 3 ohm from T to G\n",
      options);
  EXPECT_FALSE(s.only().complete);
  EXPECT_TRUE(s.only().branches.empty());
  ASSERT_EQ(s.only().answers.size(), 2U);
  EXPECT_EQ(s.answer(0).value.value().number, Number(2));
  EXPECT_EQ(s.answer(1).value.value().number, Number(6));
}

}  // namespace
}  // namespace ohmfold::test

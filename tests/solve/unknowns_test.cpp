// Unknown values found from what is given: roots, their fates, and circuits that leave them open.

#include <gtest/gtest.h>

#include "ohmfold/solve.h"
#include "ohmfold/unknown.h"
#include "support/circuit.h"

namespace ohmfold {
namespace {

using test::problem_of;

/// 12 V, R1 of 4 Ω and the unknown X in series.
std::string series(const std::string& given) {
  return "battery E = 12 V from G to T\nresistor R1 = 4 ohm from T to A\n"
         "resistor X = unknown from A to G\n" +
         given + "\nfind X\nfind current through E\n";
}

Trace solved(const std::string& text) {
  return solve(problem_of(text));
}

/// The first answer of each case that is a number.
std::vector<Number> first_answers(const Trace& trace) {
  std::vector<Number> answers;
  for (const CaseTrace& one : trace.cases) {
    if (!one.answers.empty() && one.answers[0].value.value) {
      answers.push_back(one.answers[0].value.value->number);
    }
  }
  return answers;
}

UnknownOutcome outcome(const Trace& trace) {
  return trace.cases.front().unknown->outcome;
}

TEST(Unknown, ResistanceFollowsFromAnyQuantity) {
  for (const char* given :
       {"given current through E = 2 A", "given voltage across R1 = 8 V",
        "given voltage from T to A = 8 V", "given potential at A = 4 V", "given power in R1 = 16 W",
        "given resistance seen by E = 6 ohm", "given resistance between T and G = 6 ohm",
        "given voltage across X = 4 V", "given power in E = 24 W"}) {
    EXPECT_EQ(first_answers(solved(series(given))), std::vector<Number>{2}) << given;
  }
}

TEST(Unknown, HasTheBilinearFormOnRecord) {
  const Trace trace = solved(series("given current through E = 2 A"));
  const UnknownSolution& unknown = *trace.cases[0].unknown;
  ASSERT_EQ(unknown.equations.size(), 1U);
  EXPECT_EQ(unknown.equations[0].form.value->number.to_string(), "12/(X + 4)");
  EXPECT_EQ(unknown.equations[0].collected.to_string(), "X - 2");
  ASSERT_TRUE(unknown.last);
  ASSERT_EQ(unknown.roots.size(), 1U);
  EXPECT_EQ(unknown.roots[0].fate, RootFate::fits);
  EXPECT_FALSE(trace.cases[0].checks.empty());
  EXPECT_EQ(trace.problem->cases[0].settings.size(), 1U);
  EXPECT_TRUE(trace.problem->cases[0].settings[0].found);
}

TEST(Unknown, CanHaveTwoValuesFromAPower) {
  const Trace trace = solved(series("given power in X = 8 W"));
  EXPECT_EQ(first_answers(trace), (std::vector<Number>{2, 8}));
  ASSERT_EQ(trace.cases.size(), 2U);
  EXPECT_EQ(trace.cases[0].name, "X = 2 Ω");
  EXPECT_EQ(trace.cases[1].name, "X = 8 Ω");
  EXPECT_EQ(trace.cases[0].unknown, trace.cases[1].unknown);
  EXPECT_EQ(trace.problem->cases[1].solution, 2U);
}

TEST(Unknown, TakesUpMostPowerAtASingleValue) {
  EXPECT_EQ(first_answers(solved(series("given power in X = 9 W"))), std::vector<Number>{4});
}

TEST(Unknown, CanBeIrrational) {
  const Trace trace = solved(series("given power in X = 6 W"));  // X = 8 ± 4√3
  ASSERT_EQ(trace.cases.size(), 2U);
  for (const CaseTrace& one : trace.cases) {
    EXPECT_TRUE(one.only_answers);
    ASSERT_EQ(one.answers.size(), 2U);
    const Surd& value = *one.answers[0].irrational;
    EXPECT_EQ(value.rational(), Number(8));
    EXPECT_EQ(abs(value.factor()), Number(4));
    EXPECT_EQ(value.radicand(), Number(3));
    const Surd& current = *one.answers[1].irrational;
    EXPECT_EQ(current * (value + Surd(Number(4))), Surd(Number(12)));
  }
  EXPECT_FALSE(trace.has_contradiction());
}

TEST(Unknown, HasNoValueWhereNoneFits) {
  const Trace too_large = solved(series("given current through E = 5 A"));
  EXPECT_EQ(outcome(too_large), UnknownOutcome::no_value);
  EXPECT_TRUE(too_large.has_contradiction());
  EXPECT_EQ(too_large.cases[0].unknown->roots[0].fate, RootFate::not_positive);
  EXPECT_FALSE(too_large.cases[0].unknown->gap_would_do);
  // More than a part can take up here: 9 W.
  const Trace power = solved(series("given power in X = 10 W"));
  EXPECT_EQ(outcome(power), UnknownOutcome::no_value);
  EXPECT_TRUE(power.cases[0].unknown->roots.empty());
}

TEST(Unknown, IsOnlyAWireOrAGapAtTheEnds) {
  const Trace wire = solved(series("given current through E = 3 A"));
  EXPECT_EQ(outcome(wire), UnknownOutcome::no_value);
  EXPECT_TRUE(wire.cases[0].unknown->roots[0].values[0].is_zero());
  EXPECT_FALSE(wire.cases[0].unknown->gap_would_do);
  const Trace gap = solved(series("given current through E = 0 A"));
  EXPECT_EQ(outcome(gap), UnknownOutcome::no_value);
  EXPECT_TRUE(gap.cases[0].unknown->gap_would_do);
}

TEST(Unknown, IsNotDeterminedWhereItCancelsOut) {
  const std::string parallel =
      "battery E = 12 V from G to T\nresistor R1 = 4 ohm from T to G\n"
      "lamp X = unknown from T to G\nfind X\nfind power in R1\nfind current through E\n";
  const Trace open = solved(parallel + "given current through R1 = 3 A\n");
  EXPECT_EQ(outcome(open), UnknownOutcome::any_value);
  EXPECT_FALSE(open.has_contradiction());
  const std::vector<Answer>& answers = open.cases[0].answers;
  ASSERT_EQ(answers.size(), 3U);
  EXPECT_EQ(answers[0].value.why, Undetermined::any_value);
  EXPECT_EQ(answers[1].value.value->number, Number(36));
  EXPECT_EQ(answers[2].value.why, Undetermined::any_value);
  const Trace wrong = solved(parallel + "given current through R1 = 2 A\n");
  EXPECT_EQ(outcome(wrong), UnknownOutcome::no_value);
}

TEST(Unknown, IsNotDeterminedInADeadEndOrBehindAnOpenSwitch) {
  const Trace trace = solved(
      "battery E = 12 V from G to T\nresistor R1 = 4 ohm from T to G\n"
      "lamp X = unknown from T to A\nswitch S from A to G\nresistor D = 2 ohm from A to B\n"
      "given current through E = 5 A\nfind X\n");
  ASSERT_EQ(trace.cases.size(), 2U);
  EXPECT_EQ(outcome(trace), UnknownOutcome::no_value);  // open: 3 A whatever X is
  EXPECT_TRUE(trace.cases[0].contradiction);
  EXPECT_EQ(trace.cases[1].answers[0].value.value->number, Number(6));
}

TEST(Unknown, BatteryFollowsFromACurrent) {
  const Trace trace = solved(
      "battery E = unknown internal 1 ohm from G to T\nresistor R1 = 5 ohm from T to G\n"
      "given current through R1 = 2 A\nfind E\nfind voltage across E\n");
  EXPECT_EQ(first_answers(trace), std::vector<Number>{12});
  EXPECT_EQ(trace.cases[0].answers[1].value.value->number, Number(10));
}

TEST(Unknown, BatteryStandsAsWrittenUnlessOnlyTheOtherWayFits) {
  const std::string battery =
      "battery E = unknown from G to T\nresistor R1 = 4 ohm from T to G\nfind E\n";
  const Trace power = solved(battery + "given power in R1 = 9 W\n");
  EXPECT_EQ(first_answers(power), std::vector<Number>{6});
  EXPECT_EQ(power.cases[0].unknown->roots[0].fate, RootFate::turned_round);
  EXPECT_EQ(first_answers(solved(battery + "given current through R1 = -2 A\n")),
            std::vector<Number>{-8});
  EXPECT_EQ(first_answers(solved(battery + "given current through R1 = 0 A\n")),
            std::vector<Number>{0});
}

TEST(Unknown, KeepsItsValueInAllCasesWhereTheGivensNameTheirs) {
  const Trace trace = solved(
      "battery E = unknown from G to T\nresistor R = unknown from T to A\n"
      "resistor R2 = 3 ohm from A to G\nswitch S from A to G\n"
      "given current through E = 2 A in case \"S closed\"\n"
      "given current through E = 1 A in case \"S open\"\nfind E\nfind R\nfind power in R\n");
  ASSERT_EQ(trace.cases.size(), 2U);
  for (const CaseTrace& one : trace.cases) {
    EXPECT_EQ(one.answers[0].value.value->number, Number(6));
    EXPECT_EQ(one.answers[1].value.value->number, Number(3));
  }
  EXPECT_EQ(trace.cases[0].answers[2].value.value->number, Number(3));
  EXPECT_EQ(trace.cases[1].answers[2].value.value->number, Number(12));
}

TEST(Unknown, IsFoundInEachCaseByItselfOtherwise) {
  const Trace trace = solved(
      "battery E = 12 V from G to T\nresistor X = unknown from T to A\n"
      "resistor R2 = 3 ohm from A to G\nswitch S from A to G\n"
      "given current through E = 2 A\nfind X\n");
  EXPECT_EQ(first_answers(trace), (std::vector<Number>{3, 6}));
}

TEST(Unknown, TwoOfThemComeFromTwoGivens) {
  const Trace trace = solved(
      "battery E = 12 V from G to T\nresistor X = unknown from T to A\n"
      "resistor Y = unknown from A to G\nresistor Z = 6 ohm from A to G\n"
      "given voltage across X = 8 V\ngiven current through E = 2 A\nfind X\nfind Y\n");
  EXPECT_EQ(trace.cases[0].answers[0].value.value->number, Number(4));
  EXPECT_EQ(trace.cases[0].answers[1].value.value->number, Number(3));
}

TEST(Unknown, MoreGivensThanNeededAreCheckedAndChoose) {
  const std::string power = "given power in X = 8 W\n";
  EXPECT_EQ(first_answers(solved(series(power + "given voltage across X = 8 V"))),
            std::vector<Number>{8});
  const Trace neither = solved(series(power + "given voltage across X = 7 V"));
  EXPECT_EQ(outcome(neither), UnknownOutcome::no_value);
  EXPECT_EQ(neither.cases[0].unknown->roots[0].fate, RootFate::other_given);
}

TEST(Unknown, IsRefusedWhereTheEquationsAreEntangled) {
  const Trace trace = solved(
      "battery E = 12 V from G to T\nresistor X = unknown from T to A\n"
      "resistor Y = unknown from A to G\nresistor Z = 6 ohm from A to G\n"
      "given power in X = 8 W\ngiven power in Z = 2 W\nfind X\n");
  EXPECT_EQ(outcome(trace), UnknownOutcome::too_entangled);
  EXPECT_TRUE(trace.has_contradiction());
}

TEST(Unknown, IsRefusedInALoopOfIdealParts) {
  const Trace trace = solved(
      "battery E = unknown from G to T\nbattery F = 9 V from G to T\n"
      "resistor R1 = 4 ohm from T to G\ngiven current through R1 = 2 A\nfind E\n");
  EXPECT_EQ(outcome(trace), UnknownOutcome::ideal_loop);
  EXPECT_TRUE(trace.has_contradiction());
}

TEST(Unknown, LeavesACaseThatContradictsItselfToItsOwnWords) {
  const Trace trace = solved(
      "battery E = 12 V from G to T\nresistor X = unknown from T to G\nswitch S from T to G\n"
      "given current through E = 2 A\nfind X\n");
  ASSERT_EQ(trace.cases.size(), 2U);
  EXPECT_EQ(first_answers(trace), std::vector<Number>{6});
  EXPECT_EQ(trace.cases[1].contradiction->kind, ContradictionKind::battery_shorted);
}

TEST(Unknown, NeedsAGivenThatTheCircuitDetermines) {
  const Trace trace = solved(
      "battery E = 12 V from G to T\nresistor X = unknown from T to A\nwire W1 from A to G\n"
      "wire W2 from A to G\ngiven current through W1 = 2 A\nfind X\n");
  EXPECT_EQ(outcome(trace), UnknownOutcome::given_undetermined);
}

TEST(Unknown, OfAPortIsFoundWithoutABattery) {
  const Trace trace = solved(
      "resistor R1 = 6 ohm from A to B\nresistor X = unknown from A to B\n"
      "given resistance between A and B = 2 ohm\nfind X\n");
  EXPECT_EQ(first_answers(trace), std::vector<Number>{3});
}

TEST(Unknown, OfABridgeIsFound) {
  // Balanced where R1/R2 = R3/X.
  const Trace trace = solved(
      "battery E = 12 V from G to T\nresistor R1 = 1 ohm from T to A\n"
      "resistor R2 = 2 ohm from A to G\nresistor R3 = 3 ohm from T to B\n"
      "lamp X = unknown from B to G\nresistor R5 = 5 ohm from A to B\n"
      "given current through R5 = 0 A\nfind X\n");
  EXPECT_EQ(first_answers(trace), std::vector<Number>{6});
}

TEST(Unknown, ValuesStandAmongAllAnswersWhereNothingIsAsked) {
  const Trace trace = solved(
      "battery E = 12 V from G to T\nresistor X = unknown from T to G\n"
      "given current through E = 2 A\n");
  EXPECT_TRUE(std::holds_alternative<ValueOf>(trace.cases[0].answers[0].question));
  EXPECT_EQ(first_answers(trace), std::vector<Number>{6});
}

TEST(Unknown, TakenOutByACaseIsNotFoundThere) {
  const Trace trace = solved(
      "battery E = 12 V from G to T\nresistor X = unknown from T to G\n"
      "resistor R = 6 ohm from T to G\ncase \"whole\": \ncase \"out\": X removed\n"
      "given current through E = 5 A in case \"whole\"\nfind X\nfind current through E\n");
  ASSERT_EQ(trace.cases.size(), 2U);
  EXPECT_EQ(trace.cases[0].answers[0].value.value->number, Number(4));
  EXPECT_EQ(trace.cases[1].answers[0].value.why, Undetermined::taken_out);
  EXPECT_EQ(trace.cases[1].answers[1].value.value->number, Number(2));
}

TEST(Unknown, IsFoundOrRefusedWhateverTheNumbers) {
  EXPECT_EQ(first_answers(solved(series("given current through E = 1e-1000 A"))).size(), 1U);
  EXPECT_EQ(outcome(solved(series("given current through E = 1e1000 A"))),
            UnknownOutcome::no_value);
  EXPECT_EQ(solved(series("given power in X = 1e-1000 W")).cases.size(), 2U);
}

TEST(Unknown, IsRefusedWhereTheEquationsAreTooLong) {
  std::string ladder = "battery E = 12 V from G to T0\nlamp X = unknown from T2000 to G\n";
  for (int i = 0; i < 2000; ++i) {
    const std::string n = std::to_string(i);
    const std::string next = std::to_string(i + 1);
    for (const std::string& word : {std::string("resistor A"), n, std::string(" = 3 ohm from T"), n,
                                    std::string(" to T"), next, std::string("\nresistor B"), n,
                                    std::string(" = 7 ohm from T"), next, std::string(" to G\n")}) {
      ladder += word;
    }
  }
  const Trace trace = solved(ladder + "given current through E = 2 A\nfind X\n");
  EXPECT_TRUE(outcome(trace) == UnknownOutcome::too_long ||
              outcome(trace) == UnknownOutcome::no_value);
  EXPECT_TRUE(trace.has_contradiction());
}

TEST(Unknown, EightOfThemAreFound) {
  std::string circuit = "battery E = 12 V from G to T\n";
  for (int i = 0; i < 8; ++i) {
    const std::string n = std::to_string(i);
    for (const std::string& word :
         {std::string("resistor X"), n, std::string(" = unknown from T to P"), n,
          std::string("\nresistor R"), n, std::string(" = 2 ohm from P"), n,
          std::string(" to G\ngiven voltage across R"), n, std::string(" = 3 V\n")}) {
      circuit += word;
    }
  }
  const Trace trace = solved(circuit + "find X7\n");
  EXPECT_EQ(first_answers(trace), std::vector<Number>{6});
}

TEST(Unknown, StandsBesideSymbolsThatHaveValues) {
  const Trace trace = solved(
      "symbol r = 2 ohm\nbattery E = 12 V from G to T\nresistor R1 = 2 r from T to A\n"
      "resistor X = unknown from A to G\ngiven current through E = 2 A\nfind X\n");
  EXPECT_EQ(first_answers(trace), std::vector<Number>{2});
}

}  // namespace
}  // namespace ohmfold

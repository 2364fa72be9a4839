// How a worked solution tells of several sources, of sources of current, and of two terminals.
#include <gmock/gmock.h>

#include "samples.h"

namespace ohmfold {
namespace {

using testing::HasSubstr;
using testing::Not;

std::string text_of(const std::string& circuit) {
  return render_text(test::trace_of(circuit));
}

const std::string kTwo =
    "battery E1 = 30 V from G to P\nresistor R1 = 6 ohm from P to A\n"
    "battery E2 = 24 V internal 1 ohm from G to Q\nresistor R2 = 2 ohm from Q to A\n"
    "resistor R3 = 6 ohm from A to G\nfind current through R3\n";

TEST(Sources, AreShownEachAloneAndThenTogether) {
  const std::string text = text_of(kTwo);
  EXPECT_THAT(text, HasSubstr("\nE1 alone\n"));
  EXPECT_THAT(text, HasSubstr("Its internal resistance of 1 Ω stands in place of E2."));
  EXPECT_THAT(text, HasSubstr("A wire stands in place of E1."));
  EXPECT_THAT(text, HasSubstr("Current  E1 alone  E2 alone  together"));
  EXPECT_THAT(text, HasSubstr("I_R3     1.25 A    2 A       3.25 A"));
  EXPECT_THAT(text, HasSubstr("I_E2     −2.5 A    4 A       1.5 A"));
  EXPECT_THAT(text, HasSubstr("Powers do not add like this"));
  EXPECT_THAT(text, HasSubstr("P_R3 = V_R3 · I_R3 = 19.5 V · 3.25 A"));
  EXPECT_THAT(text, HasSubstr("The circuit with each source alone was checked in the same way"));
}

TEST(Sources, InJsonAreShares) {
  const std::string json = render_json(test::trace_of(kTwo));
  EXPECT_THAT(json, HasSubstr("\"shares\": [\n        {\"sources\":[\"E1\"],\"steps\":["));
  EXPECT_THAT(json, HasSubstr("\"rule\":\"superposition\""));
  EXPECT_THAT(json, HasSubstr("\"kind\": \"several-sources\""));
}

const char* const kChain =
    "battery E1 = 4 V from G to M\nbattery E2 = 12 V internal 1 ohm from T to M\n"
    "resistor R = 3 ohm from T to G\nfind current through E1\n";

TEST(Sources, OfOneChainAreAddedWithTheirSigns) {
  const std::string text = text_of(kChain);
  EXPECT_THAT(text, HasSubstr("1.  Add the batteries E1 and E2 of one chain to E12."));
  EXPECT_THAT(text, HasSubstr("E2\n    drives against E1."));
  EXPECT_THAT(text, HasSubstr("stands in the place of E1, turned round"));
  EXPECT_THAT(text, HasSubstr("E12   = E2 − E1 = 12 V − 4 V = 8 V"));
  EXPECT_THAT(text, HasSubstr("r_E12 = r_E2 = 1 Ω"));
  EXPECT_THAT(text, HasSubstr("I_E12 = E12 / (R_eq + r_E12) = 8 V / (3 Ω + 1 Ω) = 2 A"));
  EXPECT_THAT(text, HasSubstr("I_E1 = −I_E12 = −2 A"));
  EXPECT_THAT(text, HasSubstr("Battery E1 is being charged: 2 A runs into its + terminal"));
}

TEST(Sources, OfOneChainInJsonHaveAVoltageAndPairsOfPoints) {
  const std::string json = render_json(test::trace_of(kChain));
  EXPECT_THAT(json,
              HasSubstr("\"rule\":\"batteries\",\"takes\":[\"E1\",\"E2\"],\"makes\":[\"E12\"],"
                        "\"merges\":[[\"T\",\"M\"]]"));
  EXPECT_THAT(json, HasSubstr("\"value\":{\"exact\":\"8\",\"unit\":\"V\",\"rounded\":\"8.00\"}"));
  EXPECT_THAT(json,
              HasSubstr("\"internal\":{\"exact\":\"1\",\"unit\":\"ohm\",\"rounded\":\"1.00\"}"));
  EXPECT_THAT(json, HasSubstr("\"remarks\": [\n        \"Battery E1 is being charged"));
}

TEST(Sources, WithNothingElseInTheirLoopAreNotCalledAShortCircuit) {
  const std::string text = text_of(
      "battery E1 = 6 V internal 1 ohm from G to T\nbattery E2 = 3 V internal 2 ohm from G to T\n");
  EXPECT_THAT(text, HasSubstr("Nothing but batteries lies in the loop"));
  EXPECT_THAT(text, Not(HasSubstr("short")));
}

TEST(Sources, OtherwiseNamedGetLetters) {
  EXPECT_THAT(text_of("battery Main = 4 V from G to M\nbattery Spare = 5 V from M to T\n"
                      "resistor R = 3 ohm from T to G\n"),
              HasSubstr("Add the batteries Main and Spare of one chain to Ea."));
}

const char* const kSteady =
    "source J = 2 A from G to A\nresistor R1 = 4 ohm from A to G\nresistor R2 = 12 ohm from A to "
    "G\n"
    "find power in J\nfind resistance seen by J\n";

TEST(CurrentSource, IsToldWithItsGivenCurrentAndTheSignOfItsVoltage) {
  const std::string text = text_of(kSteady);
  EXPECT_THAT(text, HasSubstr("J     source    2 A    G     A"));
  EXPECT_THAT(text, HasSubstr("Source J keeps its current whatever the voltage"));
  EXPECT_THAT(text, HasSubstr("I_J   = 2 A"));
  EXPECT_THAT(text, HasSubstr("(given)"));
  EXPECT_THAT(text, HasSubstr("V_R12 = I_R12 · R12 = 2 A · 3 Ω = 6 V"));
  EXPECT_THAT(text, HasSubstr("V_J = V_G − V_A = 0 V − 6 V = −6 V"));
  EXPECT_THAT(text, HasSubstr("The power that source J delivers is P_J = 12 W."));
  EXPECT_THAT(text, HasSubstr("The resistance that source J sees is R_eq = 3 Ω."));
}

TEST(CurrentSource, LeftWithOthersStandsInTheNodeEquations) {
  const std::string text = text_of(
      "source J = 1 A from G to T\nresistor R1 = 1 ohm from T to A\nresistor R2 = 2 ohm from A to "
      "G\nresistor R3 = 3 ohm from T to B\nresistor R4 = 4 ohm from B to G\n"
      "resistor R5 = 5 ohm from A to B\nfind power in J\n");
  EXPECT_THAT(text, HasSubstr("−J + (V_T − V_A) / R1"));
  EXPECT_THAT(text, HasSubstr("I_J  = 1 A"));
}

TEST(CurrentSource, WithoutAWayBackIsToldAsAContradiction) {
  const Trace trace =
      test::trace_of("source J = 2 A from G to T\nresistor R = 1 ohm from T to A\n");
  EXPECT_THAT(
      render_text(trace),
      HasSubstr("The 2 A of source J have no way back: no path outside the source joins its "
                "two\nends."));
  EXPECT_THAT(render_contradictions(trace), HasSubstr("have no way back"));
  EXPECT_THAT(render_json(trace), HasSubstr("\"remainder\":{\"exact\":\"2\",\"unit\":\"A\""));
}

TEST(CurrentSource, AgainstAnotherIsToldAsAContradiction) {
  EXPECT_THAT(text_of("source J1 = 2 A from G to A\nsource J2 = 3 A from A to T\n"
                      "resistor R = 1 ohm from T to G\n"),
              HasSubstr("The sources J1 and J2 do not agree"));
}

const std::string kDivider =
    "battery E = 12 V from G to T\nresistor R1 = 3 ohm from T to A\n"
    "resistor R2 = 6 ohm from A to G\n";

TEST(Thevenin, IsToldWithItsThreeValuesAndTheBatteryThatTheyMake) {
  const std::string text = text_of(kDivider + "find thevenin between G and A\n");
  EXPECT_THAT(text, HasSubstr("The Thevenin equivalent between G and A, V_GA, in V, with its"));
  EXPECT_THAT(text, HasSubstr("V_GA = V_G − V_A = 0 V − 8 V = −8 V"));
  EXPECT_THAT(text, HasSubstr("I_sc = V_GA / R_GA = (−8 V) / 2 Ω = −4 A"));
  EXPECT_THAT(
      text, HasSubstr("the circuit acts like a battery of 8 V, + at A, in\n    series with 2 Ω."));
}

TEST(Thevenin, WithoutResistanceOrVoltageIsToldSo) {
  EXPECT_THAT(text_of(kDivider + "find thevenin between T and G\n"),
              HasSubstr("acts like a battery of 12 V, + at T, without internal resistance."));
  EXPECT_THAT(text_of("resistor R1 = 3 ohm from A to B\nfind thevenin between A and B\n"),
              HasSubstr("acts like a resistor of 3 Ω"));
  EXPECT_THAT(
      text_of(kDivider + "resistor R9 = 1 ohm from X to Y\nfind thevenin between A and X\n"),
      HasSubstr("The resistance\n    is not determined: no path"));
}

TEST(Thevenin, InJsonHasThreeValues) {
  EXPECT_THAT(
      render_json(test::trace_of(kDivider + "find thevenin between A and G\n")),
      HasSubstr("{\"find\":\"thevenin between A and G\",\"value\":{\"exact\":\"8\",\"unit\":"
                "\"V\",\"rounded\":\"8.00\"},\"resistance\":{\"exact\":\"2\",\"unit\":\"ohm\","
                "\"rounded\":\"2.00\"},\"short_circuit_current\":{\"exact\":\"4\""));
}

TEST(Thevenin, OfSeveralCasesStandsInTheTable) {
  EXPECT_THAT(text_of(kDivider + "case \"a\": E = 12 V\ncase \"b\": E = 6 V\n"
                                 "find thevenin between A and G\n"),
              HasSubstr("8 V; 2 Ω"));
}

}  // namespace
}  // namespace ohmfold

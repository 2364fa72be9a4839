// How unknown values are worded: the steps, what falls away, what cannot be found.
#include <gmock/gmock.h>

#include "samples.h"

namespace ohmfold {
namespace {

using testing::HasSubstr;
using testing::Not;

std::string series(const std::string& given) {
  return "battery E = 12 V from G to T\nresistor R1 = 4 ohm from T to A\n"
         "resistor X = unknown from A to G\n" +
         given + "\nfind X\nfind current through E\n";
}

std::string text_of(const std::string& circuit, Letters letters = Letters::unicode) {
  TextOptions options;
  options.letters = letters;
  return render_text(test::trace_of(circuit), options);
}

TEST(UnknownText, ShowsTheStepsOfATextbook) {
  const std::string text = text_of(series("given current through E = 2 A"));
  EXPECT_THAT(text, HasSubstr("Known of the circuit at work:\n"));
  EXPECT_THAT(text, HasSubstr("The current through E is 2 A.\n"));
  EXPECT_THAT(text, HasSubstr("R_1_X = R1 + X = X + 4"));
  EXPECT_THAT(text, HasSubstr("I_E = 12/(X + 4) = 2\n"));
  EXPECT_THAT(text, HasSubstr("12  = 2 · (X + 4)   (times the denominator)\n"));
  EXPECT_THAT(text, HasSubstr("X = 2   (collected)\n"));
  EXPECT_THAT(text, HasSubstr("1.  The resistance of X is 2 Ω.\n"));
}

TEST(UnknownText, SolvesAQuadraticEquation) {
  const std::string text = text_of(series("given power in X = 8 W"));
  EXPECT_THAT(text, HasSubstr("X² − 10 · X + 16 = 0   (collected)\n"));
  EXPECT_THAT(text, HasSubstr("X = (10 ± √36) / 2   (quadratic formula)\n"));
  EXPECT_THAT(text, HasSubstr("Case 1: X = 2 Ω\n"));
  EXPECT_THAT(text, HasSubstr("Case 2: X = 8 Ω\n"));
  EXPECT_THAT(text, Not(HasSubstr("\nCases\n")));
  const std::string ascii = text_of(series("given power in X = 8 W"), Letters::ascii);
  EXPECT_THAT(ascii, HasSubstr("X^2 - 10 * X + 16 = 0"));
  EXPECT_THAT(ascii, HasSubstr("X = (10 +- sqrt 36) / 2"));
}

TEST(UnknownText, GivesAnIrrationalValueWithItsRoot) {
  const std::string text = text_of(series("given power in X = 6 W"));
  EXPECT_THAT(text, HasSubstr("X = (8 − 4 · √3) Ω ≈ 1.07 Ω"));
  EXPECT_THAT(text, HasSubstr("The current through E is I_E = ("));
}

/// What is said where no value is found.
struct Refusal {
  std::string circuit, words;
};

TEST(UnknownText, SaysWhyNoValueWasFound) {
  const std::vector<Refusal> refusals{
      {series("given current through E = 5 A"),
       "error: only with X = −8/5 Ω = −1.6 Ω would the current through E be 5 A, but the "
       "resistance of X has to be positive\n"},
      {series("given current through E = 3 A"),
       "error: only with a wire in place of X would the current through E be 3 A\n"},
      {series("given current through E = 0 A"),
       "error: only with a gap in place of X would the current through E be 0 A\n"},
      {series("given power in X = 10 W"), "error: with no value of X can the power in X be 10 W\n"},
      {"battery E = 12 V from G to T\nlamp L = 4 ohm from T to G\nlamp X = unknown from T to G\n"
       "given current through L = 2 A\nfind X\n",
       "error: the current through L is 3 A whatever X is, and 2 A is given\n"},
      {series("given power in X = 8 W\ngiven voltage across X = 7 V"),
       "error: no positive value of X fits all that is given\n"},
      {"battery E = unknown from G to T\nbattery F = 9 V from G to T\n"
       "resistor R1 = 4 ohm from T to G\ngiven current through R1 = 2 A\nfind E\n",
       "error: a loop of ideal parts alone runs through an unknown battery; give one of its "
       "batteries an internal resistance\n"},
  };
  for (const Refusal& refusal : refusals) {
    EXPECT_EQ(render_contradictions(test::trace_of(refusal.circuit)),
              "sample.circuit: " + refusal.words);
  }
}

TEST(UnknownText, SaysThatEveryValueFits) {
  const std::string text = text_of(
      "battery E = 12 V from G to T\nlamp L = 4 ohm from T to G\nlamp X = unknown from T to G\n"
      "given current through L = 3 A\nfind X\nfind power in L\n");
  EXPECT_THAT(text, HasSubstr("What is given holds whatever X is, so it is not determined.\n"));
  EXPECT_THAT(text, HasSubstr("2.  The power in L is P_L = 36 W.\n"));
}

TEST(UnknownText, SaysThatABatteryStandsTheOtherWayRound) {
  const std::string text = text_of(
      "battery E = unknown from G to T\nlamp L = 4 ohm from T to G\n"
      "given current through L = -3 A\nfind E\n");
  EXPECT_THAT(text, HasSubstr("The voltage of battery E is −12 V. The minus sign: its terminals "
                              "are the\n    other way round.\n"));
}

}  // namespace
}  // namespace ohmfold

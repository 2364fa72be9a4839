// What the worked solution says of the way beyond series and parallel.
#include <gmock/gmock.h>

#include "samples.h"
#include "views/names.h"

namespace ohmfold::views {
namespace {

using test::trace_of;
using testing::HasSubstr;
using testing::Not;

// Balanced where the last value is 12.
std::string bridge(const std::string& last, const std::string& question) {
  return "battery E = 12 V from G to T\n"
         "resistor R1 = 4 ohm from T to A\n"
         "resistor R2 = 8 ohm from A to G\n"
         "resistor R3 = 6 ohm from T to B\n"
         "resistor R4 = " +
         last +
         " ohm from B to G\n"
         "resistor R5 = 5 ohm from A to B\n" +
         question;
}

/// The page, its line breaks as single spaces.
std::string page(const std::string& text, Method method = Method::automatic) {
  SolveOptions options;
  options.method = method;
  const std::string written = render_text(trace_of(text, options));
  std::string joined;
  for (const char c : written) {
    const bool space = c == ' ' || c == '\n';
    if (!space || (!joined.empty() && joined.back() != ' ')) joined += space ? ' ' : c;
  }
  return joined;
}

TEST(Ways, AreComparedByTheirLines) {
  EXPECT_THAT(
      page(bridge("12", "")),
      HasSubstr("Three ways lead on: leaving out R5 between equal potentials takes 12 lines of "
                "working"));
  EXPECT_THAT(page(bridge("12", "")), HasSubstr("The first is the shortest, so it is taken."));
  EXPECT_THAT(page(bridge("13", "")), HasSubstr("The second is shorter, so it is taken."));
}

TEST(Ways, ShowTheRatioOfABalancedBridgeAndItsLimit) {
  const std::string text = page(bridge("12", ""));
  EXPECT_THAT(text, HasSubstr("R1 is to R2 as R3 is to R4, so there is no voltage across R5."));
  EXPECT_THAT(text, HasSubstr("R3 / R4 = 6 Ω / 12 Ω = 1/2"));
  EXPECT_THAT(text, HasSubstr("This holds only as seen by battery E."));
}

TEST(Ways, ShowWhatASymmetryExchanges) {
  const std::string equal =
      "resistor R1 = 1 from A to B\nresistor R2 = 1 from A to C\n"
      "resistor R3 = 1 from A to D\nresistor R4 = 1 from B to C\n"
      "resistor R5 = 1 from C to D\nresistor R6 = 2 from B to Z\n"
      "resistor R7 = 3 from C to Z\nresistor R8 = 2 from D to Z\n"
      "find resistance between A and Z\n";
  EXPECT_THAT(page(equal), HasSubstr("when B changes places with D: B and D are at the same "
                                     "potential."));
  EXPECT_THAT(page(equal), HasSubstr("This holds only as seen from A and Z."));
}

TEST(Ways, ShowWhichPointsLieHalfWay) {
  const std::string turned =
      "resistor R1 = 1 from A to B\nresistor R2 = 2 from A to C\n"
      "resistor R3 = 3 from B to C\nresistor R4 = 1 from B to Z\n"
      "resistor R5 = 2 from C to Z\nresistor R6 = 4 from A to D\n"
      "resistor R7 = 4 from D to Z\nresistor R8 = 5 from B to D\n"
      "find resistance between A and Z\n";
  EXPECT_THAT(page(turned, Method::equal_potentials),
              HasSubstr("Turned round, so that A changes places with Z, the circuit is the same. "
                        "B, C and D stay where they are: their potentials are half-way between "
                        "those of the two terminals."));
}

TEST(Ways, ThatAreAskedForAreNamedOrRefusedWithTheReason) {
  const std::string awkward = bridge("13", "");
  EXPECT_THAT(page(awkward, Method::delta_star), HasSubstr("Delta and star are asked for:"));
  EXPECT_THAT(page(awkward, Method::node_voltage),
              HasSubstr("Node-voltage analysis is asked for:"));
  EXPECT_THAT(page(awkward, Method::equal_potentials),
              HasSubstr("Equal potentials are asked for, but no bridge here is balanced"));
}

TEST(Ways, ThatAreNotAllowedLeaveTheAnswersOpen) {
  const std::string text = page(bridge("13", "find current through R5\n"), Method::series_parallel);
  EXPECT_THAT(text, HasSubstr("Series and parallel do not suffice here"));
  EXPECT_THAT(text, HasSubstr("The current through R5 is not determined: series and parallel "
                              "alone do not suffice"));
  EXPECT_THAT(text, Not(HasSubstr("Node-voltage analysis")));
}

TEST(Ways, NameArmsAfterTheirCornersAndNewPointsAfresh) {
  SolveOptions options;
  options.method = Method::delta_star;
  const Trace trace = trace_of(
      "resistor R1 = 1 from A to B\nresistor R2 = 2 from A to N1\n"
      "resistor R3 = 3 from B to N1\nresistor R4 = 4 from B to D\n"
      "resistor R_A = 5 from N1 to D\nfind resistance between A and D\n",
      options);
  const Reduction& main = trace.cases.front().main;
  const PartNames names(*trace.problem, main);
  const Step first = main.steps[0];
  ASSERT_EQ(first.rule, RuleName::delta_star);
  EXPECT_EQ(names.of(first.adds[0].to), "N2") << "the file has a point N1";
  EXPECT_EQ(names.of(first.makes), "Ra") << "the file has a part R_A";
  EXPECT_EQ(names.of(PartId{first.makes.index + 1}), "R_B");
}

TEST(Ways, AreToldInJson) {
  const std::string json = render_json(trace_of(bridge("12", "")));
  EXPECT_THAT(json, HasSubstr("\"way\": {\"method\":\"equal-potentials\",\"after\":0"));
  EXPECT_THAT(json, HasSubstr("\"scope\":\"as-seen-by-the-source\""));
  SolveOptions options;
  options.method = Method::delta_star;
  const std::string star = render_json(trace_of(bridge("13", ""), options));
  EXPECT_THAT(star, HasSubstr("\"asked\":\"delta-star\""));
}

}  // namespace
}  // namespace ohmfold::views

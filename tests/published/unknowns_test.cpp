// Published design problems: the value that the book asks for is found as an unknown.
#include <gtest/gtest.h>

#include "ohmfold/decimal.h"
#include "ohmfold/solve.h"
#include "published/networks.h"

namespace ohmfold::published {
namespace {

/// A design problem, what its book prints for the unknown (as a number in ohm), and its exact
/// value.
struct Design {
  std::string source, circuit, printed, exact;
};

const std::vector<Design>& designs() {
  static const std::vector<Design> kDesigns{
      {"OpenStax, College Physics 2e, sec. 21.4 problem 3: 25.0 ohm, 50.0 uA, as 0.100-V voltmeter",
       "battery B = 0.100 V from G to A\nresistor R1 = unknown from A to M\n"
       "resistor R2 = 25 ohm from M to G\ngiven current through R2 = 50 uA\nfind R1\n",
       "1980", "1975"},
      {"OpenStax, College Physics 2e, sec. 21.4 problem 7: 10.0 ohm, 100 uA, as 0.300-V voltmeter",
       "battery B = 0.300 V from G to A\nresistor R1 = unknown from A to M\n"
       "resistor R2 = 10 ohm from M to G\ngiven current through R2 = 100 uA\nfind R1\n",
       "2990", "2990"},
      {"OpenStax, College Physics 2e, sec. 21.4 problem 7: the same as 300-V voltmeter",
       "battery B = 300 V from G to A\nresistor R1 = unknown from A to M\n"
       "resistor R2 = 10 ohm from M to G\ngiven current through R2 = 100 uA\nfind R1\n",
       "3.00e6", "2999990"},
      {"OpenStax, University Physics vol. 2, ch. 10: 25.00 ohm, 50 uA, as 10.00-V voltmeter",
       "battery B = 10 V from G to A\nresistor R1 = unknown from A to M\n"
       "resistor R2 = 25 ohm from M to G\ngiven current through R2 = 50 uA\nfind R1\n",
       "199975", "199975"},
      // A shunt; whatever feeds the meter, it carries the rest of the 10 A.
      {"OpenStax, College Physics 2e, sec. 21.4 problem 5: 25.0 ohm, 50.0 uA, as 10.0-A ammeter",
       "battery B = unknown from G to A\nresistor R1 = unknown from A to G\n"
       "resistor R2 = 25 ohm from A to G\ngiven current through R2 = 50 uA\n"
       "given current through B = 10 A\nfind R1\n",
       "1.25e-4", "25/199999"},
      {"OpenStax, University Physics vol. 2, ch. 10: 60.0 ohm, 1.00 mA, as 25.0-A ammeter",
       "battery B = unknown from G to A\nresistor R1 = unknown from A to G\n"
       "resistor R2 = 60 ohm from A to G\ngiven current through R2 = 1 mA\n"
       "given current through B = 25 A\nfind R1\n",
       "2.40e-3", "20/8333"},
      // Battery, R1 and the meter are free choices: the balance does not depend on them.
      {"OpenStax, College Physics 2e, sec. 21.5: Wheatstone bridge, R2/R1 = 0.625, R3 = 2500",
       "battery B = 1 V from G to T\nresistor R1 = 1000 ohm from T to A\n"
       "resistor R2 = 625 ohm from T to D\nresistor R3 = 2500 ohm from A to G\n"
       "resistor Rx = unknown from D to G\nresistor Rg = 50 ohm from A to D\n"
       "given current through Rg = 0 A\nfind Rx\n",
       "1.56e3", "3125/2"},
  };
  return kDesigns;
}

TEST(PublishedDesigns, FindThePublishedValue) {
  for (const Design& design : designs()) {
    SCOPED_TRACE(design.source);
    const Trace trace = solve(read(design.circuit));
    ASSERT_EQ(trace.cases.size(), 1U);
    const Answer& answer = trace.cases[0].answers.at(0);
    ASSERT_TRUE(answer.value.value);
    EXPECT_EQ(answer.value.value->number.to_string(), design.exact);
    EXPECT_TRUE(agrees(design.printed, answer.value.value->number));
  }
}

// Maximum power: a load takes up most where it equals what feeds it, E²/(4 r) (Jacobi's law, from
// memory). Then the two loads of a smaller power have become one.
TEST(PublishedTheorems, MostPowerHasOneLoadAndLessPowerTwo) {
  const std::string circuit =
      "battery E = 12 V internal 3 ohm from G to T\nlamp X = unknown from T to G\nfind X\n";
  const Trace most = solve(read(circuit + "given power in X = 12 W\n"));
  ASSERT_EQ(most.cases.size(), 1U);
  EXPECT_EQ(most.cases[0].answers[0].value.value->number, Number(3));
  const Trace less = solve(read(circuit + "given power in X = 9 W\n"));
  ASSERT_EQ(less.cases.size(), 2U);
  EXPECT_EQ(
      less.cases[0].answers[0].value.value->number * less.cases[1].answers[0].value.value->number,
      Number(9));  // r²
  EXPECT_TRUE(solve(read(circuit + "given power in X = 12.001 W\n")).has_contradiction());
}

}  // namespace
}  // namespace ohmfold::published

// Large networks that no rule reduces: solved exactly within the budget, said to be too long
// beyond.
#include "solve/node_voltage.h"

#include <gtest/gtest.h>

#include "ohmfold/solve.h"
#include "support/circuit.h"

namespace ohmfold::test {
namespace {

// k by k points, resistors of 1 to 10 ohm, a battery between opposite corners and another one with
// resistance inside.
std::string grid(int k) {
  const auto point = [](int x, int y) { return "P" + std::to_string(x) + "_" + std::to_string(y); };
  std::string text = "battery E1 = 10 V from " + point(0, 0) + " to " + point(k - 1, k - 1) + "\n";
  text += "battery E2 = 3 V internal 1/2 ohm from " + point(0, k - 1) + " to " + point(k - 1, 0);
  text += "\nbattery E3 = 2 V from " + point(1, 1) + " to " + point(1, 2) + "\n";
  int count = 0;
  const auto join = [&](const std::string& a, const std::string& b) {
    ++count;
    text += "resistor R" + std::to_string(count) + " = " + std::to_string(1 + count * 7 % 10) +
            " ohm from " + a + " to " + b + "\n";
  };
  for (int x = 0; x < k; ++x) {
    for (int y = 0; y < k; ++y) {
      if (x + 1 < k) join(point(x, y), point(x + 1, y));
      if (y + 1 < k) join(point(x, y), point(x, y + 1));
    }
  }
  return text + "find current through E1\nfind voltage across R1\n";
}

// The checks of the case, an independent solution among them, are the proof.
TEST(NodeVoltage, SolvesBothFewAndManyNodesExactly) {
  for (const int k : {3, 4, 6, 9}) {
    const Trace trace = solve(problem_of(grid(k)));
    const CaseTrace& one = trace.cases.front();
    EXPECT_TRUE(one.complete);
    bool compared = false;
    for (const Check& check : one.checks) {
      EXPECT_TRUE(check.holds) << check.detail;
      compared = compared || check.law == CheckLaw::node_voltage;
    }
    EXPECT_TRUE(compared) << k;
    for (const Answer& answer : one.answers) EXPECT_TRUE(answer.value.value) << k;
  }
}

TEST(NodeVoltage, SaysWhereTheNumbersWouldBeTooLong) {
  const Trace trace = solve(problem_of(grid(75)));
  for (const Answer& answer : trace.cases.front().answers) {
    EXPECT_FALSE(answer.value.value);
    EXPECT_EQ(answer.value.why, Undetermined::too_long);
  }
}

}  // namespace
}  // namespace ohmfold::test

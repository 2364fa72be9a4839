// Node equations as they are written on paper, and what is left unwritten.
#include "solve/node_elimination.h"

#include <gmock/gmock.h>

#include "ohmfold/solve.h"
#include "support/circuit.h"

namespace ohmfold::test {
namespace {

using ::testing::ElementsAre;

class Written {
 public:
  explicit Written(const std::string& text)
      : problem_(problem_of(text)),
        trace_(solve(problem_, {.method = Method::node_voltage})),
        one_(trace_.cases.at(0).elimination) {}

  /// "15 A - 8 B = 72 (1)"
  [[nodiscard]] std::vector<std::string> lines() const {
    std::vector<std::string> result;
    for (const PotentialEquation& equation : one_.equations) {
      std::string line;
      for (const PotentialTerm& term : equation.terms) {
        line += term.coefficient.to_string() + " " + problem_.point(term.point) + " ";
      }
      line += "= " + equation.constant.number.to_string();
      if (equation.number != 0) {
        line += " (" + std::to_string(equation.number) + std::string(equation.times, '\'') + ")";
      }
      result.push_back(std::move(line));
    }
    return result;
  }
  [[nodiscard]] const NodeElimination& operator*() const { return one_; }
  [[nodiscard]] const NodeElimination* operator->() const { return &one_; }
  [[nodiscard]] const CaseTrace& results() const { return trace_.cases.at(0); }
  [[nodiscard]] std::string name(PointId point) const { return problem_.point(point); }

 private:
  Problem problem_;
  Trace trace_;
  const NodeElimination& one_;
};

constexpr const char* kBridge =
    "battery E = 12 V from G to T\nresistor R1 = 4 ohm from T to A\n"
    "resistor R2 = 24 ohm from A to G\nresistor R3 = 18 ohm from T to B\n"
    "resistor R4 = 6 ohm from B to G\nresistor R5 = 3 ohm from A to B\n";

// By hand: 24 V/4 + ... gives 15 A - 8 B = 72 and, halved, -3 A + 5 B = 6; five times the second
// plus the first is 17 B = 102.
TEST(NodeElimination, ClearsFractionsEliminatesAndPutsBack) {
  const Written written(kBridge);
  EXPECT_THAT(written.lines(), ElementsAre("15 A -8 B = 72 (1)", "-3 A 5 B = 6 (2)",
                                           "17 B = 102 (2')", "1 B = 6", "1 A = 8"));
  const auto& equations = written->equations;
  EXPECT_EQ(equations[0].factor, Number(24));
  EXPECT_EQ(equations[1].factor, Number(18));
  EXPECT_EQ(equations[1].divisor, Number(2));
  ASSERT_EQ(equations[2].from.size(), 2U);
  EXPECT_EQ(equations[2].from[0].equation, 1U);
  EXPECT_EQ(equations[2].from[0].factor, Number(5));
  EXPECT_EQ(equations[2].from[1].equation, 0U);
  EXPECT_EQ(equations[2].from[1].factor, Number(1));
}

// T. R. Kuphaldt, Lessons In Electric Circuits, vol. I (DC), chapter 10, node voltage method:
// 3.8095 V and -1.5476 V as printed. Its equations are 1.15 E1 - 0.4 E2 = 5 and
// -0.4 E1 + 1.6 E2 = -4 (from memory), which are these over 20 and over 10.
TEST(NodeElimination, WritesThePublishedEquations) {
  const Written written(
      "battery B1 = 10 V from zero to e11\nresistor R1 = 2 ohm from e11 to n1\n"
      "resistor R2 = 4 ohm from n1 to zero\nresistor R3 = 2.5 ohm from n1 to n2\n"
      "resistor R4 = 5 ohm from n2 to zero\nresistor R5 = 1 ohm from n2 to e22\n"
      "battery B2 = 4 V from e22 to zero\nground zero\n");
  EXPECT_THAT(written.lines(), ElementsAre("23 n1 -8 n2 = 100 (1)", "-1 n1 4 n2 = -10 (2)",
                                           "42 n2 = -65 (2')", "1 n2 = -65/42", "1 n1 = 80/21"));
}

TEST(NodeElimination, TakesPointsTogetherThatABatteryJoins) {
  const Written written(
      "battery E1 = 12 V from G to P\nresistor R1 = 6 ohm from P to A\n"
      "battery E2 = 4 V from A to B\nresistor R2 = 4 ohm from B to G\n"
      "resistor R3 = 12 ohm from A to G\n");
  // (A - 12)/6 + A/12 + (A + 4)/4 = 0
  EXPECT_THAT(written.lines(), ElementsAre("6 A = 12 (1)", "1 A = 2"));
  ASSERT_EQ(written->fixed.size(), 2U);
  EXPECT_EQ(written.name(written->fixed[0].point), "P");
  EXPECT_EQ(written->fixed[0].base, written->ground);
  EXPECT_EQ(written.name(written->fixed[1].point), "B");
  EXPECT_EQ(written.name(written->fixed[1].base), "A");
  EXPECT_EQ(written->fixed[1].rise, Voltage{4});
  EXPECT_EQ(written->equations[0].points.size(), 2U);
}

TEST(NodeElimination, CountsBatteriesWithResistanceAsBranches) {
  const Written written(
      "battery E1 = 12 V internal 1/2 ohm from G to T\nresistor R = 15 ohm from T to A\n"
      "battery E2 = 4 V internal 1/2 ohm from G to A\nresistor L = 15 ohm from A to G\n");
  EXPECT_THAT(written.lines(),
              ElementsAre("31 T -1 A = 360 (1)", "-1 T 32 A = 120 (2)", "991 A = 4080 (2')",
                          "1 A = 4080/991", "1 T = 11640/991"));
}

std::string chain(int unknowns) {
  std::string text = "battery E = 12 V from G to P0\nresistor Z = 5 ohm from P" +
                     std::to_string(unknowns) + " to P0\n";
  for (int i = 0; i < unknowns; ++i) {
    const std::string n = std::to_string(i), next = std::to_string(i + 1);
    text += "resistor A" + n + " = " + next + " ohm from P" + n + " to P" + next + "\n";
    text += "resistor B" + n + " = 2 ohm from P" + next + " to G\n";
  }
  return text;
}

TEST(NodeElimination, IsWrittenUpToFourUnknowns) {
  for (int unknowns = 2; unknowns <= 6; ++unknowns) {
    const Written written(chain(unknowns));
    EXPECT_EQ(written->unknowns.size(), static_cast<std::size_t>(unknowns));
    EXPECT_EQ(written->equations.empty(), unknowns > 4) << unknowns;
    EXPECT_TRUE(written->ground.exists());
  }
}

TEST(NodeElimination, IsNotWrittenWithLongNumbers) {
  std::string text = kBridge;
  text += "resistor R6 = 1." + std::string(2000, '7') + " ohm from A to B\n";
  EXPECT_TRUE(Written(text)->equations.empty());
}

TEST(NodeElimination, SaysNothingWhereTheGroundIsNotInWhatIsLeft) {
  std::string text = kBridge;
  text += "resistor R6 = 1 ohm from B to H\nground H\n";
  EXPECT_FALSE(Written(text)->ground.exists());
}

TEST(NodeElimination, SaysNothingOfWhatSeriesAndParallelReduce) {
  EXPECT_FALSE(
      Written("battery E = 1 V from G to T\nresistor R = 1 ohm from T to G\n")->ground.exists());
}

TEST(NodeElimination, IsCheckedWithTheCase) {
  const Written written(kBridge);
  for (const Check& check : written.results().checks) {
    if (check.law != CheckLaw::elimination) continue;
    EXPECT_TRUE(check.holds);
    EXPECT_EQ(check.places, 5U);
    return;
  }
  ADD_FAILURE() << "no check of the elimination";
}

}  // namespace
}  // namespace ohmfold::test

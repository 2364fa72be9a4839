// Marks by the published convention: method, accuracy, follow-through, and what costs once.
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "support/circuit.h"
#include "support/judged.h"

namespace ohmfold {
namespace {

const Exercise& two_branches() {
  static const Exercise kExercise =
      prepare(test::problem_of("battery E = 30 V from G to T\nresistor R1 = 4 ohm from T to A\n"
                               "resistor R2 = 9 ohm from A to G\nresistor R3 = 7 ohm from A to B\n"
                               "resistor R4 = 11 ohm from B to G\nfind current through E\n"
                               "find current through R2\nfind power in R2\n"));
  return kExercise;
}

int lost(const std::string& text, const JudgeOptions& options = {}) {
  const test::JudgedText found = test::judged(two_branches(), text, options);
  return found.result.marks.most() - found.result.marks.earned();
}

std::string with_steps(const std::string& answers) {
  std::string text =
      "R34 = R3 + R4 = 18 ohm\nR234 = R2 || R34 = 6 ohm\nR_eq = R1 + R234 = 10 ohm\n";
  text += answers;
  return text;
}

TEST(Marks, AreTwoForEachStepOfTheSolutionAndEachAnswer) {
  const test::JudgedText found =
      test::judged(two_branches(), with_steps("I_E = 3 A\nI_R2 = 2 A\nP_R2 = 36 W\n"));
  EXPECT_EQ(found.result.marks.most(), 12);
  EXPECT_EQ(found.result.marks.earned(), 12);
}

TEST(Marks, LostAre) {
  struct Row {
    const char* what;
    std::string text;
    int lost;
  };
  const std::vector<Row> rows{
      {"none for steps that right answers imply", "I_E = 3 A\nI_R2 = 2 A\nP_R2 = 36 W\n", 0},
      {"two for an answer not given", with_steps("I_E = 3 A\nI_R2 = 2 A\n"), 2},
      {"one for a slip of arithmetic", with_steps("I_E = 3 A\nI_R2 = 2 A\nP_R2 = 360 W\n"), 1},
      {"two for a wrong law", with_steps("I_E = 3 A\nI_R2 = 1.5 A\nP_R2 = 20.25 W\n"), 2},
      {"one for a wrong unit", with_steps("I_E = 3 A\nI_R2 = 2 A\nP_R2 = 36 V\n"), 1},
      {"one for two wrong units", with_steps("I_E = 3 V\nI_R2 = 2 A\nP_R2 = 36 V\n"), 1},
      {"one for a missing unit", with_steps("I_E = 3 A\nI_R2 = 2 A\nP_R2 = 36\n"), 1},
  };
  for (const Row& row : rows) EXPECT_EQ(lost(row.text), row.lost) << row.what << "\n" << row.text;
}

// 9 and 18 ohm in parallel taken as 6.1: what follows from it is followed.
TEST(Marks, FollowAWrongValue) {
  const std::string text =
      "R34 = R3 + R4 = 18 ohm\nR234 = R2 || R34 = 61/10 ohm\nR_eq = R1 + R234 = 101/10 ohm\n"
      "I_E = 300/101 A\nV_R234 = 1830/101 V\nI_R2 = 610/303 A\nP_R2 = 1116300/30603 W\n";
  const test::JudgedText found = test::judged(two_branches(), text);
  for (std::size_t i = 2; i < found.result.lines.size(); ++i) {
    EXPECT_EQ(found.result.lines[i].value, ValueVerdict::on_own) << found.told(i);
    EXPECT_EQ(verdict_of(found.result.lines[i]), LineVerdict::follows);
  }
  EXPECT_LE(lost(text), 2);
  EXPECT_GE(lost(text), 1);
}

TEST(Marks, AreLostToEarlyRoundingOnlyWhereAsked) {
  const Exercise exercise =
      prepare(test::problem_of("battery E = 10 V from G to T\nresistor R1 = 3 ohm from T to G\n"
                               "find current through R1\nfind power in R1\n"));
  const std::string text = "I_R1 = 3.3 A\nP_R1 = 33 W\n";
  const std::string early = "I_R1 = 3.3 A\nP_R1 = 32.67 W\n";
  for (const bool strict : {false, true}) {
    JudgeOptions options;
    options.strict_rounding = strict;
    const auto right = test::judged(exercise, text, options).result;
    EXPECT_EQ(right.marks.earned(), right.marks.most());
    const auto rounded = test::judged(exercise, early, options).result;
    EXPECT_EQ(rounded.lines[1].value, ValueVerdict::rounded_early);
    EXPECT_EQ(rounded.marks.most() - rounded.marks.earned(), strict ? 1 : 0);
  }
}

TEST(Marks, AskForFigures) {
  const Exercise exercise =
      prepare(test::problem_of("battery E = 10 V from G to T\nresistor R1 = 3 ohm from T to G\n"
                               "find current through R1\n"));
  const auto found = test::judged(exercise, "I_R1 = 3 A\n").result;
  EXPECT_EQ(found.lines.front().figures, FiguresVerdict::too_few);
  EXPECT_TRUE(found.marks.figures_lost);
  EXPECT_EQ(found.marks.earned(), found.marks.most() - 1);
}

}  // namespace
}  // namespace ohmfold

// Works that mean no good, or make no sense, end in judgements.
#include <gtest/gtest.h>

#include <chrono>
#include <sstream>
#include <string>
#include <vector>

#include "ohmfold/render.h"
#include "support/circuit.h"
#include "support/judged.h"

namespace ohmfold {
namespace {

const Exercise& two_loops() {
  static const Exercise kExercise =
      prepare(test::problem_of("battery E = 30 V from G to T\n"
                               "resistor R1 = 4 ohm from T to A\n"
                               "resistor R2 = 9 ohm from A to G\n"
                               "resistor R3 = 7 ohm from A to B\n"
                               "resistor R4 = 11 ohm from B to G\n"));
  return kExercise;
}

// Judged, hinted at, and shown in full.
test::JudgedText all_of(const Exercise& exercise, const std::string& text) {
  test::JudgedText found = test::judged(exercise, text);
  const Hint hint = next_hint(exercise, found.work, found.result);
  for (const HintLevel level : {HintLevel::nudge, HintLevel::point, HintLevel::tell}) {
    EXPECT_FALSE(render_hint(exercise, found.work, found.result, hint, level).empty());
  }
  EXPECT_FALSE(render_judgement_text(exercise, found.work, found.result).empty());
  EXPECT_FALSE(render_judgement_json(exercise, found.work, found.result).empty());
  return found;
}

TEST(HostileWorks, OfNothingAskForEverything) {
  const test::JudgedText found = all_of(two_loops(), "");
  EXPECT_TRUE(found.result.lines.empty());
  EXPECT_TRUE(found.result.cases.front().answered.empty());
  EXPECT_FALSE(found.result.cases.front().open.empty());
  EXPECT_EQ(found.result.marks.earned(), 0);
}

TEST(HostileWorks, ForAnotherProblemKnowNoNames) {
  const test::JudgedText found =
      all_of(two_loops(),
             "case \"S open\"\nR89 = R8 + R9 = 5 ohm\ncurrent through F = 2 A\n"
             "voltage from X to Y = 2 V\nno current through R99\n");
  for (const Judgement& line : found.result.lines) {
    EXPECT_EQ(line.hindrance, Hindrance::unknown_name) << found.told(line.claim);
    EXPECT_FALSE(line.holds());
  }
  EXPECT_EQ(found.result.marks.earned(), 0);
}

TEST(HostileWorks, CannotGiveANameThatIsTaken) {
  for (const std::string name : {"R1", "E", "R34"}) {
    const test::JudgedText found =
        all_of(two_loops(), "R34 = R3 + R4 = 18 ohm\n" + name + " = R2 || R34 = 6 ohm\n");
    EXPECT_FALSE(found.result.lines[1].holds()) << name;
    EXPECT_EQ(found.result.lines[1].hindrance, Hindrance::name_taken) << found.told(1);
    EXPECT_EQ(found.result.lines[1].name, name);
  }
}

// A point may lend its name to a part: short forms then mean the part.
TEST(HostileWorks, MayNameAPartLikeAPoint) {
  const test::JudgedText found =
      all_of(two_loops(), "B = R3 + R4 = 18 ohm\nR_B = R2 || B = 6 ohm\nV_B = 18 V\n");
  EXPECT_TRUE(found.result.all_right()) << found.told(found.first_that_fails());
}

TEST(HostileWorks, UseAPartOnce) {
  struct Row {
    std::string text;
    std::size_t line;
    Hindrance hindrance;
  };
  const std::vector<Row> rows{
      {"X = R3 + R3 = 14 ohm\n", 0, Hindrance::named_twice},
      {"X = R3 || (R3 + R4)\n", 0, Hindrance::used_already},
      {"X = R3 + R4\nY = R3 || R2\n", 1, Hindrance::used_already},
      {"X = R3 + R4\nY = X || R2\nZ = X + R1\n", 2, Hindrance::used_already},
      {"X = E + R1\n", 0, Hindrance::not_a_resistor},
  };
  for (const Row& row : rows) {
    const test::JudgedText found = all_of(two_loops(), row.text);
    EXPECT_EQ(found.first_that_fails(), row.line) << row.text;
    EXPECT_EQ(found.result.lines[row.line].hindrance, row.hindrance) << found.told(row.line);
  }
}

TEST(HostileWorks, WaitForPartsThatLaterLinesMake) {
  const test::JudgedText found =
      all_of(two_loops(),
             "current through R234 = 3 A\nR_eq = R1 + R234 = 10 ohm\n"
             "R234 = R2 || R34 = 6 ohm\npower in R34 = 18 W\nR34 = R3 + R4 = 18 ohm\n");
  EXPECT_TRUE(found.result.all_right()) << found.told(found.first_that_fails());
}

TEST(HostileWorks, ThatWaitForEachOtherAreNotReached) {
  const test::JudgedText found =
      all_of(two_loops(), "X = R1 + Y\nY = R2 + Z\nZ = R3 + X\nW = R4 + W\nI_X = 2 A\n");
  for (const std::size_t line : {0U, 1U, 2U, 4U}) {
    EXPECT_EQ(found.result.lines[line].hindrance, Hindrance::made_later) << found.told(line);
  }
  EXPECT_FALSE(found.result.lines[3].holds()) << found.told(3);
}

// Each line goes on from the wrong ones before it.
TEST(HostileWorks, OfWrongStepsAloneAreFollowedAsFarAsTheyGo) {
  const test::JudgedText found = all_of(two_loops(),
                                        "X = R1 || R4\nY = R2 + X\nZ = R3 || Y = 5 ohm\nI_E = 6 A\n"
                                        "V_Z = 30 V\nno series or parallel pair left\n");
  EXPECT_EQ(found.first_that_fails(), 0U);
  EXPECT_EQ(found.result.lines.size(), 6U);
}

TEST(HostileWorks, OfThousandsOfLinesAreJudgedInSeconds) {
  std::ostringstream wrong_values, wrong_steps, repeated;
  for (int i = 0; i < 3000; ++i) {
    wrong_values << "current through R2 = " << i << "/7919 A\n";
    wrong_steps << "W" << i << " = R1 || R" << 2 + i % 3 << "\n";
    repeated << "N" << i << " = R3 + R4 = 18 ohm\n";
  }
  for (const std::string& text : {wrong_values.str(), wrong_steps.str(), repeated.str()}) {
    const auto begin = std::chrono::steady_clock::now();
    const test::JudgedText found = all_of(two_loops(), text);
    const auto took = std::chrono::steady_clock::now() - begin;
    EXPECT_EQ(found.result.lines.size(), 3000U);
    EXPECT_FALSE(found.result.all_right());
    EXPECT_LT(std::chrono::duration_cast<std::chrono::seconds>(took).count(), 20)
        << text.substr(0, 40);
  }
}

TEST(HostileWorks, WithValuesOfTenThousandDigitsAreJudged) {
  const std::string nines(10'000, '9');
  for (const std::string& value :
       {nines, "1/" + nines, nines + "." + nines, "0." + std::string(9'999, '0') + "1"}) {
    const test::JudgedText found =
        all_of(two_loops(), "X = R3 + R4 = " + value + " ohm\nR_eq = " + value +
                                " ohm\nI_R2 = " + value + " A\nP_R2 = -" + value + " W\n");
    EXPECT_FALSE(found.result.all_right());
    EXPECT_EQ(found.result.lines.size(), 4U);
  }
  const test::JudgedText right =
      all_of(two_loops(), "R_eq = 10." + std::string(10'000, '0') + " ohm\n");
  EXPECT_TRUE(right.result.lines.front().holds());
}

TEST(HostileWorks, OnCircuitsWithoutAnAnswerAreJudged) {
  for (const std::string circuit :
       {"battery E = 5 V from G to T\nwire from G to T\nresistor R1 = 2 ohm from T to G\n",
        "resistor R1 = 2 ohm from T to G\nresistor R2 = 2 ohm from T to G\n",
        "battery E = 5 V from G to T\nresistor R1 = 2 ohm from A to B\n",
        "symbol r\nbattery E = 5 V from G to T\nresistor R1 = r from T to A\n"
        "resistor R2 = 2 r from A to G\n",
        "battery E = 12 V from G to T\nresistor R1 = 1 ohm from T to A\n"
        "resistor R2 = unknown from A to G\ngiven power in R2 = 5 W\n",
        "battery E = 5 V from G to T\nbattery F = 3 V internal 1 ohm from G to T\n"
        "resistor R1 = 2 ohm from T to G\nresistor R2 = 2 ohm from T to G\n"}) {
    const Exercise exercise = prepare(test::problem_of(circuit));
    const test::JudgedText found =
        all_of(exercise,
               "X = R1 + R2 = 4 ohm\nY = R1 || R2 = 1 ohm\nequivalent resistance = 1 ohm\n"
               "I_R1 = 2 A\nV_R1 = 2 V\nP_R1 = 3 W\nvoltage from T to G = 5 V\n"
               "resistance between T and G = 1 ohm\nno current through R1\n"
               "T and G at the same potential\nno series or parallel pair left\n"
               "I_E = 1 A\n");
    EXPECT_FALSE(found.result.all_right()) << circuit;
  }
}

}  // namespace
}  // namespace ohmfold

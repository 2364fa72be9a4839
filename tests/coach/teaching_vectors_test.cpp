// Works with known outcomes: a worked reference problem, and a textbook example with a value cut
// off.
#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "support/circuit.h"
#include "support/judged.h"

namespace ohmfold {
namespace {

using enum KnownError;

// 30 V on R1 = 4 ohm in series with the block of R2 = 9 ohm beside R3 = 7 ohm and R4 = 11 ohm. By
// hand in exact fractions: R34 = 18, R234 = 6, R_eq = 10 ohm; 3 A in all, 2 A and 1 A in the
// branches; 12 V, 18 V, 7 V, 11 V; 36, 36, 7 and 11 W make 30 V times 3 A.
Exercise reference_problem(const std::string& questions) {
  return prepare(
      test::problem_of("battery E = 30 V from G to T\n"
                       "resistor R1 = 4 ohm from T to A\n"
                       "resistor R2 = 9 ohm from A to G\n"
                       "resistor R3 = 7 ohm from A to B\n"
                       "resistor R4 = 11 ohm from B to G\n" +
                       questions));
}

std::vector<KnownError> errors_of(const Judgement& line) {
  std::vector<KnownError> errors;
  for (const Diagnosis& diagnosis : line.errors) errors.push_back(diagnosis.error);
  std::sort(errors.begin(), errors.end());
  return errors;
}

TEST(ReferenceProblem, PassesWhole) {
  const Exercise exercise = reference_problem("");
  const test::JudgedText found =
      test::judged(exercise,
                   "R34 = R3 + R4 = 18 ohm\nR234 = R2 || R34 = 6 ohm\nR_eq = R1 + R234 = 10 ohm\n"
                   "resistance seen by E = 10 ohm\nI_E = 3 A\nI_R1 = 3 A\nV_R1 = 12 V\n"
                   "V_R2 = 18 V\nI_R2 = 2 A\nI_R3 = 1 A\nI_R4 = 1 A\nV_R3 = 7 V\nV_R4 = 11 V\n"
                   "V_E = 30 V\nP_R1 = 36 W\nP_R2 = 36 W\nP_R3 = 7 W\nP_R4 = 11 W\nP_E = 90 W\n");
  EXPECT_TRUE(found.result.all_right());
  EXPECT_TRUE(found.result.cases.front().open.empty());
  EXPECT_EQ(found.result.marks.earned(), found.result.marks.most());
}

TEST(ReferenceProblem, LosesOneStepForOneSlipAndKeepsWhatFollows) {
  const Exercise exercise = reference_problem("find current through E\nfind voltage across R1\n");
  for (const std::string voltage : {"3.88", "3.87"}) {
    const test::JudgedText found = test::judged(
        exercise,
        "R34 = R3 + R4 = 18 ohm\nR234 = R2 || R34 = 27 ohm\nR_eq = R1 + R234 = 31 ohm\n"
        "I_E = 0.97 A\nV_R1 = " +
            voltage + " V\n");
    const std::vector<Judgement>& lines = found.result.lines;
    EXPECT_EQ(lines[0].value, ValueVerdict::exact);
    EXPECT_EQ(lines[1].value, ValueVerdict::wrong);
    EXPECT_EQ(errors_of(lines[1]), std::vector{added_in_parallel});
    for (const std::size_t i : {2U, 3U, 4U}) {
      EXPECT_EQ(lines[i].value, ValueVerdict::on_own) << found.told(i);
      EXPECT_EQ(lines[i].accuracy, Mark::earned) << found.told(i);
    }
    const int lost = found.result.marks.most() - found.result.marks.earned();
    EXPECT_GE(lost, 1);
    EXPECT_LE(lost, 2);
  }
}

TEST(ReferenceProblem, GivesFullMarksForTheBareAnswer) {
  const Exercise exercise = reference_problem("find resistance seen by E\n");
  const test::JudgedText found = test::judged(exercise, "equivalent resistance = 10 ohm\n");
  EXPECT_TRUE(found.result.all_right());
  EXPECT_EQ(found.result.marks.earned(), found.result.marks.most());
}

TEST(ReferenceProblem, FollowsAWrongStepByItsOwnNumbers) {
  const Exercise exercise = reference_problem("find current through E\n");
  const test::JudgedText found = test::judged(exercise,
                                              "R12 = R1 + R2 = 13 ohm\nR34 = R3 + R4 = 18 ohm\n"
                                              "R_eq = R12 || R34 = 7.55 ohm\nI_E = 3.97 A\n");
  const std::vector<Judgement>& lines = found.result.lines;
  EXPECT_EQ(lines[0].step, StepVerdict::refused);
  EXPECT_EQ(errors_of(lines[0]), std::vector{series_at_a_junction});
  EXPECT_EQ(lines[0].method, Mark::lost);
  EXPECT_TRUE(lines[1].holds()) << found.told(1);
  EXPECT_TRUE(lines[2].holds()) << found.told(2);
  EXPECT_EQ(lines[3].value, ValueVerdict::on_own) << found.told(3);
  EXPECT_EQ(lines[3].accuracy, Mark::earned);
}

TEST(ReferenceProblem, NamesEveryErrorThatGivesTheNumber) {
  struct Vector {
    std::string claim;
    std::vector<KnownError> errors;  // that are among those named
  };
  const std::vector<Vector> vectors{
      {"R234 = R2 || R34 = 0.1667 ohm", {not_inverted, sum_over_product}},
      {"R234 = R2 || R34 = 162 ohm", {product_without_sum}},
      {"R234 = R2 || R34 = 13.5 ohm", {average}},
      {"R234 = R2 || R34 = 27 ohm", {added_in_parallel}},
      {"R234 = R2 || R34 = 0.03704 ohm", {reciprocal_of_sum}},
      {"R234 = R2 || R34 = 9.0 ohm", {difference, divided_by_count}},
      {"R234 = R2 || R34 = 4.5 ohm", {divided_by_count}},
      {"R234 = R2 || R34 = 36 ohm", {brackets_missing}},
      {"R234 = R2 || R34 = 18 ohm", {brackets_missing}},
      {"R234 = R2 || R34 = 81 ohm", {numerators_added}},
      {"R234 = R2 || R34 = 6000 ohm", {prefix_slip}},
      {"R234 = R2 || R34 = 60 ohm", {decimal_point_slip}},
      {"equivalent resistance = 7.55 ohm", {series_at_a_junction}},
      {"equivalent resistance = 22 ohm", {part_forgotten}},
      {"equivalent resistance = 8.95 ohm", {part_taken_for_wire}},
      {"equivalent resistance = 7.94 ohm", {part_taken_for_wire}},
      {"I_R2 = 3.33 A", {source_on_one_part}},
      {"I_R2 = 1.5 A", {split_equally}},
      {"I_R2 = 1 A", {split_in_proportion, split_by_parts}},
      {"I_R2 = 3 A", {no_split}},
      {"V_R3 = 9 V", {voltage_shared_equally}},
      {"V_R4 = 7 V", {divider_upside_down}},
      {"V_R4 = 18.33 V", {divider_from_source}},
      {"I_R2 = 2.31 A", {sequential}},
      {"I_E = 0.97 A", {source_over_all}},
      {"I_R2 = 0.5 A", {ohm_upside_down}},
      {"I_R2 = 162 A", {ohm_upside_down}},
      {"V_R4 = 0.0909 V", {ohm_upside_down}},
      {"I_R2 = 1.33 A", {values_of_two_parts}},
      {"V_R4 = 33 V", {values_of_two_parts}},
      {"V_R4 = 22 V", {values_of_two_parts}},
      {"I_R1 = -3 A", {wrong_sign}},
      {"voltage from A to B = -7 V", {wrong_order_of_points}},
      {"P_R2 = 81 W", {power_of_the_whole}},
  };
  const Exercise exercise = reference_problem("");
  for (const Vector& vector : vectors) {
    const test::JudgedText found =
        test::judged(exercise, "R34 = R3 + R4 = 18 ohm\n" + vector.claim + "\n");
    const Judgement& line = found.result.lines.back();
    EXPECT_FALSE(line.holds()) << found.told(1);
    const std::vector<KnownError> errors = errors_of(line);
    for (const KnownError error : vector.errors) {
      EXPECT_TRUE(std::count(errors.begin(), errors.end(), error) == 1)
          << found.told(1) << " lacks " << word_of(error);
    }
  }
}

// OpenStax, University Physics Volume 2, section 10.2, its example of resistors in series and in
// parallel, prints 1.00 + 1/(1/6.00 + 1/13.00) = 5.10 ohm. Exactly it is 97/19 = 5.1053, so that
// 5.10 is cut off. Its values that follow are right to their figures.
TEST(TextbookExample, HasAValueCutOffAndRightOnesAfterIt) {
  const Exercise exercise = prepare(
      test::problem_of("battery V = 12.0 V from G to T\nresistor R1 = 1.00 ohm from T to A\n"
                       "resistor R2 = 6.00 ohm from A to G\nresistor R3 = 13.00 ohm from A to G\n"
                       "find resistance seen by V\nfind current through V\nfind power in R2\n"));
  const test::JudgedText found =
      test::judged(exercise,
                   "R_eq = R1 + R2 || R3 = 5.10 ohm\nI_R1 = 2.35 A\nV_R1 = 2.35 V\n"
                   "V_R2 = 9.65 V\nI_R2 = 1.61 A\nP_R2 = 15.5 W\n");
  const std::vector<Judgement>& lines = found.result.lines;
  EXPECT_EQ(lines[0].value, ValueVerdict::cut_off);
  EXPECT_EQ(lines[0].right->number, Number(97) / Number(19));
  for (std::size_t i = 1; i < lines.size(); ++i) {
    EXPECT_EQ(lines[i].value, ValueVerdict::rounded) << found.told(i);
  }
}

// 1.61 squared times 6.00 is 15.55: from the printed current 15.6 W follows, exactly it is 15.52.
TEST(TextbookExample, ExplainsAPowerFromAPrintedCurrentByRounding) {
  const Exercise exercise = prepare(test::problem_of(
      "battery V = 12.0 V from G to T\nresistor R1 = 1.00 ohm from T to A\n"
      "resistor R2 = 6.00 ohm from A to G\nresistor R3 = 13.00 ohm from A to G\n"));
  const test::JudgedText found = test::judged(exercise, "I_R2 = 1.61 A\nP_R2 = 15.6 W\n");
  EXPECT_EQ(found.result.lines[1].value, ValueVerdict::rounded_early) << found.told(1);
  EXPECT_EQ(found.result.lines[1].caused_by, std::vector<std::size_t>{0});
}

}  // namespace
}  // namespace ohmfold

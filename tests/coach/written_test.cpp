// What a written value says: how far it is rounded, and which exact numbers it can stand for.
#include "coach/written.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "support/circuit.h"

namespace ohmfold {
namespace {

using test::fraction;

WrittenValue written(const std::string& text) {
  static const Problem kProblem = test::problem_of("resistor R1 = 1 ohm from A to B\n");
  const Outcome<Claim> claim = read_claim({"test.work", "R1 = " + text}, kProblem, {});
  if (!claim.value) {
    ADD_FAILURE() << text << " cannot be read";
    return {};
  }
  return std::get<ValueClaim>(claim.value->says).value;
}

TEST(Written, AgreesWithWhatRoundsToItBothEndsIncluded) {
  struct Row {
    std::string text;
    Number exact;
    bool agrees;
  };
  const std::vector<Row> rows{
      {"6.67", fraction(20, 3), true},
      {"6.66", fraction(20, 3), false},
      {"6.665", fraction(6665, 1000), true},
      {"6.67", fraction(6665, 1000), true},
      {"6.67", fraction(6675, 1000), true},
      {"6.67", fraction(66751, 10000), false},
      {"20/3", fraction(20, 3), true},
      {"20/3", fraction(6667, 1000), false},
      {"6.67 kohm", fraction(20000, 3), true},
      {"1200", fraction(1249, 1), true},
      {"1200", fraction(1251, 1), false},
      {"-6.67", fraction(-20, 3), true},
      {"0", fraction(0, 1), true},
  };
  for (const Row& row : rows) {
    EXPECT_EQ(agrees(written(row.text), row.exact), row.agrees)
        << row.text << " and " << row.exact.to_string();
  }
}

TEST(Written, StandsForHalfAUnitEitherWay) {
  const Range range = range_of(written("6.67 kohm"));
  EXPECT_EQ(range.low, Number(6665));
  EXPECT_EQ(range.high, Number(6675));
  EXPECT_TRUE(range_of(written("20/3")).is_point());
  EXPECT_TRUE(range.meets({Number(6675), Number(7000)}));
  EXPECT_FALSE(range.meets({Number(6676), Number(7000)}));
}

TEST(Written, HasAsManyFiguresAsItsDigitsShow) {
  struct Row {
    std::string text;
    int figures;
  };
  for (const Row& row : {Row{"6.670", 4},
                         {"0.0067", 2},
                         {"1200", 4},
                         {"5", 1},
                         {"20/3", 0},
                         {"4.7 kohm", 2},
                         {"-0.50", 2},
                         {"0.0", 0}}) {
    EXPECT_EQ(figures_of(written(row.text)), row.figures) << row.text;
  }
  EXPECT_TRUE(is_precise(written("20/3"), 9));
  EXPECT_TRUE(is_precise(written("6.7"), 2));
  EXPECT_FALSE(is_precise(written("7"), 2));
}

TEST(Written, IsCutOffWhereItHadToBeRoundedUp) {
  EXPECT_TRUE(is_cut_off(written("5.10"), fraction(97, 19)));
  EXPECT_FALSE(is_cut_off(written("5.11"), fraction(97, 19)));
  EXPECT_FALSE(is_cut_off(written("5.09"), fraction(97, 19)));
  EXPECT_TRUE(is_cut_off(written("-0.66"), fraction(-2, 3)));
  EXPECT_FALSE(is_cut_off(written("0.33"), fraction(1, 3)));  // rightly rounded down
  EXPECT_FALSE(is_cut_off(written("-5.10"), fraction(97, 19)));
}

TEST(Written, TurnsItsSignTwiceToItself) {
  for (const std::string text : {"6.67", "-6.67", "20/3"}) {
    const WrittenValue value = written(text);
    EXPECT_EQ(negated(value).number, -value.number);
    EXPECT_TRUE(agrees(negated(value), -value.number));
    EXPECT_EQ(negated(negated(value)).digits, value.digits);
  }
}

}  // namespace
}  // namespace ohmfold

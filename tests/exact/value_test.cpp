// Numbers stay in lowest terms; ratios combine as series and parallel do.

#include "ohmfold/value.h"

#include <gtest/gtest.h>

#include <type_traits>

#include "ohmfold/error.h"

namespace ohmfold {
namespace {

TEST(Number, IsKeptInLowestTerms) {
  EXPECT_EQ(Number::quotient(6, -4).to_string(), "-3/2");
  EXPECT_EQ(Number::quotient(8, 4).to_string(), "2");
  EXPECT_EQ(Number().to_string(), "0");
  EXPECT_TRUE(Number::quotient(8, 4).is_integer());
  EXPECT_FALSE(Number::quotient(1, 2).is_integer());
}

TEST(Number, RefusesToDivideByZero) {
  EXPECT_THROW(static_cast<void>(Number::quotient(1, 0)), InternalError);
  EXPECT_THROW(static_cast<void>(Number(1) / Number(0)), InternalError);
}

TEST(Number, CalculatesAndComparesExactly) {
  const Number third = Number::quotient(1, 3);
  EXPECT_EQ(third + third + third, Number(1));
  EXPECT_EQ(third * Number(3) - Number(1), Number(0));
  EXPECT_EQ(Number(1) / third, Number(3));
  EXPECT_LT(third, Number::quotient(1, 2));
  EXPECT_GT(-third, Number::quotient(-1, 2));
  EXPECT_EQ(abs(-third), third);
  EXPECT_TRUE((-third).is_negative());
  Number sum = third;
  sum += third;
  sum -= Number(1);
  EXPECT_EQ(sum, -third);
}

TEST(Number, SaysWhatItCostsToWorkWith) {
  EXPECT_EQ(Number::quotient(7, 8).bits(), 3U + 4U);
  EXPECT_GT(Number(cln::expt_pos(cln::cl_I(2), 1000)).bits(), 1000U);
}

TEST(Measure, MultipliesAndDividesUnits) {
  const Voltage voltage{12};
  const Resistance resistance{4};
  static_assert(std::is_same_v<decltype(voltage / resistance), Current>);
  static_assert(std::is_same_v<decltype(voltage * Current{}), Power>);
  EXPECT_EQ(voltage / resistance, Current{3});
  EXPECT_EQ(Quantity(voltage / resistance), Quantity(Number(3), Unit::ampere));
}

// Two resistors of 4 and 12 ohm make 16 ohm in series and 3 ohm in parallel.
TEST(Ratio, CombinesInSeriesAndInParallel) {
  const Ratio four(Number(4));
  const Ratio twelve(cln::cl_I(24), cln::cl_I(2));
  EXPECT_EQ(Ratio::series(four, twelve).lowest_terms(), Number(16));
  EXPECT_EQ(Ratio::parallel(four, twelve).lowest_terms(), Number(3));
  EXPECT_TRUE(Ratio().is_zero());
  EXPECT_EQ(twelve.bits(), 5U + 2U);
}

TEST(Ratio, RefusesZeroOhmInParallel) {
  EXPECT_THROW(Ratio::parallel(Ratio(), Ratio(Number(1))), InternalError);
}

}  // namespace
}  // namespace ohmfold

// Turning without floating point.
#include "drawing/turned.h"

#include <gtest/gtest.h>

namespace ohmfold::drawing {
namespace {

TEST(TurnTo, IsExactAlongRowsAndColumns) {
  EXPECT_EQ(placed({5000, 2000}, {10, 20}, turn_to({7, 0})), (FineSpot{15000, 22000}));
  EXPECT_EQ(placed({5000, 2000}, {10, 20}, turn_to({0, 7})), (FineSpot{8000, 25000}));
  EXPECT_EQ(placed({5000, 2000}, {10, 20}, turn_to({-7, 0})), (FineSpot{5000, 18000}));
  EXPECT_EQ(placed({5000, 2000}, {10, 20}, turn_to({0, -7})), (FineSpot{12000, 15000}));
}

TEST(TurnTo, OfASlantIsTheNearestThousandth) {
  EXPECT_EQ(turn_to({1, 1}).cosine, 707);
  EXPECT_EQ(turn_to({1, 1}).sine, 707);
  EXPECT_EQ(turn_to({-3, 4}).cosine, -600);
  EXPECT_EQ(turn_to({-3, 4}).sine, 800);
  EXPECT_EQ(turn_to({1, -2}).cosine, 447);
  EXPECT_EQ(turn_to({1, -2}).sine, -894);
}

TEST(TurnTo, TakesTheLongestDirections) {
  EXPECT_EQ(turn_to({2'000'000'000, 2'000'000'000}).cosine, 707);
  EXPECT_EQ(turn_to({-2'000'000'000, 1}).cosine, -1000);
}

TEST(Decimal, WritesNoMoreDigitsThanNeeded) {
  EXPECT_EQ(decimal(0), "0");
  EXPECT_EQ(decimal(12'000), "12");
  EXPECT_EQ(decimal(-500), "-0.5");
  EXPECT_EQ(decimal(7'071), "7.071");
  EXPECT_EQ(decimal(1'020), "1.02");
  EXPECT_EQ(decimal(-3), "-0.003");
}

}  // namespace
}  // namespace ohmfold::drawing

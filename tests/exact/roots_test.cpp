// Positive zeros of polynomials in one symbol.
#include "exact/roots.h"

#include <gtest/gtest.h>

namespace ohmfold {
namespace {

struct Row {
  std::vector<Number> coefficients;  // by rising power
  std::vector<Number> zeros;
  bool all;
};

TEST(PositiveZeros, AreFoundWhereTheyAreRational) {
  const Number half = Number(1) / 2;
  const std::vector<Row> rows{
      {{-2, 1}, {2}, true},                      // x - 2
      {{2, 1}, {}, true},                        // x + 2
      {{0, 0, -3, 2}, {Number(3) / 2}, true},    // x^2 (2 x - 3)
      {{6, -5, 1}, {2, 3}, true},                // (x - 2)(x - 3)
      {{4, -4, 1}, {2}, true},                   // (x - 2)^2
      {{-1, 0, 1}, {1}, true},                   // (x - 1)(x + 1)
      {{-2, 0, 1}, {}, false},                   // x^2 - 2
      {{1, 0, 1}, {}, true},                     // x^2 + 1
      {{4, -2, -2, 1}, {2}, false},              // (x - 2)(x^2 - 2)
      {{-half, 1}, {half}, true},                // x - 1/2
      {{7}, {}, true},                           // 7
      {{-1, 3, -3, 1}, {1}, true},               // (x - 1)^3
      {{-355, 113}, {Number(355) / 113}, true},  // 113 x - 355
      {{1, -1000001, 1000000}, {Number(1) / 1000000, 1}, true},
  };
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const PositiveZeros found = positive_zeros(rows[i].coefficients);
    EXPECT_EQ(found.rational, rows[i].zeros) << i;
    EXPECT_EQ(found.all, rows[i].all) << i;
  }
}

TEST(PositiveZeros, AreNotLookedForInLongPolynomials) {
  std::vector<Number> coefficients(200, 1);
  coefficients.front() = -1;
  EXPECT_FALSE(positive_zeros(coefficients).all);
}

}  // namespace
}  // namespace ohmfold

// Balanced digits and the numbers that they write.
#include "exact/digits.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <random>

#include "ohmfold/error.h"

namespace ohmfold {
namespace {

TEST(DigitBase, WritesNegativeNumbersWithoutASign) {
  DigitBase base(7);
  EXPECT_EQ(base.digits(5), (std::vector<std::int64_t>{-2, 1}));
  EXPECT_EQ(base.digits(-5), (std::vector<std::int64_t>{2, -1}));
  EXPECT_EQ(base.digits(-1), (std::vector<std::int64_t>{-1}));
  EXPECT_TRUE(base.digits(0).empty());
  EXPECT_EQ(base.whole({}), 0);
}

TEST(DigitBase, GivesNumbersBack) {
  std::mt19937_64 random(3);
  for (const std::uint64_t prime : {std::uint64_t{3}, (std::uint64_t{1} << 61) - 1}) {
    DigitBase base(prime);
    cln::cl_I number = 1;
    for (int i = 0; i < 150; ++i) {
      number = -number * cln::cl_I(static_cast<unsigned long>(random() >> 8)) + i;
      const auto digits = base.digits(number);
      for (const std::int64_t digit : digits) {
        ASSERT_LE(std::abs(digit), static_cast<std::int64_t>(prime / 2));
      }
      ASSERT_EQ(base.whole(digits), number);
      ASSERT_EQ(base.balanced(number, digits.size()), number);
    }
  }
}

TEST(DigitBase, RaisesToAnyPower) {
  DigitBase base(5);
  cln::cl_I power = 1;
  for (std::size_t exponent = 0; exponent < 40; ++exponent) {
    EXPECT_EQ(base.power(exponent), power);
    power = power * 5;
  }
}

TEST(DigitBase, RefusesWhatIsNoBase) {
  EXPECT_THROW(DigitBase(1), InternalError);
  EXPECT_THROW(DigitBase(10), InternalError);
  EXPECT_THROW(DigitBase((std::uint64_t{1} << 62) + 1), InternalError);
}

}  // namespace
}  // namespace ohmfold

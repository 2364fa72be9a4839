// Residues behave like the rationals that they stand for.
#include "exact/prime_field.h"

#include <gtest/gtest.h>

#include "ohmfold/error.h"

namespace ohmfold {
namespace {

// The largest prime below 2^61 is 2^61 - 1, the ninth Mersenne prime (Pervushin 1883).
constexpr std::uint64_t kMersenne = (std::uint64_t{1} << 61) - 1;

TEST(PrimeField, MultipliesLikeLongIntegers) {
  for (const std::uint64_t prime : {kMersenne, PrimeField::random().prime()}) {
    const PrimeField field(prime);
    std::uint64_t a = 0x0123456789ABCDEF % prime;
    std::uint64_t b = prime - 1;
    for (int i = 0; i < 1000; ++i) {
      const cln::cl_I product = cln::cl_I(a) * cln::cl_I(b);
      ASSERT_EQ(field.multiply(a, b), cln::cl_I_to_UQ(cln::mod(product, cln::cl_I(prime))));
      b = a;
      a = field.add(field.multiply(a, a), 12345);
    }
    EXPECT_EQ(field.multiply(prime - 1, prime - 1), 1U);
  }
}

TEST(PrimeField, DividesSoThatMultiplyingGivesTheDividendBack) {
  const PrimeField field = PrimeField::random();
  for (std::uint64_t b = 1; b < 200; ++b) {
    const std::uint64_t quotient = field.divide(17, b);
    ASSERT_LT(quotient, field.prime());
    EXPECT_EQ(field.multiply(quotient, b), 17U);
  }
}

TEST(PrimeField, AddsAndSubtractsAroundThePrime) {
  const PrimeField field(kMersenne);
  EXPECT_EQ(field.add(kMersenne - 1, 1), 0U);
  EXPECT_EQ(field.add(kMersenne - 1, kMersenne - 1), kMersenne - 2);
  EXPECT_EQ(field.subtract(0, 1), kMersenne - 1);
  EXPECT_EQ(field.subtract(5, 5), 0U);
}

TEST(PrimeField, TakesResiduesOfFractionsAndNegativeNumbers) {
  const PrimeField field = PrimeField::random();
  const Number third = Number::quotient(1, 3);
  EXPECT_EQ(field.multiply(field.from(third), 3), 1U);
  EXPECT_EQ(field.add(field.from(Number(-2)), 2), 0U);
  EXPECT_EQ(field.from(Ratio(6, 4)), field.from(Number::quotient(3, 2)));
  EXPECT_EQ(field.from(Number(third - third)), 0U);
}

TEST(PrimeField, RefusesToDivideByZero) {
  const PrimeField field(kMersenne);
  EXPECT_THROW((void)field.divide(1, 0), InternalError);
  EXPECT_THROW((void)field.from(Number::quotient(1, cln::cl_I(kMersenne))), InternalError);
}

TEST(PrimeField, AcceptsPrimesInItsRangeOnly) {
  EXPECT_TRUE(PrimeField::accepts(kMersenne));
  EXPECT_FALSE(PrimeField::accepts(kMersenne - 2));
  EXPECT_FALSE(PrimeField::accepts(7));
  EXPECT_FALSE(PrimeField::accepts(PrimeField::kMost + 15));
  EXPECT_THROW(PrimeField{7}, InternalError);
  EXPECT_TRUE(PrimeField::accepts(PrimeField::random().prime()));
}

}  // namespace
}  // namespace ohmfold

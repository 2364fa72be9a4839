// Residues give back the fractions that they stand for, and nothing where chance would have to.
#include "exact/fraction.h"

#include <cln/modinteger.h>
#include <gtest/gtest.h>

#include <random>

namespace ohmfold {
namespace {

cln::cl_I random_whole(std::mt19937_64& random, std::size_t bits) {
  cln::cl_I number = 1;
  while (cln::integer_length(number) < bits) {
    number = cln::ash(number, 32) + static_cast<unsigned long>(random() >> 32);
  }
  return cln::ash(number, static_cast<std::ptrdiff_t>(bits) -
                              static_cast<std::ptrdiff_t>(cln::integer_length(number)));
}

cln::cl_I residue_of(const cln::cl_I& numerator, const cln::cl_I& denominator,
                     const cln::cl_I& modulus) {
  cln::cl_I inverse, other;
  cln::xgcd(denominator, modulus, &inverse, &other);
  return cln::mod(numerator * inverse, modulus);
}

// 2^61 - 1 and 2^127 - 1 are prime (Mersenne primes), so that every denominator has an inverse.
cln::cl_I modulus_of(unsigned power) {
  return cln::expt_pos((cln::cl_I(1) << 127) - 1, power);
}

TEST(FractionOfResidue, FindsShortFractions) {
  const cln::cl_I modulus = (cln::cl_I(1) << 61) - 1;
  for (int n = -40; n <= 40; ++n) {
    for (int d = 1; d <= 40; ++d) {
      const auto found = fraction_of_residue(residue_of(n, d, modulus), modulus, 30);
      ASSERT_TRUE(found) << n << "/" << d;
      EXPECT_EQ(found->numerator * d, found->denominator * n);
      EXPECT_EQ(cln::gcd(found->numerator, found->denominator), 1);
      EXPECT_GT(found->denominator, 0);
    }
  }
}

TEST(FractionOfResidue, FindsLongFractionsAsSoonAsTheModulusHasRoom) {
  std::mt19937_64 random(11);
  for (const unsigned power : {1U, 2U, 3U, 8U, 25U}) {
    const cln::cl_I modulus = modulus_of(power);
    const std::size_t half = (cln::integer_length(modulus) - 44) / 2;
    for (int round = 0; round < 20; ++round) {
      cln::cl_I n = random_whole(random, half), d = random_whole(random, half);
      const cln::cl_I common = cln::gcd(n, d);
      n = (round % 2 == 0) ? cln::exquo(n, common) : -cln::exquo(n, common);
      d = cln::exquo(d, common);
      const auto found = fraction_of_residue(residue_of(n, d, modulus), modulus, 40);
      ASSERT_TRUE(found);
      EXPECT_EQ(found->numerator, n);
      EXPECT_EQ(found->denominator, d);
    }
  }
}

TEST(FractionOfResidue, FindsNothingInWhatChanceMade) {
  std::mt19937_64 random(12);
  for (const unsigned power : {1U, 2U, 6U}) {
    const cln::cl_I modulus = modulus_of(power);
    for (int round = 0; round < 50; ++round) {
      const cln::cl_I residue = cln::mod(random_whole(random, 127U * 7), modulus);
      EXPECT_FALSE(fraction_of_residue(residue, modulus, 40));
    }
  }
}

}  // namespace
}  // namespace ohmfold

// Numbers with one square root: form, arithmetic, sign, neighbours, rounding.

#include "ohmfold/surd.h"

#include <gtest/gtest.h>

#include "exact/terms.h"
#include "ohmfold/decimal.h"

namespace ohmfold {
namespace {

Number fraction(int p, int q) {
  return Number(p) / Number(q);
}

Surd root(int square) {
  return Surd::root_of(Number(square));
}

TEST(Surd, TakesSquaresOutOfTheRoot) {
  const Surd twelve = root(12);
  EXPECT_EQ(twelve.factor(), Number(2));
  EXPECT_EQ(twelve.radicand(), Number(3));
  const Surd eighths = Surd::root_of(fraction(9, 8));  // 3/(2√2) = 3/4 √2
  EXPECT_EQ(eighths.factor(), fraction(3, 4));
  EXPECT_EQ(eighths.radicand(), Number(2));
}

TEST(Surd, IsRationalWhereTheRootIs) {
  EXPECT_EQ(root(0), Surd(Number(0)));
  EXPECT_EQ(Surd::root_of(fraction(49, 36)).rational(), fraction(7, 6));
  // A square of a prime beyond those that are tried.
  const Number prime(10'007);
  EXPECT_TRUE(Surd::root_of(prime * prime).is_rational());
  EXPECT_EQ(Surd::root_of(prime * prime).rational(), prime);
}

TEST(Surd, ComputesWithinItsField) {
  const Surd a = Surd(Number(1)) + root(2);
  const Surd b = Surd(Number(3)) - root(2);
  EXPECT_EQ(a + b, Surd(Number(4)));
  EXPECT_EQ(a * b, Surd(Number(1)) + Surd(Number(2)) * root(2));  // 3 − √2 + 3√2 − 2
  EXPECT_EQ(a / a, Surd(Number(1)));
  EXPECT_EQ((a / b) * b, a);
  EXPECT_TRUE((root(2) * root(8)).is_rational());
}

TEST(Surd, KnowsItsSignAgainstANearRational) {
  // 577/408 is a convergent of √2 from above, 1393/985 from below.
  EXPECT_EQ((root(2) - Surd(fraction(577, 408))).sign(), Sign::negative);
  EXPECT_EQ((root(2) - Surd(fraction(1393, 985))).sign(), Sign::positive);
  EXPECT_EQ((Surd(fraction(577, 408)) - root(2)).sign(), Sign::positive);
  EXPECT_EQ((-root(2)).sign(), Sign::negative);
  EXPECT_EQ(Surd().sign(), Sign::zero);
}

TEST(Surd, LiesWithinItsBounds) {
  const Surd number = Surd(Number(5)) - Surd(fraction(7, 3)) * root(11);
  const auto [low, high] = bounds(number, fraction(1, 1'000'000));
  EXPECT_EQ((number - Surd(low)).sign(), Sign::positive);
  EXPECT_EQ((Surd(high) - number).sign(), Sign::positive);
  EXPECT_LE(high - low, fraction(1, 1'000'000));
}

TEST(Surd, RoundsLikeItself) {
  EXPECT_EQ(round_to_figures(rounding_like(root(2), 12), 12), "1.41421356237");
  // 577/408 − √2 = 2.1239…e-6: most digits cancel.
  const Surd small = Surd(fraction(577, 408)) - root(2);
  EXPECT_EQ(round_to_figures(rounding_like(small, 3), 3), "0.00000212");
}

TEST(Surd, GoesIntoAQuotientOfPolynomials) {
  const Number x = Number::symbol("x");
  const Number y = Number::symbol("y");
  const Number number = (x * x + y) / (x - Number(1));
  const std::vector<SurdValue> values{{"x", root(2)}, {"y", Surd(Number(3))}};
  EXPECT_EQ(*value_at(number, values), Surd(Number(5)) + Surd(Number(5)) * root(2));
  const std::vector<SurdValue> at_pole{{"x", Surd(Number(1))}, {"y", Surd(Number(3))}};
  EXPECT_FALSE(value_at(number, at_pole));
}

TEST(Terms, StandInFallingOrder) {
  const Number x = Number::symbol("x");
  const Number y = Number::symbol("y");
  const std::vector<std::string> symbols{"x", "y"};
  const std::vector<Term> terms = terms_of(Number(3) - x * y + Number(2) * x * x, symbols);
  ASSERT_EQ(terms.size(), 3U);
  EXPECT_EQ(terms[0].coefficient, Number(2));
  EXPECT_EQ(terms[0].powers, (std::vector<std::size_t>{2, 0}));
  EXPECT_EQ(terms[1].powers, (std::vector<std::size_t>{1, 1}));
  EXPECT_EQ(terms[2].coefficient, Number(3));
  EXPECT_EQ(terms_of(Number(0), symbols).size(), 1U);
}

}  // namespace
}  // namespace ohmfold

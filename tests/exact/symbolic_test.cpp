// Numbers with symbols: lowest terms, equality, signs, parts, values put in, and their text.
#include "ohmfold/symbolic.h"

#include <gtest/gtest.h>

#include <random>

#include "exact/prime_field.h"
#include "exact/rational_function.h"

namespace ohmfold {
namespace {

const Number& r() {
  static const Number symbol = Number::symbol("r");
  return symbol;
}
const Number& s() {
  static const Number symbol = Number::symbol("s");
  return symbol;
}
Number half() {
  return Number(1) / 2;
}
Number power(const Number& base, int exponent) {
  Number result(1);
  for (int i = 0; i < exponent; ++i) result = result * base;
  return result;
}
Number in_parallel(const Number& a, const Number& b) {
  return 1 / (1 / a + 1 / b);
}

TEST(Symbolic, IsARationalAgainWhenItsSymbolsCancel) {
  EXPECT_TRUE(r().is_symbolic());
  for (const Number& number :
       {r() - r(), r() / r(), (r() + 3) - r(), 2 * r() / (3 * r()), (r() * s()) / (s() * r()),
        r() * (1 / r()), (r() * r() - 1) / (r() - 1) - r()}) {
    EXPECT_FALSE(number.is_symbolic()) << number.to_string();
  }
  EXPECT_TRUE((r() - r()).is_zero());
  EXPECT_EQ(2 * r() / (3 * r()), Number(2) / 3);
}

TEST(Symbolic, IsInLowestTerms) {
  EXPECT_EQ((r() * r() - 1) / (r() - 1), r() + 1);
  EXPECT_EQ((2 * r() + 4) / (4 * r() + 8), half());
  EXPECT_EQ(r() / (2 * r() + r() * r()), 1 / (2 + r()));
  EXPECT_EQ((r() * r() - s() * s()) / (r() + s()), r() - s());
  EXPECT_EQ(-1 / (1 - r()), 1 / (r() - 1));
  EXPECT_EQ(power(r() + s(), 5) / power(r() + s(), 3), power(r() + s(), 2));
  EXPECT_EQ(1 / r() + 1 / (r() * r()), (r() + 1) / (r() * r()));
  EXPECT_EQ(1 / (r() * (r() + 1)) + 1 / (r() + 1), 1 / r());
}

TEST(Symbolic, DecidesWhetherADifferenceIsZero) {
  EXPECT_TRUE(((r() + 1) * (r() - 1) - r() * r() + 1).is_zero());
  EXPECT_FALSE(((r() + 1) * (r() - 1) - r() * r() + 2).is_zero());
  EXPECT_NE(r(), s());
  EXPECT_NE(r(), Number(1));
  EXPECT_EQ(Number::symbol("r"), r());
}

TEST(Symbolic, RefusesToDivideByZero) {
  EXPECT_THROW((void)(r() / (r() - r())), InternalError);
}

TEST(Symbolic, KnowsASignWhereAllTermsHaveOne) {
  EXPECT_EQ(r().sign(), Sign::positive);
  EXPECT_EQ((-2 * r()).sign(), Sign::negative);
  EXPECT_EQ((r() - r()).sign(), Sign::zero);
  EXPECT_EQ((r() - 2).sign(), Sign::depends);
  EXPECT_EQ(((r() + 1) / (s() * s() + 3)).sign(), Sign::positive);
  EXPECT_EQ((-(r() + 1) / (s() + 3)).sign(), Sign::negative);
  EXPECT_TRUE(r().is_positive());
  EXPECT_FALSE((r() - 2).is_positive());
  EXPECT_FALSE((r() - 2).is_negative());
  EXPECT_EQ(abs(-r()), r());
  EXPECT_EQ(abs(r() - 2), r() - 2);
}

TEST(Symbolic, ComparesOnlyWhatTheSymbolsDoNotChange) {
  EXPECT_TRUE(r() > 0);
  EXPECT_TRUE(r() + s() > r());
  EXPECT_FALSE(r() > 2);
  EXPECT_FALSE(r() < 2);
  EXPECT_FALSE(r() == 2);
  EXPECT_TRUE(r() <= r());
}

TEST(Symbolic, HasPolynomialsAboveAndBelow) {
  const Number number = (r() * r() * 3 + r() * s() / 2 + 5) / (s() + 1);
  EXPECT_EQ(numerator_of(number), 6 * r() * r() + r() * s() + 10);
  EXPECT_EQ(denominator_of(number), 2 * s() + 2);
  const std::vector<Number> by_r = coefficients(numerator_of(number), "r");
  ASSERT_EQ(by_r.size(), 3U);
  EXPECT_EQ(by_r[0], Number(10));
  EXPECT_EQ(by_r[1], s());
  EXPECT_EQ(by_r[2], Number(6));
  EXPECT_EQ(coefficients(number, "r").size(), 3U);
  EXPECT_EQ(coefficients(Number(7), "r"), std::vector<Number>{Number(7)});
  EXPECT_EQ(symbols_of(number), (std::vector<std::string>{"r", "s"}));
  EXPECT_EQ(numerator_of(Number(3) / 4), Number(3));
  EXPECT_EQ(denominator_of(Number(3) / 4), Number(4));
}

TEST(Symbolic, PolynomialsAreDifferencesOfPositiveSums) {
  const auto [positive, negative] = positive_and_negative_terms(r() * s() - 8 - r() + s() * s());
  EXPECT_EQ(positive, r() * s() + s() * s());
  EXPECT_EQ(negative, r() + 8);
  EXPECT_EQ(count_terms((r() + 3) / s()), 3U);
}

TEST(Symbolic, TakesValues) {
  const Number number = (r() + s()) / (r() - 2);
  const std::vector<SymbolValue> one{{"r", Number(4)}};
  const std::vector<SymbolValue> both{{"s", half()}, {"r", Number(4)}};
  const std::vector<SymbolValue> pole{{"r", Number(2)}};
  EXPECT_EQ(substitute(number, one), (s() + 4) / 2);
  EXPECT_EQ(substitute(number, both), Number(9) / 4);
  EXPECT_EQ(substitute(number, pole), std::nullopt);
  EXPECT_EQ(substitute(Number(3), pole), Number(3));
  const std::vector<SymbolValue> other{{"r", s() * 2}};
  EXPECT_EQ(substitute(number, other), 3 * s() / (2 * s() - 2));
}

TEST(Symbolic, IsWrittenInOneOrderWithFactorsInFront) {
  struct Case {
    Number number;
    std::string text;
  };
  const std::vector<Case> cases{
      {r(), "r"},
      {r() * 3 / 2, "3/2 r"},
      {-r(), "-r"},
      {r() / -3, "-1/3 r"},
      {s() + r() * 2 + 3, "2 r + s + 3"},
      {r() * r() * s() + 4, "r^2 s + 4"},
      {24 / (5 * r()), "24/(5 r)"},
      {1 / r(), "1/r"},
      {1 / (r() * r()), "1/r^2"},
      {r() * (r() + 6) / (2 * r() + 6), "r (r + 6)/(2 r + 6)"},
      {(3 * r() + 6) / 2, "(3 r + 6)/2"},
      {r() * s() / (r() + s()), "r s/(r + s)"},
      {(2 - r()) / (r() + 4), "(2 - r)/(r + 4)"},
      {(-2 - r()) / 3, "(-r - 2)/3"},
      {(-2 - r()) * r() / 3, "r (-r - 2)/3"},
      {2 / (s() * (r() + 1)), "2/(s (r + 1))"},
      {3 * power(r() + 2, 2) / power(r() + 3, 3), "3 (r + 2)^2/(r + 3)^3"},
      {power(r() + 2, 2), "(r + 2)^2"},
      {power(r() - s(), 2) / (r() + s()), "(r - s)^2/(r + s)"},
      {r() * power(r() + 2, 2) * power(r() + 1, 3) / 2, "r (r + 2)^2 (r + 1)^3/2"},
      {1 / power(7 * r() + 15, 2), "1/(7 r + 15)^2"},
      {(r() + 5) * power(r() + 2, 2) * 6, "6 (r + 5) (r + 2)^2"},
  };
  for (const Case& one : cases) EXPECT_EQ(one.number.to_string(), one.text);
  EXPECT_EQ(one_line(power(r(), 12) + r() * r(), Letters::unicode), "r² (r^10 + 1)");
  EXPECT_EQ(one_line((2 - r()) / -3 - s() * 2, Letters::unicode), "(r − 6 s − 2)/3");
  EXPECT_EQ(bracketed_line(r() + 3, Letters::ascii), "(r + 3)");
  EXPECT_EQ(bracketed_line(r() / 3, Letters::ascii), "1/3 r");
  EXPECT_EQ(bracketed_line((r() + 3) / 2, Letters::ascii), "(r + 3)/2");
  EXPECT_EQ(bracketed_line(r() * (r() + 3), Letters::ascii), "r (r + 3)");
  EXPECT_EQ(exact_text({r() + 3, Unit::ohm}, Letters::unicode), "(r + 3) Ω");
  EXPECT_EQ(rounded_text({24 / (5 * r()), Unit::ampere}, 3, Letters::ascii), "24/(5 r) A");
  const FractionText text = fraction_text((r() + 6) / (2 * r()), Letters::unicode);
  EXPECT_EQ(text.above, "r + 6");
  EXPECT_EQ(text.below, "2 r");
  EXPECT_EQ(fraction_text(Number(-3) / 4, Letters::unicode).below, "4");
}

TEST(Symbolic, RatiosCarryIt) {
  const Ratio ratio(r());
  EXPECT_FALSE(ratio.is_zero());
  EXPECT_TRUE(ratio.is_positive());
  EXPECT_EQ(Ratio::series(ratio, Ratio(Number(3))).lowest_terms(), r() + 3);
  EXPECT_EQ(Ratio::parallel(ratio, Ratio(s())).lowest_terms(), r() * s() / (r() + s()));
  EXPECT_FALSE(Ratio::parallel(ratio, Ratio(Number(3))).lowest_terms() ==
               Ratio::parallel(ratio, Ratio(Number(4))).lowest_terms());
}

// Random quotients: a law of fields holds for the numbers, and for values put in.
TEST(Symbolic, ObeysTheLawsOfFractions) {
  std::mt19937 random(7);
  const auto small = [&] { return static_cast<int>(random() % 7) - 3; };
  const auto polynomial = [&] {
    return power(r(), static_cast<int>(random() % 3)) * small() + s() * small() +
           r() * s() * small() + Number(small());
  };
  const auto quotient = [&] {
    Number below = polynomial();
    while (below.is_zero()) below = polynomial();
    return polynomial() / below;
  };
  const std::vector<SymbolValue> values{{"r", Number(101) / 7}, {"s", Number(55) / 13}};
  for (int i = 0; i < 300; ++i) {
    const Number a = quotient(), b = quotient(), c = quotient();
    EXPECT_EQ(a * (b + c), a * b + a * c);
    EXPECT_EQ((a + b) - b, a);
    EXPECT_EQ((a - b) + (b - a), Number(0));
    if (!b.is_zero()) {
      EXPECT_EQ(a / b * b, a);
    }
    EXPECT_EQ(*substitute(a * b + c, values),
              *substitute(a, values) * *substitute(b, values) + *substitute(c, values));
    const PrimeField field = PrimeField(PrimeField::kLeast + 33);
    EXPECT_EQ(field.from(a * b + c),
              field.add(field.multiply(field.from(a), field.from(b)), field.from(c)));
  }
}

TEST(Symbolic, ALadderOfOneSymbolStaysQuick) {
  const WorkLimit limit(200'000'000);
  Number ladder = r();
  for (int i = 0; i < 50; ++i) ladder = in_parallel(ladder + r() * (i % 7 + 1), Number(i % 5 + 1));
  const std::vector<SymbolValue> values{{"r", Number(3) / 2}};
  Number numeric = Number(3) / 2;
  for (int i = 0; i < 50; ++i) {
    numeric = in_parallel(numeric + Number(3) / 2 * (i % 7 + 1), Number(i % 5 + 1));
  }
  EXPECT_EQ(substitute(ladder, values), numeric);
}

TEST(Symbolic, EndsWhereItGrowsBeyondTheLimit) {
  const WorkLimit limit(100'000'000);
  const auto grow = [] {
    Number sum;
    for (int i = 0; i < 40; ++i) sum = sum + 1 / (Number::symbol("r" + std::to_string(i)) + i);
  };
  EXPECT_THROW(grow(), BeyondBudget);
  const auto raise = [] {
    Number power = r() + s() + 1;
    for (int i = 0; i < 40; ++i) power = power * power;
  };
  EXPECT_THROW(raise(), BeyondBudget);
  const auto tower = [] {
    Number power = r();
    for (int i = 0; i < 40; ++i) power = power * power;
  };
  EXPECT_THROW(tower(), BeyondBudget);
}

TEST(WorkLimit, NestsAndEnds) {
  {
    const WorkLimit outer(10'000);
    {
      const WorkLimit inner(100);
      EXPECT_THROW((void)(power(r() + s() + 1, 20)), BeyondBudget);
    }
    EXPECT_NO_THROW((void)((r() + 1) * (s() + 1)));
  }
  EXPECT_NO_THROW((void)(power(r() + s() + 1, 20)));
}

}  // namespace
}  // namespace ohmfold

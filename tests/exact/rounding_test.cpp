// Rounding is half to even on the exact value, and units get the prefix that suits.

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "ohmfold/decimal.h"

namespace ohmfold {
namespace {

struct Row {
  std::string_view number;
  int figures;
  std::string_view expected;
};

Number exact_of(std::string_view text) {
  const ParsedNumber read = parse_number(text);
  EXPECT_EQ(read.fault, NumberFault::none) << text;
  return read.number;
}

// NIST Special Publication 811 (2008), B.7.1, rounding to seven figures: ties go to the even digit,
// anything past the tie goes up. From memory.
TEST(RoundToFigures, FollowsTheExamplesOfNistSp811) {
  EXPECT_EQ(round_to_figures(exact_of("6.9749515"), 7), "6.974952");
  EXPECT_EQ(round_to_figures(exact_of("6.9749505"), 7), "6.974950");
  EXPECT_EQ(round_to_figures(exact_of("6.974951501"), 7), "6.974952");
  EXPECT_EQ(round_to_figures(exact_of("6.974950501"), 7), "6.974951");
}

TEST(RoundToFigures, SendsTiesToTheEvenDigit) {
  const std::vector<Row> table{
      {"60.75", 3, "60.8"}, {"60.65", 3, "60.6"},  {"60.85", 3, "60.8"}, {"1975", 3, "1980"},
      {"1965", 3, "1960"},  {"2.5", 1, "2"},       {"3.5", 1, "4"},      {"-2.5", 1, "-2"},
      {"-3.5", 1, "-4"},    {"0.125", 2, "0.12"},  {"0.375", 2, "0.38"}, {"9.5", 1, "10"},
      {"8.5", 1, "8"},      {"0.0995", 2, "0.10"}, {"995", 2, "1000"},   {"985", 2, "980"},
  };
  for (const Row& row : table) {
    EXPECT_EQ(round_to_figures(exact_of(row.number), row.figures), row.expected) << row.number;
  }
}

// A value just beside a tie that binary floating point could not tell from it.
TEST(RoundToFigures, LooksAtTheExactValue) {
  EXPECT_EQ(round_to_figures(exact_of("60.65" + std::string(40, '0') + "1"), 3), "60.7");
  EXPECT_EQ(round_to_figures(exact_of("60.74" + std::string(60, '9')), 3), "60.7");
  EXPECT_EQ(round_to_figures(exact_of("1/3"), 20), "0.33333333333333333333");
  EXPECT_EQ(round_to_figures(exact_of("2/3"), 20), "0.66666666666666666667");
}

TEST(RoundToFigures, WritesPlainDecimalsAndExponentsBeyond) {
  const std::vector<Row> table{
      {"0", 3, "0"},
      {"41/51", 3, "0.804"},
      {"1.2", 3, "1.20"},
      {"12345", 3, "12300"},
      {"-0.0012345", 3, "-0.00123"},
      {"1", 1, "1"},
      {"10", 1, "10"},
      {"10", 5, "10.000"},
      {"99.96", 3, "100"},
      {"99.94", 3, "99.9"},
      {"999999", 3, "1000000"},
      {"123456789", 9, "123456789"},
      {"1.23456789", 9, "1.23456789"},
      {"123456789012345", 3, "123000000000000"},
      {"1234567890123456", 3, "1.23e15"},
      {"999.6e12", 3, "1.00e15"},
      {"1.23e21", 3, "1.23e21"},
      {"1e21", 1, "1e21"},
      {"1.234e-9", 3, "0.00000000123"},
      {"1.234e-10", 3, "1.23e-10"},
      {"-1e-9999", 2, "-1.0e-9999"},
      {"9.99e9999", 2, "1.0e10000"},
  };
  for (const Row& row : table) {
    EXPECT_EQ(round_to_figures(exact_of(row.number), row.figures), row.expected) << row.number;
  }
}

// Every first digit at every power of ten: the guess of the exponent is put right each time.
TEST(RoundToFigures, FindsTheFirstFigureAtEveryPowerOfTen) {
  for (int power = -60; power <= 60; ++power) {
    for (const std::string mantissa : {"1.00", "1.01", "2.00", "4.99", "9.98", "9.99"}) {
      const Number number = exact_of(mantissa + "e" + std::to_string(power));
      const Number back = exact_of(round_to_figures(number, 3));
      EXPECT_EQ(back, number) << mantissa << "e" << power;
    }
  }
}

TEST(TerminatingDecimal, IsThereExactlyWhereTheDecimalEnds) {
  EXPECT_EQ(terminating_decimal(exact_of("18/5"), 6), "3.6");
  EXPECT_EQ(terminating_decimal(exact_of("1/3"), 30), std::nullopt);
  EXPECT_EQ(terminating_decimal(exact_of("1/8"), 3), "0.125");
  EXPECT_EQ(terminating_decimal(exact_of("1/8"), 2), std::nullopt);
  EXPECT_EQ(terminating_decimal(exact_of("-12"), 6), "-12");
  EXPECT_EQ(terminating_decimal(exact_of("1200"), 2), "1200");
  EXPECT_EQ(terminating_decimal(exact_of("1234"), 3), std::nullopt);
  EXPECT_EQ(terminating_decimal(exact_of("0"), 1), "0");
  EXPECT_EQ(terminating_decimal(exact_of("1e20"), 3), "1e20");
}

struct Shown {
  std::string_view number;
  Unit unit;
  int figures;
  std::string_view expected;
};

TEST(RoundedText, PutsTheNumberBetweenOneAndAThousand) {
  const std::vector<Shown> table{
      {"35/51", Unit::ampere, 3, "686 mA"},
      {"4700", Unit::ohm, 3, "4.70 kΩ"},
      {"1975", Unit::ohm, 3, "1.98 kΩ"},
      {"60.75", Unit::volt, 3, "60.8 V"},
      {"999.6", Unit::ohm, 3, "1.00 kΩ"},
      {"0.9996", Unit::watt, 3, "1.00 W"},
      {"1/1000", Unit::siemens, 3, "1.00 mS"},
      {"999.4e-6", Unit::ampere, 3, "999 µA"},
      {"2.2e6", Unit::ohm, 2, "2.2 MΩ"},
      {"3e9", Unit::ohm, 2, "3.0 GΩ"},
      {"1e12", Unit::ohm, 2, "1000000000000 Ω"},
      {"5e21", Unit::ohm, 2, "5.0e21 Ω"},
      {"5e-9", Unit::ampere, 2, "5.0 nA"},
      {"5e-12", Unit::ampere, 2, "5.0 pA"},
      {"5e-13", Unit::ampere, 2, "5.0e-13 A"},
      {"-1/2", Unit::ampere, 3, "-500 mA"},
      {"0", Unit::volt, 3, "0 V"},
      {"47", Unit::ohm, 1, "50 Ω"},
  };
  for (const Shown& row : table) {
    const Quantity quantity(exact_of(row.number), row.unit);
    EXPECT_EQ(rounded_text(quantity, row.figures, Letters::unicode), row.expected) << row.number;
  }
}

TEST(RoundedText, HasPlainLettersToo) {
  EXPECT_EQ(rounded_text({exact_of("4700"), Unit::ohm}, 3, Letters::ascii), "4.70 kohm");
  EXPECT_EQ(rounded_text({exact_of("5e-6"), Unit::ampere}, 3, Letters::ascii), "5.00 uA");
}

TEST(ExactText, IsTheFractionInThePlainUnit) {
  EXPECT_EQ(exact_text({exact_of("18/5"), Unit::ohm}, Letters::unicode), "18/5 Ω");
  EXPECT_EQ(exact_text({exact_of("18/5"), Unit::ohm}, Letters::ascii), "18/5 ohm");
  EXPECT_EQ(exact_text({exact_of("12"), Unit::volt}, Letters::unicode), "12 V");
  EXPECT_EQ(exact_text({exact_of("-1.5"), Unit::ampere}, Letters::unicode), "-3/2 A");
}

}  // namespace
}  // namespace ohmfold

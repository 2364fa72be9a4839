// Numbers are read digit by digit as the fractions that they are.

#include "ohmfold/decimal.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace ohmfold {
namespace {

struct Read {
  std::string_view text;
  std::string_view value;
};

TEST(ParseNumber, ReadsDecimalsAndFractionsExactly) {
  const std::vector<Read> table{
      {"12", "12"},
      {"4.7", "47/10"},
      {".5", "1/2"},
      {"0.1", "1/10"},
      {"15/8", "15/8"},
      {"1.2e3", "1200"},
      {"1.2E+3", "1200"},
      {"5e-3", "1/200"},
      {"-3", "-3"},
      {"+3", "3"},
      {"-15/8", "-15/8"},
      {"0", "0"},
      {"-0", "0"},
      {"000012.50", "25/2"},
      {"1.5/0.5", "3"},
      {"1e2/4e1", "5/2"},
      {"4/6", "2/3"},
      {"0/7", "0"},
      {"0.333333333", "333333333/1000000000"},
      {"999999999999999999", "999999999999999999"},
      {"1234567890123456789", "1234567890123456789"},
      {"12345678901234567890.5", "24691357802469135781/2"},
  };
  for (const Read& row : table) {
    const ParsedNumber read = parse_number(row.text);
    EXPECT_EQ(read.fault, NumberFault::none) << row.text;
    EXPECT_EQ(read.number.to_string(), row.value) << row.text;
  }
}

TEST(ParseNumber, RefusesWhatIsNoNumber) {
  const std::vector<std::string_view> table{
      "",    "-",     ".",   "+",        "5.",    "1..2",  "1.2.3", "--3", "e3",  "1e",
      "1e+", "1e1.5", "1/",  "/2",       "1/2/3", "1/-2",  "1 ",    " 1",  "1,5", "0x10",
      "4k7", "inf",   "nan", "1e99999x", "1_000", "1'000", "²",     "1/x"};
  for (const std::string_view text : table) {
    EXPECT_EQ(parse_number(text).fault, NumberFault::malformed) << text;
  }
  EXPECT_EQ(parse_number(std::string_view("1\0002", 3)).fault, NumberFault::malformed);
}

TEST(ParseNumber, NamesTheOtherFaults) {
  EXPECT_EQ(parse_number("1/0").fault, NumberFault::division_by_zero);
  EXPECT_EQ(parse_number("0/0.000").fault, NumberFault::division_by_zero);
  EXPECT_EQ(parse_number("1e10000").fault, NumberFault::too_large);
  EXPECT_EQ(parse_number("1e-99999999999999999999").fault, NumberFault::too_large);
  EXPECT_EQ(parse_number("2/1e10000").fault, NumberFault::too_large);
  EXPECT_EQ(parse_number(std::string(kMostDigits + 1, '1')).fault, NumberFault::too_large);
}

TEST(ParseNumber, ReadsTheLargestThatAreAllowed) {
  EXPECT_EQ(parse_number("1e9999").number.to_string(), "1" + std::string(9999, '0'));
  const std::string digits(kMostDigits, '7');
  const ParsedNumber whole = parse_number(digits);
  ASSERT_EQ(whole.fault, NumberFault::none);
  EXPECT_EQ(whole.number.to_string(), digits);
  // 0.777…7 times 10^100000 is the whole number again.
  const ParsedNumber part = parse_number("0." + digits.substr(1));
  ASSERT_EQ(part.fault, NumberFault::none);
  EXPECT_EQ(part.number.to_string(), digits.substr(1) + "/1" + std::string(kMostDigits - 1, '0'));
}

// IEC 60062, "Marking codes for resistors and capacitors", resistance letter and digit code, from
// memory. L for milliohm is common practice for current-sensing resistors, no source.
TEST(ParseLetterCode, ReadsTheCodesOfIec60062) {
  const std::vector<Read> table{
      {"R47", "47/100"},
      {"4R7", "47/10"},
      {"470R", "470"},
      {"4K7", "4700"},
      {"47K", "47000"},
      {"47K3", "47300"},
      {"470K", "470000"},
      {"4M7", "4700000"},
      {"4k7", "4700"},
      {"2M2", "2200000"},
      {"1G", "1000000000"},
      {"R10", "1/10"},
      {"1R0", "1"},
      {"10R", "10"},
      {"1M0", "1000000"},
      {"5L6", "7/1250"},
      {"1T0", "1000000000000"},
      {"0R0", "0"},
  };
  for (const Read& row : table) {
    const std::optional<Number> value = parse_letter_code(row.text);
    ASSERT_TRUE(value) << row.text;
    EXPECT_EQ(value->to_string(), row.value) << row.text;
  }
}

TEST(ParseLetterCode, LeavesEverythingElseAlone) {
  for (const std::string_view text :
       {"", "R", "R1", "K5", "47", "4.7k", "4r7", "2m2", "4k7k", "R4R7", "4kk7", "4V5", "-4k7",
        "4k-7", "kohm", " 4k7", "4k7 "}) {
    EXPECT_FALSE(parse_letter_code(text)) << text;
  }
  EXPECT_FALSE(parse_letter_code(std::string(kMostDigits + 1, '1') + "k"));
}

struct Claim {
  std::string_view printed, exact;
  int scale = 0;
};

Number exact_of(std::string_view text) {
  return parse_number(text).number;
}

// The rule: within half a unit of the last figure, both ends included, so that rounding half up and
// half to even both pass. 97/19 = 5.1053 is rounded to 5.11; a printed 5.10 is cut off.
TEST(Agrees, TakesADecimalAsRoundedToItsLastFigure) {
  const std::vector<Claim> table{
      {"2.6", "13/5"},    {"2.6", "2.55"},
      {"2.6", "2.65"},    {"0.667", "2/3"},
      {"5.11", "97/19"},  {"1200", "1249"},
      {"1200", "1150"},   {"1200", "1200.4"},
      {"-1.5", "-1.46"},  {"686.27", "0.68627451", -3},
      {"4.7", "4700", 3}, {"2/3", "2/3"},
      {"4/6", "2/3"},     {"1.2e3", "1249"},
      {"0", "0"},         {"100", "149"},
      {"1.50", "1.504"},  {"2/3", "2000/3", 3},
  };
  for (const Claim& row : table) {
    EXPECT_TRUE(agrees(row.printed, exact_of(row.exact), row.scale)) << row.printed;
  }
}

TEST(Agrees, RefusesWhatIsOffByMore) {
  const std::vector<Claim> table{
      {"2.6", "2.5499999"},
      {"2.6", "2.65000001"},
      {"0.666", "2/3"},
      {"5.10", "97/19"},
      {"1200", "1250.1"},
      {"1.5", "-1.5"},
      {"1200.", "1200"},
      {"2/3", "0.6667"},
      {"686.27", "0.68628", -3},
      {"4.7", "4.7", 3},
      {"", "0"},
      {"abc", "0"},
      {"0", "0.6"},
      {"1.50", "1.506"},
      {"1200.0", "1249"},
  };
  for (const Claim& row : table) {
    EXPECT_FALSE(agrees(row.printed, exact_of(row.exact), row.scale)) << row.printed;
  }
}

}  // namespace
}  // namespace ohmfold

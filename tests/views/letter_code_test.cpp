// Resistances as they are marked on parts; what is written is read back as the same number.
#include "views/letter_code.h"

#include <gtest/gtest.h>

#include "ohmfold/decimal.h"

namespace ohmfold::views {
namespace {

struct Row {
  const char* ohms;
  const char* code;
};

class LetterCode : public testing::TestWithParam<Row> {};

TEST_P(LetterCode, IsWrittenAndReadBack) {
  const Number ohms = parse_number(GetParam().ohms).number;
  EXPECT_EQ(letter_code(ohms), GetParam().code);
  EXPECT_EQ(parse_letter_code(GetParam().code), ohms);
}

INSTANTIATE_TEST_SUITE_P(Values, LetterCode,
                         testing::Values(Row{"4700", "4K7"}, Row{"470", "470R"}, Row{"4.7", "4R7"},
                                         Row{"0.47", "R47"}, Row{"0.1", "R10"}, Row{"0.05", "R05"},
                                         Row{"1000", "1K"}, Row{"2200000", "2M2"},
                                         Row{"33200", "33K2"}, Row{"999", "999R"},
                                         Row{"5000000000", "5G"}, Row{"1e12", "1T"}));

TEST(LetterCodes, AreNotThereForWhatNoCodeSays) {
  for (const char* ohms : {"20/3", "1.23456", "0.0001", "0", "-3"}) {
    EXPECT_EQ(letter_code(parse_number(ohms).number), std::nullopt) << ohms;
  }
  EXPECT_EQ(letter_code(Number::symbol("r")), std::nullopt);
}

}  // namespace
}  // namespace ohmfold::views

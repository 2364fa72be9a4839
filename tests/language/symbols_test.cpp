// Symbols in circuit files: the values that are made of them, and what they stand for.
#include <gtest/gtest.h>

#include <string>

#include "ohmfold/read.h"

namespace ohmfold {
namespace {

Outcome<Problem> read(const std::string& text) {
  return read_circuit({"a.circuit", text});
}

TEST(SymbolicValue, IsASumOfMultiples) {
  struct Row {
    std::string written, value;
  };
  const std::vector<Row> rows{
      {"r", "r"},
      {"2 r", "2 r"},
      {"2r", "2 r"},
      {"3/2 r", "3/2 r"},
      {"r/3", "1/3 r"},
      {"0.5*r", "1/2 r"},
      {"2 * r", "2 r"},
      {"r + 3 ohm", "r + 3"},
      {"r+3", "r + 3"},
      {"2 r + s", "2 r + s"},
      {"4k7 + r", "r + 4700"},
      {"r + 2 kohm + 1/2 s", "(2 r + s + 4000)/2"},
      {"r + r", "2 r"},
      {"3 r - r", "2 r"},
      {"1e2 r", "100 r"},
      {"5 ohm", "5"},
  };
  for (const Row& row : rows) {
    const auto problem = read("symbol r\nsymbol s\nresistor R1 = " + row.written +
                              " from A to B\nfind resistance between A and B\n");
    ASSERT_TRUE(problem) << row.written;
    EXPECT_EQ(problem.value->parts.front().value.to_string(), row.value);
  }
}

TEST(Symbol, HasTheUnitOfItsValueOrOfItsFirstUse) {
  const auto problem = read(
      "resistor R1 = a from G to T\n"
      "battery E = b + 3 internal c from G to T\n"
      "resistor R2 = d from G to T\n"
      "symbol a\nsymbol b\nsymbol c = 4\nsymbol d = 4k7\nsymbol f = 2 mA\n");
  ASSERT_TRUE(problem);
  const std::vector<SymbolMeaning>& symbols = problem.value->symbols;
  ASSERT_EQ(symbols.size(), 5U);
  EXPECT_EQ(symbols[0].unit, Unit::ohm);
  EXPECT_EQ(symbols[0].value, std::nullopt);
  EXPECT_EQ(symbols[1].unit, Unit::volt);
  EXPECT_EQ(symbols[2].unit, Unit::ohm);
  EXPECT_EQ(symbols[2].value, Number(4));
  EXPECT_EQ(symbols[3].value, Number(4700));
  EXPECT_EQ(symbols[4].unit, Unit::ampere);
  EXPECT_EQ(symbols[4].value, Number(1) / 500);
}

TEST(Symbol, CanBeSetInACase) {
  const auto problem = read(
      "symbol r\nbattery E = 1 V from G to T\nresistor R1 = 4 from G to T\n"
      "case \"worn\": R1 = 2 r + 1 ohm\n");
  ASSERT_TRUE(problem);
  EXPECT_EQ(problem.value->cases.front().settings.front().value.to_string(), "2 r + 1");
}

}  // namespace
}  // namespace ohmfold

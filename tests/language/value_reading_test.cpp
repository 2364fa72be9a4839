// A value means the same in all the ways in which it may be written.

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "language/findings_of.h"

namespace ohmfold {
namespace {

struct Row {
  std::string_view written;
  std::string_view value;
};

/// The value of a part that is written so, or the first finding.
std::string value_of(const std::string& part, std::string_view written) {
  const std::string text =
      "battery Q = 1 from A to B\n" + part + " = " + std::string(written) + " from A to B\n";
  const Outcome<Problem> outcome = read_circuit(circuit_text(text));
  if (!outcome) return message(outcome.diagnostics.front());
  return outcome.value->parts[1].value.to_string();
}

// The letter codes are those of IEC 60062, from memory.
TEST(Value, OfAResistorMayBeWrittenInManyWays) {
  const std::vector<Row> table{
      {"4.7 kohm", "4700"},
      {"4.7kohm", "4700"},
      {"4.7kΩ", "4700"},
      {"4.7 k\u2126", "4700"},
      {"4.7 k", "4700"},
      {"4.7k", "4700"},
      {"4.7 K", "4700"},
      {"4k7", "4700"},
      {"4K7", "4700"},
      {"4k7 ohm", "4700"},
      {"4700", "4700"},
      {"4.7e3", "4700"},
      {"47e2 Ω", "4700"},
      {"0.0047 M", "4700"},
      {"R47", "47/100"},
      {"470R", "470"},
      {"2M2", "2200000"},
      {"15/8", "15/8"},
      {"15/8 kohm", "1875"},
      {"3 mohm", "3/1000"},
      {"3 uohm", "3/1000000"},
      {"3 µΩ", "3/1000000"},
      {"3 \u03BC\u03A9", "3/1000000"},
      {"3 nohm", "3/1000000000"},
      {"3 pohm", "3/1000000000000"},
      {"1 Gohm", "1000000000"},
      {"0", "0"},
      {"0 ohm", "0"},
      {".5 ohm", "1/2"},
  };
  for (const Row& row : table) EXPECT_EQ(value_of("resistor R1", row.written), row.value);
}

TEST(Value, OfABatteryIsInVolt) {
  const std::vector<Row> table{{"12 V", "12"},    {"12V", "12"},   {"12", "12"},
                               {"-9 V", "-9"},    {"0 V", "0"},    {"1.5 kV", "1500"},
                               {"50 mV", "1/20"}, {"3/2V", "3/2"}, {"20 µV", "1/50000"}};
  for (const Row& row : table) EXPECT_EQ(value_of("battery E", row.written), row.value);
}

TEST(Value, IsRefusedWithARemedy) {
  const std::vector<Row> table{
      {"4 V", "'V' is no unit of resistance; the unit here is ohm"},
      {"4 mA", "'mA' is no unit of resistance; the unit here is ohm"},
      {"4k7 V", "'V' is no unit of a letter code; the unit here is ohm"},
      {"4k7 kohm", "'kohm' is no unit of a letter code; the unit here is ohm"},
      {"4 Ohm", "'Ohm' is not a unit; did you mean 'ohm'?"},
      {"4 ohms", "'ohms' is not a unit; did you mean 'ohm'?"},
      {"4v7", "'v7' is not a unit; the letters of codes such as 4k7 are R, k or K, M, G, L and T"},
      {"4 frm", "'frm' is not a unit; did you mean 'from'?"},
      {"5.", "'5.' is not a number; numbers look like 12, 4.7, 15/8 or 1.2e3"},
      {"2*3", "'2*3' is not a number; numbers look like 12, 4.7, 15/8 or 1.2e3"},
      {"−3", "'−3' is not a number; numbers look like 12, 4.7, 15/8 or 1.2e3"},
      {"15 / 8", "'/' is not a number; a fraction is written without spaces, such as 15/8"},
      {"4 7", "expected 'from', found '7'"},
      {"-0.001", "a resistance cannot be negative"},
      {"R1",
       "'R1' is neither a number nor a declared symbol; write a number and "
       "a unit"},
      {"1/0.0", "'1/0.0' divides by zero"},
  };
  for (const Row& row : table) EXPECT_EQ(value_of("resistor R1", row.written), row.value);
}

TEST(Value, OfABatteryIsRefusedWithARemedy) {
  const std::vector<Row> table{
      {"4 ohm", "'ohm' is no unit of voltage; the unit here is V"},
      {"9 k", "'k' is a prefix without a unit; write kV"},
      {"4k7", "'k7' is not a unit; letter codes such as 4k7 are for resistances"},
      {"9 volts", "'volts' is not a unit; did you mean 'V'?"},
      {"9 V internal 2 V", "'V' is no unit of resistance; the unit here is ohm"},
      {"9 V internal -2 ohm", "a resistance cannot be negative"},
  };
  for (const Row& row : table) EXPECT_EQ(value_of("battery E", row.written), row.value);
}

TEST(Value, MayHaveTenThousandDigits) {
  const std::string digits(10'000, '9');
  EXPECT_EQ(value_of("resistor R1", digits + " ohm"), digits);
  EXPECT_EQ(value_of("resistor R1", digits + "/" + digits), "1");
}

TEST(ReadVoltage, ReadsAVoltageAsACircuitFileWritesIt) {
  for (const std::string_view text : {"12V", "12 V", "12", "0.012 kV", " 12 V "}) {
    const Outcome<Number> voltage = read_voltage({.name = "--across", .text = std::string(text)});
    ASSERT_TRUE(voltage) << text;
    EXPECT_EQ(*voltage.value, Number(12));
  }
}

TEST(ReadVoltage, RefusesAnythingElse) {
  const std::vector<Row> table{
      {"", "--across:1:1: error: expected a value, found the end of the line\n    \n    ^"},
      {"12 ohm",
       "--across:1:4: error: 'ohm' is no unit of voltage; the unit here is V\n    12 ohm\n       "
       "^~~"},
      {"12 V 3",
       "--across:1:6: error: '3' is left over at the end of the statement; a line holds "
       "one statement\n    12 V 3\n         ^"},
  };
  for (const Row& row : table) {
    const SourceText source{.name = "--across", .text = std::string(row.written)};
    const Outcome<Number> voltage = read_voltage(source);
    ASSERT_FALSE(voltage);
    EXPECT_EQ(render(voltage.diagnostics.front(), source), row.value);
  }
}

}  // namespace
}  // namespace ohmfold

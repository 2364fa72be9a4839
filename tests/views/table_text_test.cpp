// Columns of a table stand below one another, whatever the letters.
#include "views/table_text.h"

#include <gtest/gtest.h>

#include "views/lettering.h"

namespace ohmfold::views {
namespace {

Table sample() {
  Table table;
  table.columns = {{say("Part"), Align::left}, {say("R"), Align::right}};
  table.rows = {{say("R1"), say("4 Ω")}, {say("lamp"), say("12 Ω")}};
  return table;
}

TEST(TableText, AlignsByDisplayWidth) {
  EXPECT_EQ(table_lines(sample(), 80, Letters::unicode),
            (std::vector<std::string>{"Part     R", "────  ────", "R1     4 Ω", "lamp  12 Ω"}));
  EXPECT_EQ(
      table_lines(sample(), 80, Letters::ascii),
      (std::vector<std::string>{"Part       R", "----  ------", "R1     4 ohm", "lamp  12 ohm"}));
}

TEST(TableText, WrapsCellsWhereItIsTooWide) {
  Table table = sample();
  table.rows = {{say("R1"), say("318/155\u00A0V ≈\u00A02.05\u00A0V")}};
  const auto lines = table_lines(table, 20, Letters::unicode);
  EXPECT_EQ(lines, (std::vector<std::string>{"Part          R", "────  ─────────",
                                             "R1    318/155 V", "       ≈ 2.05 V"}));
}

TEST(TableText, KeepsWordsWholeEvenWhereTheyDoNotFit) {
  Table table = sample();
  table.rows = {{say("averylongname"), say("1")}};
  for (const std::string& line : table_lines(table, 5, Letters::unicode)) {
    EXPECT_LE(display_width(line), 16U);
  }
}

}  // namespace
}  // namespace ohmfold::views

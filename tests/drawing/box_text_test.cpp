// A schematic in character cells.
#include "drawing/box_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>
#include <string>

#include "drawing/schematics.h"

namespace ohmfold::drawing::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

std::string drawn(const Schematic& schematic, Letters letters = Letters::unicode,
                  SymbolSet set = SymbolSet::rectangle) {
  return box_text(schematic, set, letters, false);
}

constexpr Scale kSmall{12, 6, 1, 1, 3, 2, 0};

/// On a sheet with room for the labels at the right, behind an empty line.
std::string page(Schematic schematic, Letters letters = Letters::unicode) {
  schematic.width += 8;
  return '\n' + drawn(schematic, letters);
}

TEST(BoxText, DrawsALoop) {
  EXPECT_EQ(page(series_loop(kSmall)), R"(
            S          A1
     T           A
      ┌───○/  ○────────(A)────┐
      │                       │
      │                       │
      │                       │
      │+                      │
     ─┴─                      │
     ╺┯╸ E                   (X) L1
      │− 9 V                  │  20 Ω
      │                       │
      │          R12          │
      │        4.7 kΩ         │
     G│         ┌───┐         │
      └─────────┤   ├─────────┘
                └───┘
)");
}

TEST(BoxText, DrawsALoopInAscii) {
  EXPECT_EQ(page(series_loop(kSmall), Letters::ascii), R"(
            S          A1
     T           A
      +---o/  o--------(A)----+
      |                       |
      |                       |
      |                       |
      |+                      |
     ---                      |
      =  E                   (X) L1
      |- 9 V                  |  20 ohm
      |                       |
      |          R12          |
      |       4.7 kohm        |
     G|                       |
      +---------[===]---------+
)");
}

TEST(BoxText, MarksByFormDotsJointsAndPointsArrows) {
  EXPECT_EQ(page(side_by_side(kSmall)), R"(
     T
      ┌───────────●───────────●───────────┐
      │           │           │           │
      │           ▼           │           │
      │           │           │           │
      │+          │           │           │
     ─┴─         ┌┴┐         ┌┴┐         ╔╧╗
     ╺┯╸ E       [1] R1      [1] R2      ║ ║ R_3_4
      │− 12 V    └┬┘ 6 Ω     └┬┘ 3 Ω     ╚╤╝ 5 Ω
      │           │           │           │
      │           │           │           │
      │           │           │           │
     G│           │           │           │
      └───────────●───────────●───────────┘
)");
}

TEST(BoxText, DrawsAPassingLineAsNoJoint) {
  const std::string text = drawn(crossing(kSmall));
  EXPECT_THAT(text, HasSubstr("─)─"));
  EXPECT_THAT(text, Not(HasSubstr("┼")));
  EXPECT_THAT(drawn(crossing(kSmall), Letters::ascii), HasSubstr("-)-"));
}

TEST(BoxText, HasNoSpacesAtTheEndsOfLinesAndOnlyPlainCharactersInAscii) {
  for (const SymbolSet set : {SymbolSet::rectangle, SymbolSet::zigzag}) {
    for (const SymbolKind kind : kKinds) {
      const std::string text = drawn(directions(kind, kTerminal), Letters::ascii, set);
      EXPECT_THAT(text, Not(HasSubstr(" \n")));
      for (const char c : text) EXPECT_TRUE(c == '\n' || (c >= ' ' && c <= '~'));
    }
  }
  EXPECT_THAT(drawn(odd_labels(kTerminal)), Not(HasSubstr(" \n")));
}

TEST(BoxText, LetsNoTextSteerTheTerminal) {
  const std::string text = drawn(odd_labels(kTerminal));
  EXPECT_EQ(text.find('\x1B'), std::string::npos);
  EXPECT_THAT(text, HasSubstr("c?[31m?"));
  EXPECT_THAT(text, HasSubstr("5 µA ∥ ≈ −1 × 2"));
}

TEST(BoxText, CountsWideAndCombiningCharacters) {
  Sketch sketch(kTerminal);
  sketch.part(SymbolKind::plain, "漢a\u0301", "", {{0, 0}, {0, 1}});
  Schematic schematic = sketch.done(1, 2);
  schematic.parts[0].labels.push_back(
      {schematic.parts[0].labels[0].at + Spot{4, 0}, Anchor::start, {{TextRole::value, "b"}}, {}});
  EXPECT_THAT(drawn(schematic), HasSubstr("│  漢a\u0301 b\n"));
}

TEST(BoxText, IsColouredOnlyWhereAsked) {
  const Schematic schematic = side_by_side(kTerminal);
  EXPECT_EQ(drawn(schematic).find('\033'), std::string::npos);
  const std::string coloured = box_text(schematic, SymbolSet::rectangle, Letters::unicode, true);
  EXPECT_THAT(coloured, HasSubstr("\033[1;34m[1]\033[0m"));
  EXPECT_THAT(coloured, HasSubstr("\033[1;31m╔╧╗\033[0m\n"));
}

TEST(BoxText, LeavesOutWhatNobodyCouldLookAt) {
  Schematic schematic = series_loop(kTerminal);
  schematic.width = 3'000'000;
  EXPECT_THAT(drawn(schematic), IsEmpty());
  EXPECT_THAT(drawn(Schematic{}), IsEmpty());
}

TEST(BoxText, StaysOnTheSheetWhateverTheSchematicSays) {
  Schematic schematic = side_by_side(kTerminal);
  schematic.width = 5;
  schematic.height = 4;
  std::istringstream rows(drawn(schematic));
  for (std::string row; std::getline(rows, row);) EXPECT_LE(row.size(), 15U) << row;
}

}  // namespace
}  // namespace ohmfold::drawing::testing

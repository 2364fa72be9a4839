// How wide text is taken to be.
#include <gtest/gtest.h>

#include "drawing/schematic.h"

namespace ohmfold::drawing {
namespace {

TEST(Sizes, OfPaperCountWideLettersWider) {
  const auto width = paper_sizes().text_width;
  EXPECT_EQ(width(""), 0);
  EXPECT_LT(width("iii"), width("mmm"));
  EXPECT_GE(width("12 Ω"), 4 * 13 / 2);
  EXPECT_GE(width("\u4E2D\u6587"), 26);
  EXPECT_GE(width("\uFDFD"), 100);
}

TEST(Sizes, TakeCombiningMarksForNothing) {
  EXPECT_EQ(paper_sizes().text_width("e\u0301"), paper_sizes().text_width("e"));
  EXPECT_EQ(terminal_sizes().text_width("e\u0301"), 1);
}

TEST(Sizes, OfATerminalAreColumns) {
  EXPECT_EQ(terminal_sizes().text_width("R1 = 4 Ω"), 8);
  EXPECT_EQ(terminal_sizes().text_width("\u4E2D\u6587"), 4);
}

TEST(Sizes, TakeABrokenSequenceForOneCharacterEachByte) {
  EXPECT_EQ(terminal_sizes().text_width("\xC3"), 1);
  EXPECT_EQ(terminal_sizes().text_width("\xF0\x9F"), 2);
}

}  // namespace
}  // namespace ohmfold::drawing

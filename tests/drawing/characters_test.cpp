// Characters of UTF-8 text and their columns.
#include "drawing/characters.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace ohmfold::drawing {
namespace {

std::vector<std::uint32_t> characters(std::string_view text) {
  std::vector<std::uint32_t> found;
  for (std::size_t at = 0; at < text.size();) found.push_back(next_character(text, at));
  return found;
}

using Characters = std::vector<std::uint32_t>;

TEST(NextCharacter, ReadsOneToFourBytes) {
  EXPECT_EQ(characters("aΩ∥😀"), (Characters{'a', 0x3A9, 0x2225, 0x1F600}));
}

TEST(NextCharacter, CountsEachByteOfABrokenSequence) {
  EXPECT_EQ(characters("\x80"), Characters{0xFFFD});
  EXPECT_EQ(characters("\xCE"), Characters{0xFFFD});
  EXPECT_EQ(characters("\xE2\x88z"), (Characters{0xFFFD, 0xFFFD, 'z'}));
  EXPECT_EQ(characters("\xC0\x80\xFF"), (Characters{0xFFFD, 0xFFFD, 0xFFFD}));
}

TEST(ColumnsOf, AreNoneForMarksAndTwoForWideCharacters) {
  EXPECT_EQ(columns_of('a'), 1U);
  EXPECT_EQ(columns_of(0x3A9), 1U);
  EXPECT_EQ(columns_of(0x301), 0U);
  EXPECT_EQ(columns_of(0x5B8), 0U);
  EXPECT_EQ(columns_of(0x6F22), 2U);
}

TEST(IsControl, HoldsForWhatSteersATerminalOrTurnsText) {
  for (const std::uint32_t c : {0x0U, 0x1BU, 0x7FU, 0x9BU, 0x202EU, 0x2066U}) {
    EXPECT_TRUE(is_control(c)) << c;
  }
  EXPECT_FALSE(is_control(' '));
  EXPECT_FALSE(is_control(0x3A9));
}

}  // namespace
}  // namespace ohmfold::drawing

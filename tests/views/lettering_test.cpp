// Widths, ASCII stand-ins and line breaks.
#include "views/lettering.h"

#include <gtest/gtest.h>

namespace ohmfold::views {
namespace {

TEST(DisplayWidth, CountsColumnsNotBytes) {
  EXPECT_EQ(display_width(""), 0U);
  EXPECT_EQ(display_width("R1 = 6 Ω"), 8U);
  EXPECT_EQ(display_width("−5 V"), 4U);
  EXPECT_EQ(display_width("e\u0301"), 1U);  // a combining accent
  EXPECT_EQ(display_width("電流"), 4U);     // East Asian wide
  EXPECT_EQ(display_width("\xC3"), 1U);     // a broken sequence
}

TEST(Lettered, PutsPlainCharactersInAscii) {
  EXPECT_EQ(lettered("6 Ω ∥ 3 µA ≈ −2 · x → y …", Letters::ascii),
            "6 ohm || 3 uA ~ -2 * x -> y ...");
  EXPECT_EQ(lettered("“é”", Letters::ascii), "\"?\"");
  EXPECT_EQ(lettered("6 Ω", Letters::unicode), "6 Ω");
}

TEST(Lettered, LetsNoControlCharacterThrough) {
  EXPECT_EQ(lettered("a\033[31mb\a", Letters::unicode), "a?[31mb?");
  EXPECT_EQ(lettered("\u009B31m", Letters::unicode), "?31m");
  EXPECT_EQ(lettered("\u202Eabc", Letters::unicode), "?abc");
}

TEST(Wrapped, BreaksAtSpacesOnly) {
  EXPECT_EQ(wrapped("one two three", 7), (std::vector<std::string>{"one two", "three"}));
  EXPECT_EQ(wrapped("one two", 7, 2, 4), (std::vector<std::string>{"  one", "    two"}));
  EXPECT_EQ(wrapped("abcdefghij kl", 4), (std::vector<std::string>{"abcdefghij", "kl"}));
  EXPECT_EQ(wrapped("", 4), std::vector<std::string>{""});
}

TEST(Wrapped, HoldsNumberAndUnitTogether) {
  EXPECT_EQ(wrapped("R12 = 6\u00A0Ω", 7), (std::vector<std::string>{"R12 =", "6 Ω"}));
}

}  // namespace
}  // namespace ohmfold::views

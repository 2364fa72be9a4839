// Text within LaTeX: each kind of character that would be read as something else.
#include "drawing/latex.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace ohmfold::drawing {
namespace {

TEST(LatexText, LeavesPlainTextAlone) {
  EXPECT_EQ(latex_text("Two lamps, 4.7 and (so on): it's done!"),
            "Two lamps, 4.7 and (so on): it's done!");
  EXPECT_EQ(latex_text(""), "");
}

TEST(LatexText, EscapesWhatTexReadsAsCommands) {
  EXPECT_EQ(latex_text("\\input{x}"), R"(\textbackslash{}input\{x\})");
  EXPECT_EQ(latex_text("$a_1^2$ & #3 100%"), R"(\$a\_1\textasciicircum{}2\$ \& \#3 100\%)");
  EXPECT_EQ(latex_text("<script>|~"),
            R"(\textless{}script\textgreater{}\textbar{}\textasciitilde{})");
}

TEST(LatexText, KeepsCharactersApartThatWouldJoin) {
  EXPECT_EQ(latex_text("a--b---c"), "a-{}-b-{}-{}-c");
  EXPECT_EQ(latex_text("''"), "'{}'");
  EXPECT_EQ(latex_text("?`"), R"(?\textasciigrave{})");
  EXPECT_EQ(latex_text(",,"), ",{},");
  EXPECT_EQ(latex_text("-a-"), "-a-");
}

TEST(LatexText, HidesStarsAndBracketsFromCommands) {
  EXPECT_EQ(latex_text("*[x]"), "{*}{[}x{]}");
}

TEST(LatexText, NeverEndsAParagraph) {
  EXPECT_EQ(latex_text("a\n\nb\tc"), "a  b c");
}

TEST(LatexText, SpellsTheSignsOfTheTrade) {
  EXPECT_EQ(latex_text("4 Ω"), R"(4 \ensuremath{\Omega})");
  EXPECT_EQ(latex_text("5\u00A0µA"), R"(5~\textmu{}A)");
  EXPECT_EQ(latex_text("−1 × R1∥R2 ≈ 2"),
            R"(\ensuremath{-}1 \texttimes{} R1\ensuremath{\parallel}R2 \ensuremath{\approx} 2)");
  EXPECT_EQ(latex_text("R₁²"), "R\\textsubscript{1}²");
}

TEST(LatexText, PassesLettersThatEveryEncodingHas) {
  EXPECT_EQ(latex_text("Zürich, naïve, Łódź – “so”…"), "Zürich, naïve, Łódź – “so”…");
}

TEST(LatexText, ShowsWhatCannotBeSet) {
  EXPECT_EQ(latex_text("א"), "{[}U+05D0{]}");
  EXPECT_EQ(latex_text("e\u0301"), "e{[}U+0301{]}");
  EXPECT_EQ(latex_text("😀"), "{[}U+1F600{]}");
  EXPECT_EQ(latex_text("\u202E"), "{[}U+202E{]}");
  EXPECT_EQ(latex_text(std::string_view("\0\x1b", 2)), "{[}U+0000{]}{[}U+001B{]}");
  EXPECT_EQ(latex_text("\xFFx\xC3"), "{[}U+FFFD{]}x{[}U+FFFD{]}");
}

TEST(LatexText, OfEveryAsciiCharacterIsBalancedAndHoldsNoBareSpecialOne) {
  for (char c = ' '; c < '\x7F'; ++c) {
    const std::string written = latex_text(std::string(2, c));
    EXPECT_EQ(written.find_first_of("%&#$^~_") == std::string::npos || written[0] == '\\', true)
        << written;
  }
}

TEST(LatexName, SetsDigitsAtTheEndAsASubscript) {
  EXPECT_EQ(latex_name("R12"), "R\\textsubscript{12}");
  EXPECT_EQ(latex_name("E"), "E");
  EXPECT_EQ(latex_name("12"), "12");
  EXPECT_EQ(latex_name("R_1_2"), R"(R\_1\_2)");
  EXPECT_EQ(latex_name("a%1"), R"(a\%1)");
}

}  // namespace
}  // namespace ohmfold::drawing

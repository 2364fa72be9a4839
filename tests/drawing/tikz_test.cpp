// A schematic as a tikzpicture.
#include "drawing/tikz.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "drawing/schematics.h"

namespace ohmfold::drawing::testing {
namespace {

using ::testing::EndsWith;
using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::StartsWith;

std::string drawn(const Schematic& schematic, SymbolSet set = SymbolSet::rectangle) {
  return tikz(schematic, set, false);
}

TEST(Tikz, IsAnEnvironmentWithinADocumentAndADocumentAlone) {
  const std::string within = drawn(series_loop(kPaper));
  EXPECT_THAT(within, StartsWith("\\begin{tikzpicture}"));
  EXPECT_THAT(within, EndsWith("\\end{tikzpicture}\n"));
  const std::string alone = tikz(series_loop(kPaper), SymbolSet::rectangle, true);
  EXPECT_THAT(alone, StartsWith("\\documentclass{article}\n\\usepackage{tikz}\n"));
  EXPECT_THAT(alone, HasSubstr(tikz_preamble()));
  EXPECT_THAT(alone, HasSubstr("\\paperwidth=225pt"));
  EXPECT_THAT(alone, HasSubstr(within));
}

TEST(Tikz, LeadsEndAtTheBody) {
  const std::string text = drawn(series_loop(kPaper));
  EXPECT_THAT(text, HasSubstr("\\draw (250,250) -- (172,250);\n\\draw (128,250) -- (50,250);\n"));
}

TEST(Tikz, DrawsAnArcWhereALinePasses) {
  EXPECT_THAT(drawn(crossing(kPaper)),
              HasSubstr("(144,150) .. controls (144,146.688) and (146.688,144) .. (150,144) .. "
                        "controls (153.312,144) and (156,146.688) .. (156,150)"));
}

TEST(Tikz, SetsLabelsAsText) {
  const std::string text = drawn(series_loop(kPaper));
  EXPECT_THAT(text, HasSubstr("{R\\textsubscript{12}}"));
  EXPECT_THAT(text, HasSubstr(R"({4.7 k\ensuremath{\Omega}})"));
  EXPECT_THAT(text, HasSubstr("{\\itshape T}"));
}

TEST(Tikz, LetsNoTextBecomeACommand) {
  const std::string text = drawn(odd_labels(kPaper));
  EXPECT_THAT(text, HasSubstr(R"(\textbackslash{}input\{x\})"));
  EXPECT_THAT(text, Not(HasSubstr("\\input")));
  EXPECT_THAT(text, HasSubstr(R"(-{}- 100 \% \$x\_1\$)"));
  EXPECT_THAT(text, HasSubstr("{[}U+05D0{]}"));
}

TEST(Tikz, MarksByFormAndColour) {
  const std::string text = drawn(side_by_side(kPaper));
  EXPECT_THAT(text, HasSubstr("\\node[circuit tag] at (162,123) {1};"));
  EXPECT_THAT(text, HasSubstr("\\draw[circuit frame]"));
  EXPECT_THAT(text, HasSubstr("\\draw[circuit came]"));
  EXPECT_THAT(drawn(side_by_side(kPaper), SymbolSet::zigzag),
              HasSubstr("\\draw[circuit doubled,circuit came]"));
}

TEST(Tikz, BalancesBracesForEveryKind) {
  for (const SymbolKind kind : kKinds) {
    const std::string text = drawn(directions(kind, kPaper)) + drawn(slants(kind));
    EXPECT_EQ(std::count(text.begin(), text.end(), '{'), std::count(text.begin(), text.end(), '}'));
  }
}

TEST(Tikz, ShrinksWhatIsTooLargeForTex) {
  Schematic wide;
  wide.width = 40'000;
  wide.height = 100;
  wide.points.push_back({PointId{0}, "A", {{{0, 50}, {39'000, 50}}}, {}, {}, {}});
  EXPECT_THAT(drawn(wide), HasSubstr("(13000,16.666)"));
}

}  // namespace
}  // namespace ohmfold::drawing::testing

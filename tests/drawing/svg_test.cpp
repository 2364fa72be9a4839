// A schematic as SVG: what a program and a screen reader find in it.
#include "drawing/svg.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "drawing/schematics.h"
#include "drawing/symbols.h"

namespace ohmfold::drawing::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

const SvgText kText{"Redraw <1>", "A & B.", "f7"};

std::string drawn(const Schematic& schematic, SymbolSet set = SymbolSet::rectangle) {
  return svg(schematic, kText, set, true);
}

std::size_t count(const std::string& text, const std::string& part) {
  std::size_t found = 0;
  for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) {
    ++found;
  }
  return found;
}

/// Elements that are not closed in order, and markup characters out of place.
std::string fault_of(const std::string& xml) {
  std::vector<std::string> open;
  for (std::size_t at = xml.find('<'); at != std::string::npos; at = xml.find('<', at + 1)) {
    const std::size_t end = xml.find('>', at);
    const std::string tag = xml.substr(at + 1, end - at - 1);
    if (tag.starts_with('?')) continue;
    const std::string name = tag.substr(0, tag.find_first_of(" /", 1));
    if (tag.find('<') != std::string::npos || count(tag, "\"") % 2 != 0) return tag;
    if (tag.starts_with('/')) {
      if (open.empty() || '/' + open.back() != tag) return tag;
      open.pop_back();
    } else if (!tag.ends_with('/')) {
      open.push_back(name);
    }
  }
  return open.empty() ? "" : open.back();
}

TEST(Svg, SaysWhatItShowsToScreenReaders) {
  const std::string text = drawn(series_loop(kPaper));
  EXPECT_THAT(text, HasSubstr("role=\"img\" aria-labelledby=\"f7-t f7-d\""));
  EXPECT_THAT(text, HasSubstr("<title id=\"f7-t\">Redraw &lt;1&gt;</title>"));
  EXPECT_THAT(text, HasSubstr("<desc id=\"f7-d\">A &amp; B.</desc>"));
  const std::string untold = svg(series_loop(kPaper), {"T", "", "f"}, SymbolSet::rectangle, true);
  EXPECT_THAT(untold, HasSubstr("aria-labelledby=\"f-t\""));
  EXPECT_THAT(untold, Not(HasSubstr("<desc")));
}

TEST(Svg, CarriesItsStyleOnlyWhenAlone) {
  EXPECT_THAT(drawn(series_loop(kPaper)), HasSubstr("<style>"));
  const std::string within = svg(series_loop(kPaper), kText, SymbolSet::rectangle, false);
  EXPECT_TRUE(within.starts_with("<svg "));
  EXPECT_THAT(within, Not(HasSubstr("<style>")));
  EXPECT_THAT(within, Not(HasSubstr("class=\"paper\"")));
}

TEST(Svg, LeadsEndAtTheBodyInCoordinatesOfTheDrawing) {
  const std::string text = drawn(series_loop(kPaper));
  EXPECT_THAT(text, HasSubstr("<g class=\"part resistor\" data-part=\"R12\">\n"
                              "<path class=\"lead\" d=\"M250 250 L172 250\"/>\n"
                              "<path class=\"lead\" d=\"M128 250 L50 250\"/>\n"
                              "<g class=\"body\" transform=\"matrix(-1 0 0 -1 150 250)\">"));
}

TEST(Svg, TurnsSymbolsOnSlantedLines) {
  const std::string text = drawn(diamond());
  EXPECT_THAT(text, HasSubstr("matrix(-0.447 0.894 -0.894 -0.447 300 150)"));
  EXPECT_THAT(text, HasSubstr("<path class=\"lead\" d=\"M350 50 L309.834 130.332\"/>"));
}

TEST(Svg, DrawsAnArcWhereALinePasses) {
  const std::string text = drawn(crossing(kPaper));
  EXPECT_THAT(text, HasSubstr("L144 150 A6 6 0 0 1 156 150 L350 150"));
  EXPECT_THAT(text, HasSubstr("M250 50 L250 144 A6 6 0 0 1 250 156 L250 250"));
  EXPECT_EQ(count(text, " A6 6"), 2U);
  EXPECT_THAT(text, HasSubstr("class=\"ring\""));
}

TEST(Svg, KeepsNamesWholeAsText) {
  const std::string text = drawn(series_loop(kPaper));
  EXPECT_THAT(text, HasSubstr(">R<tspan class=\"sub\" dy=\"3\">12</tspan></tspan>"));
  EXPECT_THAT(text, HasSubstr("data-point=\"T\""));
}

TEST(Svg, MarksByFormAndColour) {
  const std::string text = drawn(side_by_side(kPaper));
  EXPECT_EQ(count(text, "class=\"frame\""), 2U);
  EXPECT_EQ(count(text, "class=\"tag\""), 2U);
  EXPECT_EQ(count(text, "class=\"part resistor next\""), 2U);
  EXPECT_EQ(count(text, "class=\"part resistor came\""), 1U);
  EXPECT_EQ(count(text, "class=\"arrow\""), 1U);
  EXPECT_EQ(count(text, "class=\"dot\""), 4U);
}

TEST(Svg, IsWellFormedForEveryKindAndText) {
  for (const SymbolSet set : {SymbolSet::rectangle, SymbolSet::zigzag}) {
    for (const SymbolKind kind : kKinds) {
      EXPECT_THAT(fault_of(drawn(directions(kind, kPaper), set)), IsEmpty()) << kind_word(kind);
      EXPECT_THAT(fault_of(drawn(slants(kind), set)), IsEmpty()) << kind_word(kind);
    }
    EXPECT_THAT(fault_of(drawn(odd_labels(kPaper), set)), IsEmpty());
  }
  EXPECT_THAT(fault_of("<a><b></a>"), Not(IsEmpty()));
}

TEST(Svg, LetsNoTextBecomeMarkup) {
  const std::string text = drawn(odd_labels(kPaper));
  EXPECT_THAT(text, HasSubstr("data-part=\"&lt;R&amp;1&gt;&quot;&#39;\""));
  EXPECT_THAT(text, HasSubstr("]]&gt; -- 100 % $x_1$"));
  EXPECT_EQ(text.find('\x1B'), std::string::npos);
  EXPECT_EQ(text.find('\0'), std::string::npos);
}

TEST(Svg, HasTheLongPlateOfABatteryAtItsSecondPoint) {
  const Symbol battery = symbol_of(SymbolKind::battery, SymbolSet::rectangle, false, false);
  ASSERT_EQ(battery.strokes.size(), 2U);
  EXPECT_GT(battery.strokes[0].corners[0].x, 0);
  EXPECT_EQ(battery.strokes[1].pen, Pen::thick);
  EXPECT_LT(battery.strokes[1].corners[0].x, 0);
  EXPECT_EQ(battery.signs[0].text, "+");
  EXPECT_GT(battery.signs[0].at.x, 0);
}

TEST(SvgStyle, KnowsLightDarkAndPrint) {
  EXPECT_THAT(svg_style(), HasSubstr("prefers-color-scheme: dark"));
  EXPECT_THAT(svg_style(), HasSubstr("@media print"));
  EXPECT_EQ(svg_style().find_first_of("<&"), std::string::npos);
}

TEST(Tag, StaysWithinTheCanvas) {
  Schematic schematic = side_by_side(kPaper);
  DrawnPart part = schematic.parts[1];
  part.middle = {5, 5};
  const Tag tag = tag_of(part, schematic);
  EXPECT_GE(tag.middle.x, tag.width / 2);
  EXPECT_GE(tag.middle.y, tag.height / 2);
}

}  // namespace
}  // namespace ohmfold::drawing::testing

// The judge of drawings, on drawings made by hand: it passes a right one and sees each fault.
#include "drawing/read_back.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace ohmfold::test {
namespace {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

// A battery at the left, R1 above, R2 and R3 side by side at the right.
const std::string kDrawing = R"svg(<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 400 240">
<title>Three &lt;resistors&gt;</title>
<style>.label { font-size: 10px } .beside { text-anchor: end }</style>
<g class="point" data-point="T"><path class="wire" d="M40 40L100 40"/>
<text class="label" x="40" y="34">T</text></g>
<g class="point" data-point="A"><path class="wire" d="M200 40L300 40"/>
<circle class="dot" cx="200" cy="40" r="3"/><text class="label" x="204" y="34">A</text></g>
<g class="point" data-point="G"><path class="wire" d="M40 200 300 200"/>
<circle class="dot" cx="200" cy="200" r="3"/></g>
<g class="part battery" data-part="E"><path class="lead" d="M40 200L40 124"/>
<path class="lead" d="M40 116L40 40"/>
<g class="body" transform="matrix(0 -1 1 0 40 120)"><path d="M-4-6V6M4-12V12"/></g>
<text class="sign" font-size="10" x="55" y="112">+</text>
<text class="label beside" x="24" y="122">12 V</text></g>
<g class="part resistor" data-part="R1"><path class="lead" d="M100 40L130 40"/>
<path class="lead" d="M170 40L200 40"/>
<g class="body" transform="translate(150 40)"><rect x="-20" y="-8" width="40" height="16"/></g>
<text class="label" text-anchor="middle" x="150" y="26">R1</text></g>
<g class="part resistor" data-part="R2"><path class="lead" d="M200 40L200 100"/>
<path class="lead" d="M200 140L200 200"/>
<g class="body" transform="translate(200 120) rotate(90)"><rect x="-20" y="-8" width="40" height="16"/></g>
<text class="label" x="212" y="122">R2</text></g>
<g class="part resistor" data-part="R3"><path class="lead" d="M300 40L300 100"/>
<path class="lead" d="M300 140L300 200"/>
<g class="body" transform="translate(300 120) rotate(90)"><rect x="-20" y="-8" width="40" height="16"/></g>
<text class="label" x="312" y="122">R3</text></g>
</svg>)svg";

const Shown kShown{{{"E", {0, 1, true}}, {"R1", {1, 2}}, {"R2", {2, 0}}, {"R3", {2, 0}}},
                   {{"G", 0}, {"T", 1}, {"A", 2}}};

std::string with(std::string svg, const std::string& before, const std::string& after) {
  const std::size_t at = svg.find(before);
  EXPECT_NE(at, std::string::npos) << before;
  if (at != std::string::npos) svg.replace(at, before.size(), after);
  return svg;
}

TEST(ReadBack, OfARightDrawingFindsNoFault) {
  EXPECT_THAT(faults_of(kDrawing, kShown), IsEmpty());
}

struct Spoiling {
  std::string before, after, fault;
};

TEST(ReadBack, OfASpoiledDrawingSaysWhatIsWrong) {
  const std::vector<Spoiling> spoilings = {
      {R"(<path class="wire" d="M40 40L100 40"/>)", "", "loose end"},
      {R"(<path class="wire" d="M40 200 300 200"/>)", R"(<path class="wire" d="M40 200 260 200"/>)",
       "loose end"},
      {R"(<circle class="dot" cx="200" cy="40" r="3"/>)", "", "no dot at (200, 40)"},
      {R"(cx="200" cy="200")", R"(cx="100" cy="200")", "a dot where nothing meets"},
      {R"(x="212" y="122">R2)", R"(x="195" y="122">R2)", "lies on the symbol of R2"},
      {R"(x="212" y="122">R2)", R"(x="195" y="92">R2)", "leads through the text R2"},
      {R"(x="212" y="122">R2)", R"(x="278" y="122">R2)", "nearer to R3"},
      {R"(x="312" y="122">R3)", R"(x="214" y="125">R3)", "texts overlap"},
      {R"(x="312" y="122">R3)", R"(x="392" y="122">R3)", "outside the page"},
      {R"(data-part="R1")", R"(data-part="R9")", "not drawn: R1"},
      {R"(data-part="R1")", R"(data-part="R2")", "drawn twice: R2"},
      {R"(x="55" y="112">+)", R"(x="55" y="142">+)", "the plus is at the wrong end"},
      {R"(<text class="sign" font-size="10" x="55" y="112">+</text>)", "", "no plus"},
      {R"(x="204" y="34">A)", R"(x="54" y="34">A)", "nearer to another point: A"},
      {R"(translate(150 40))", R"(translate(205 110))", "symbols overlap"},
      {R"(translate(150 40))", R"(translate(180 40))", "leads through the symbol of R1"},
      {R"(d="M200 40L300 40")", R"(d="M200 40L300 40M40 60L200 60")", "joined to other points"},
      {R"(d="M200 40L300 40")", R"(d="M200 40L300 40M250 40L250 60")", "no dot at (250, 40)"},
      {R"(d="M200 40L300 40")", R"(d="M200 40L300 40M20 60L60 60")", "with 0 arcs"},
      {R"(d="M200 40L300 40")", R"(d="M200 40L240 40A5 5 0 0 1 250 40L300 40")",
       "an arc where nothing is crossed"},
      {R"(d="M40 40L100 40")", R"(d="M40 40L180 40")", "leads through the symbol of R1"},
      {R"(d="M40 40L100 40")", R"(d="M40 40H100")", "drawn in an unknown way"},
      {R"(</svg>)", "", "not closed"},
  };
  for (const auto& [before, after, fault] : spoilings) {
    EXPECT_THAT(faults_of(with(kDrawing, before, after), kShown), Contains(HasSubstr(fault)))
        << before << " -> " << after;
  }
}

TEST(ReadBack, OfTwoPartsThatChangedPlacesSaysSo) {
  std::string svg = with(kDrawing, R"(data-part="R1")", R"(data-part="R")");
  svg = with(svg, R"(data-part="R3")", R"(data-part="R1")");
  svg = with(svg, R"(data-part="R")", R"(data-part="R3")");
  EXPECT_THAT(faults_of(svg, kShown), Contains(HasSubstr("joined to other points")));
}

// Two wires and two leads through one another, in four ways.
std::string crossing(const std::string& across, const std::string& more = "") {
  return R"(<svg viewBox="0 0 100 100"><path class="wire" d="M50 10L50 90"/><path class="wire" d=")" +
         across + R"("/>)" + more +
         R"(<circle class="ring" cx="50" cy="10" r="3"/><circle class="ring" cx="50" cy="90" r="3"/>
<circle class="ring" cx="10" cy="50" r="3"/><circle class="ring" cx="90" cy="50" r="3"/></svg>)";
}

TEST(ReadBack, TellsACrossingFromAJunction) {
  const auto sets = [](const std::string& svg) {
    const ReadBack read = read_back(support::read_svg(svg));
    EXPECT_THAT(read.faults, IsEmpty());
    return read.set;
  };
  EXPECT_THAT(sets(crossing("M10 50L45 50A5 5 0 0 1 55 50L90 50")), ElementsAre(0, 1));
  EXPECT_THAT(sets(crossing("M10 50L90 50", R"(<circle class="dot" cx="50" cy="50" r="3"/>)")),
              ElementsAre(0, 0));
  EXPECT_THAT(read_back(support::read_svg(crossing("M10 50L90 50"))).faults,
              Contains(HasSubstr("cross at (50, 50) with 0 arcs")));
}

// A wire between two points is a part that is nothing but a line: it does not make them one.
TEST(ReadBack, KeepsThePointsOfAWireApart) {
  const auto read = [](const std::string& leads) {
    return read_back(support::read_svg(R"(<svg viewBox="0 0 100 100">
<g class="part wire" data-part="W">)" + leads +
                                       R"(</g><circle class="ring" cx="10" cy="50" r="3"/>
<circle class="ring" cx="90" cy="50" r="3"/></svg>)"));
  };
  for (const char* leads :
       {R"(<path class="lead" d="M10 50L90 50"/>)",
        R"(<path class="lead" d="M10 50L50 50"/><path class="lead" d="M50 50L90 50"/>)",
        R"(<path class="lead" d="M10 50L10 20L90 20L90 50"/>)"}) {
    const ReadBack found = read(leads);
    EXPECT_THAT(found.faults, IsEmpty());
    ASSERT_EQ(found.parts.size(), 1U);
    EXPECT_NE(found.parts[0].joined[0], found.parts[0].joined[1]) << leads;
  }
}

TEST(ReadBack, SeesLinesOfTwoPartsThatLieOnOneAnother) {
  const std::string svg = R"(<svg viewBox="0 0 100 100">
<g class="part" data-part="V"><path class="lead" d="M10 50L90 50"/></g>
<g class="part" data-part="W"><path class="lead" d="M30 50L95 50"/></g></svg>)";
  EXPECT_THAT(read_back(support::read_svg(svg)).faults,
              Contains(HasSubstr("lead of W lies on lead of V")));
}

TEST(SvgReader, ReadsTitleStyleAndTransforms) {
  const support::SvgDrawing drawing = support::read_svg(kDrawing);
  EXPECT_EQ(drawing.title, "Three <resistors>");
  const support::Frame battery = support::frame_of(drawing.parts.at(0).body);
  EXPECT_EQ(battery.min.x, 28);
  EXPECT_EQ(battery.max.y, 124);
  const support::SvgText& volts = drawing.texts.at(3);
  EXPECT_EQ(volts.text, "12 V");
  EXPECT_EQ(volts.box.max.x, 24);
  EXPECT_EQ(volts.box.min.y, 122 - 7.2);
}

TEST(XmlReader, RefusesWhatIsNotWellFormed) {
  for (const char* text : {"",
                           "text",
                           "<a>",
                           "<a></b>",
                           "<a></a><b/>",
                           "<a/>text",
                           "<a><b></a></b>",
                           "<a b=c/>",
                           "<a b='1' b='2'/>",
                           "<a b='1'c='2'/>",
                           "<a b='<'/>",
                           "<a>&nbsp;</a>",
                           "<a>&amp</a>",
                           "<a>a & b</a>",
                           "<a>]]></a>",
                           "<a>&#0;</a>",
                           "<a>&#xFFFE;</a>",
                           "<a>\x01</a>",
                           "<a>\xFF</a>",
                           "<a>\xC0\xAF</a>",
                           "<a>\xED\xA0\x80</a>",
                           "<a><!-- -- --></a>",
                           "<a><![CDATA[</a>",
                           "<!DOCTYPE html><a/>",
                           "<a><?xml version='1.0'?></a>",
                           "<1/>",
                           "<a b/>"}) {
    EXPECT_THROW(support::read_xml(text), support::XmlFault) << text;
  }
}

TEST(XmlReader, ResolvesReferences) {
  const support::Xml xml = support::read_xml(
      "<?xml version=\"1.0\"?><!-- a -->\n<a b='&lt;&#39;'>x &amp; "
      "&#x3A9;<![CDATA[<&>]]><c/></a>\n");
  EXPECT_EQ(xml.root()["b"], "<'");
  EXPECT_EQ(xml.text_of(0), "x & Ω<&>");
}

TEST(XmlReader, ReadsAPageWithScripts) {
  const std::string page = "<!DOCTYPE html>\n<html><script>if (a < b && c) d();</script></html>";
  EXPECT_EQ(support::read_xml(page, support::XmlDialect::html).text_of(0), "if (a < b && c) d();");
  EXPECT_THROW(support::read_xml(page), support::XmlFault);
}

}  // namespace
}  // namespace ohmfold::test

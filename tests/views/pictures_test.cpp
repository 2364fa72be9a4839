// Captions, labels and descriptions of figures.
#include "views/pictures.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "ohmfold/draw.h"
#include "ohmfold/solve.h"
#include "support/circuit.h"

namespace ohmfold::views {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

constexpr const char* kCircuit =
    "title \"Porch lamp\"\nbattery E = 12 V from G to T\nresistor R1 = 2 kohm from T to A\n"
    "resistor R2 = 6000 ohm from A to G\nresistor R3 = 4700 ohm from A to G\n";

class Drawn {
 public:
  explicit Drawn(const std::string& text, const PictureOptions& options = {})
      : trace_(solve(test::problem_of(text))),
        scene_(*trace_.problem, trace_.cases.front().main, trace_.problem->figures),
        pictures_(scene_, trace_.cases.front(), drawing::paper_sizes(), options) {}

  [[nodiscard]] Figure after(std::size_t steps) const { return pictures_.after(steps); }

  [[nodiscard]] std::vector<std::string> beside(const std::string& part) const {
    std::vector<std::string> texts;
    for (const drawing::DrawnPart& one : after(0).schematic.parts) {
      if (one.name != part) continue;
      for (const drawing::Label& label : one.labels) {
        for (const drawing::LabelLine& line : label.lines) texts.push_back(line.text);
      }
    }
    return texts;
  }

 private:
  Trace trace_;
  Scene scene_;
  Pictures pictures_;
};

TEST(Pictures, SayWhatHasComeAndWhatIsNext) {
  const Drawn drawn(kCircuit);
  EXPECT_EQ(plain_text(drawn.after(0).caption), "The circuit as stated: next R2 and R3.");
  EXPECT_EQ(plain_text(drawn.after(1).caption), "Redraw 1: R23 has come; next R1 and R23.");
  EXPECT_EQ(plain_text(drawn.after(2).caption), "Redraw 2: R123 has come.");
  EXPECT_EQ(drawn.after(0).title, "Porch lamp");
  EXPECT_EQ(drawn.after(1).title, "Porch lamp: redraw 1");
}

TEST(Pictures, SayNothingOfStepsWithoutMarks) {
  const Drawn drawn(kCircuit, {.marks = false});
  EXPECT_EQ(plain_text(drawn.after(0).caption), "The circuit as stated.");
}

TEST(Pictures, DescribePointsAndPartsFromTheSourceOn) {
  EXPECT_EQ(Drawn(kCircuit).after(0).description,
            "A circuit of battery E and 3 other parts between 3 points. At point T: E, R1. "
            "At point G: E, R2, R3. At point A: R1, R2, R3. Battery E, 12 V, from G (minus) to T "
            "(plus). R1, 2 kΩ, from T to A. R2, 6 kΩ, from A to G. R3, 4.7 kΩ, from A to G.");
}

TEST(Pictures, WriteValuesAsLettersWhereThatIsWanted) {
  EXPECT_THAT(Drawn(kCircuit, {.notation = Notation::letters}).beside("R3"),
              ElementsAre("R3", "4K7"));
  EXPECT_THAT(Drawn(kCircuit).beside("R3"), ElementsAre("R3", "4.7 kΩ"));
  EXPECT_THAT(Drawn(kCircuit, {.values = false}).beside("R3"), ElementsAre("R3"));
}

TEST(Pictures, ShowCurrentsTheWayTheyFlow) {
  const Drawn drawn(
      "battery E = 12 V from G to T\nresistor R1 = 2 ohm from T to G\n"
      "resistor R2 = 6 ohm from G to T\n",
      {.currents = true});
  EXPECT_THAT(drawn.beside("R2"), ElementsAre("R2", "6 Ω", "2 A"));
  for (const drawing::DrawnPart& part : drawn.after(0).schematic.parts) {
    ASSERT_EQ(part.arrows.size(), 1U);
    EXPECT_EQ(part.arrows.front().direction.y > 0, part.name != "E") << part.name;
  }
}

TEST(Pictures, DoNotTellAnUnknownValue) {
  const Drawn drawn(
      "battery E = 12 V from G to T\nresistor R1 = unknown from T to G\n"
      "given current through R1 = 3 A\nfind R1\n");
  EXPECT_THAT(drawn.beside("R1"), ElementsAre("R1", "?"));
}

TEST(Pictures, BeginTheirDescriptionWithOneShortSentence) {
  std::string text = "battery E = 1 V from G to T\n";
  for (int i = 0; i < 60; ++i) {
    text += "resistor R_with_a_long_name_" + std::to_string(i) + " = 1 ohm from T to G\n";
  }
  const std::string description = Drawn(text).after(0).description;
  EXPECT_LT(description.find(". "), 250U);
}

TEST(Pictures, OfACircuitThatContradictsItselfShowIt) {
  const Trace trace = solve(test::problem_of(
      "battery E = 12 V from G to T\nwire W from T to G\nresistor R1 = 2 ohm from T to G\n"));
  ASSERT_TRUE(trace.has_contradiction());
  EXPECT_THAT(draw_svg(trace, 0, 0), HasSubstr("W"));
  EXPECT_THAT(draw_tikz(trace, 0, 0), Not(IsEmpty()));
  EXPECT_THAT(draw_text(trace, 0, 0), HasSubstr("R1"));
}

}  // namespace
}  // namespace ohmfold::views

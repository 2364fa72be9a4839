// Every problem of problems/, drawn in every case after every stage, and read back.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "drawing/read_back_trace.h"
#include "ohmfold/read.h"
#include "ohmfold/solve.h"

namespace ohmfold::test {
namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

Trace solved(const std::string& name, const std::string& text) {
  const Outcome<Problem> problem = read_circuit({.name = name, .text = text});
  EXPECT_TRUE(problem) << name;
  return solve(*problem.value);
}

std::vector<std::filesystem::path> problem_files() {
  std::vector<std::filesystem::path> files;
  const std::filesystem::path top = OHMFOLD_SOURCE_DIR;
  for (const auto& entry : std::filesystem::directory_iterator(top / "problems")) {
    if (entry.path().extension() == ".circuit") files.push_back(entry.path());
  }
  std::sort(files.begin(), files.end());
  return files;
}

Trace solved(const std::filesystem::path& file) {
  std::ostringstream text;
  text << std::ifstream(file).rdbuf();
  return solved(file.filename(), text.str());
}

TEST(DrawnProblems, ReadBackAsTheCircuitsTheyShow) {
  Tally tally;
  for (const auto& file : problem_files()) {
    const Trace trace = solved(file);
    for (std::size_t i = 0; i < trace.cases.size(); ++i) {
      judge_case(trace, i, file.filename(), ways_to_draw(), 3, tally);
    }
  }
  RecordProperty("drawings", std::to_string(tally.drawings));
  EXPECT_GT(tally.drawings, 500U);
  EXPECT_EQ(tally.wrong, 0U) << "of " << tally.drawings << " drawings\n" << tally.report;
}

TEST(DrawnProblems, AreTheSameBytesTwice) {
  for (const auto& file : problem_files()) {
    const Trace once = solved(file);
    const Trace again = solved(file);
    for (const std::size_t steps : ends_of_stages(once.cases.front().main.steps)) {
      const DrawOptions all{.currents = true, .potentials = true};
      const std::string drawing = draw_svg(once, 0, steps, all);
      EXPECT_EQ(drawing, draw_svg(again, 0, steps, all)) << file;
      EXPECT_THAT(drawing, Not(IsEmpty())) << file;
    }
  }
}

TEST(DrawnProblems, SayInTheirTitleWhatTheyShow) {
  for (const auto& file : problem_files()) {
    const Trace trace = solved(file);
    const support::SvgDrawing drawing = support::read_svg(draw_svg(trace, 0, 0));
    EXPECT_THAT(drawing.title, HasSubstr(trace.problem->title)) << file;
    EXPECT_THAT(drawing.description, Not(IsEmpty())) << file;
  }
}

// Every kind of part, and what hangs loose, floats, or loops.
constexpr const char* kAllKinds = R"(title "All kinds"
battery E1 = 12 V internal 1/2 ohm from G to T
battery E2 = 4.5 V from G to B
source  J  = 2 A from G to C
switch  S1 from T to A
ammeter M1 from A to B
voltmeter M2 from B to G
lamp L1 = 6 ohm from B to C
resistor R1 = 1 kohm from C to G
resistor R2 = 2 ohm from C to D
resistor R3 = 3 ohm from B to B
resistor R4 = 4 ohm from X to Y
resistor R5 = 5 ohm from Y to X
wire from C to F
resistor R6 = 6 ohm from F to G
)";

TEST(DrawnKinds, OfPartsAreAllThere) {
  Tally tally;
  const Trace trace = solved("all-kinds", kAllKinds);
  ASSERT_EQ(trace.cases.size(), 2U);
  for (std::size_t i = 0; i < trace.cases.size(); ++i) {
    judge_case(trace, i, "all kinds", ways_to_draw(), 1, tally);
  }
  EXPECT_EQ(tally.wrong, 0U) << tally.report;
}

TEST(DrawnKinds, WithoutASourceAreSeenFromTheirTerminals) {
  Tally tally;
  const Trace trace = solved("port",
                             "resistor R1 = 1 ohm from A to B\nresistor R2 = 2 ohm from B to C\n"
                             "resistor R3 = 3 ohm from A to C\nfind resistance between A and C\n");
  judge_case(trace, 0, "port", ways_to_draw(), 1, tally);
  EXPECT_EQ(tally.wrong, 0U) << tally.report;
}

// A title with what markup is made of, and names and values as long as they come.
TEST(DrawnKinds, WithHostileTitlesAndLongNamesStayText) {
  Tally tally;
  const Trace trace = solved("hostile",
                             "title \"<script>alert(1)</script> ]]> -- & all\"\n"
                             "battery E = 12 V from a_point_with_a_long_name to W\n"
                             "resistor a_long_name_of_a_resistor = 123456789/1000 ohm from W to M\n"
                             "resistor R = 4.7 kohm from M to a_point_with_a_long_name\n");
  judge_case(trace, 0, "hostile", ways_to_draw(), 1, tally);
  EXPECT_EQ(tally.wrong, 0U) << tally.report;
}

TEST(PlaceHints, AreKeptByTheDrawing) {
  const std::string circuit =
      "battery E = 12 V from G to T\nresistor R1 = 1 ohm from T to A\n"
      "resistor R2 = 2 ohm from A to G\nresistor R3 = 3 ohm from A to B\n"
      "resistor R4 = 4 ohm from B to G\n";
  const Trace trace = solved("hints", circuit +
                                          "place T at 0, 2\nplace A at 2, 2\nplace B at 4, 2\n"
                                          "place G at 0, 0\n");
  Tally tally;
  judge_case(trace, 0, "hints", ways_to_draw(), 1, tally);
  EXPECT_EQ(tally.wrong, 0U) << tally.report;
  const support::SvgDrawing drawing = support::read_svg(draw_svg(trace, 0, 0));
  const auto at = [&](const std::string& name) {
    const auto text = std::ranges::find_if(
        drawing.texts, [&](const support::SvgText& one) { return one.point == name; });
    EXPECT_NE(text, drawing.texts.end()) << name;
    return text == drawing.texts.end() ? support::Vec{} : support::middle_of(text->box.corners());
  };
  EXPECT_LT(at("T").x, at("A").x);
  EXPECT_LT(at("A").x, at("B").x);
  EXPECT_LT(at("A").y, at("G").y);
}

}  // namespace
}  // namespace ohmfold::test

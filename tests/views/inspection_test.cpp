// Inspections in words and as JSON: a bridge, a cube, and each kind of verdict.
#include <gmock/gmock.h>

#include <cstdlib>
#include <nlohmann/json.hpp>

#include "samples.h"

namespace ohmfold {
namespace {

using nlohmann::json;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

Inspection inspection_of(const SourceText& source) {
  const Outcome<Problem> problem = read_circuit(source);
  EXPECT_TRUE(problem) << source.text;
  if (!problem) return {{std::make_shared<const Problem>(), {}}, {}};
  return inspect(*problem.value);
}

Inspection inspection_of(std::string text) {
  return inspection_of(SourceText{"sample.circuit", std::move(text)});
}

std::string inspected(std::string text) {
  return render_inspection_text(inspection_of(std::move(text)), {.width = 400});
}

json inspected_json(std::string text) {
  return json::parse(render_inspection_json(inspection_of(std::move(text)))).at("cases").at(0);
}

// A cube of 1 ohm edges, fed across its longest diagonal.
constexpr const char* kCube =
    "title \"A cube of twelve equal edges\"\n"
    "battery E = 10 V from A to H\n"
    "resistor R1 = 1 from A to B\nresistor R2 = 1 from A to C\nresistor R3 = 1 from A to D\n"
    "resistor R4 = 1 from B to E1\nresistor R5 = 1 from B to F\nresistor R6 = 1 from C to E1\n"
    "resistor R7 = 1 from C to G\nresistor R8 = 1 from D to F\nresistor R9 = 1 from D to G\n"
    "resistor R10 = 1 from E1 to H\nresistor R11 = 1 from F to H\n"
    "resistor R12 = 1 from G to H\n";

constexpr const char* kArms =
    "resistor R1 = 4 from T to A\nresistor R2 = 24 from A to G\n"
    "resistor R3 = 18 from T to B\nresistor R4 = 6 from B to G\n";
constexpr const char* kMiddle = "resistor R5 = 3 from A to B\n";
constexpr const char* kBattery = "battery E = 12 V from G to T\n";

std::string circuit(const std::vector<std::string>& pieces) {
  std::string text;
  for (const std::string& piece : pieces) text += piece;
  return text;
}

void expect_unchanged(const char* name, const SourceText& source) {
  const std::filesystem::path page = std::filesystem::path(OHMFOLD_SOURCE_DIR) /
                                     "tests/views/golden" / (std::string(name) + ".txt");
  const std::string text = render_inspection_text(inspection_of(source));
  if (std::getenv("OHMFOLD_REWRITE") != nullptr) {  // NOLINT(concurrency-mt-unsafe): one thread
    std::ofstream(page, std::ios::binary) << text;
    GTEST_SKIP() << "written anew: " << page;
  }
  EXPECT_EQ(text, test::contents(page)) << page;
}

TEST(Inspection, OfABridgeIsUnchanged) {
  const std::filesystem::path file =
      std::filesystem::path(OHMFOLD_SOURCE_DIR) / "problems/36-loaded-scale.circuit";
  expect_unchanged("inspect-bridge", {"36-loaded-scale.circuit", test::contents(file)});
}

TEST(Inspection, OfACubeIsUnchanged) {
  expect_unchanged("inspect-cube", {"cube.circuit", kCube});
}

TEST(Inspection, CountsTheStepsToOnePart) {
  const std::string text = inspected(circuit({kBattery, kArms}));
  EXPECT_THAT(text,
              HasSubstr("Series-parallel as seen by battery E: 3 steps leave one part, R1234, "
                        "between T and G."));
  EXPECT_THAT(text, Not(HasSubstr("corners")));
}

TEST(Inspection, NamesMadePartsInPairsAndOriginalPartsInPaths) {
  const std::string text = inspected(
      circuit({kBattery, kArms, "resistor R5 = 3 from A to X\nresistor R6 = 3 from X to B\n"}));
  EXPECT_THAT(text, HasSubstr("After 1 step no further one can be made."));
  EXPECT_THAT(text, HasSubstr("R1 and R56 meet at point A."));
  EXPECT_THAT(text, HasSubstr("R5 and R6\n"));
}

TEST(Inspection, SaysWhetherTheSourceLiesOnThePaths) {
  EXPECT_THAT(inspected(circuit({kBattery, kArms, kMiddle})),
              HasSubstr("The battery lies on one of the paths"));
  // Five points, all joined with one another; four of them make a bridge without the battery.
  std::string all = "battery E = 1 V from X to A\nresistor R0 = 1 from X to B\n";
  const std::string points = "ABCDF";
  for (std::size_t i = 0; i < points.size(); ++i) {
    for (std::size_t k = i + 1; k < points.size(); ++k) {
      all += std::string("resistor R") + points[i] + points[k] + " = 1 from " + points[i] + " to " +
             points[k] + "\n";
    }
  }
  EXPECT_THAT(inspected(all), HasSubstr("No source lies on these paths"));
}

TEST(Inspection, CountsThePointsAskedAboutAsAPart) {
  const std::string text =
      inspected(circuit({kArms, kMiddle, "find resistance between T and G\n"}));
  EXPECT_THAT(text, HasSubstr("Not series-parallel as seen by the two points asked about."));
  EXPECT_THAT(text, HasSubstr("the pair of points asked about\n"));
  const json bridge =
      inspected_json(circuit({kArms, kMiddle, "find resistance between T and G\n"})).at("bridge");
  EXPECT_THAT(bridge.at("paths").dump(), HasSubstr("[\"between T and G\"]"));
  EXPECT_THAT(inspected(circuit({kArms, kMiddle, "find resistance between A and B\n"})),
              HasSubstr("Series-parallel as seen by the two points asked about"));
}

TEST(Inspection, SaysWhatEachOfSeveralBatteriesSees) {
  const std::string text = inspected(
      circuit({kBattery, kArms,
               "battery F = 3 V internal 2 ohm from A to X\nresistor R6 = 1 from X to B\n"}));
  EXPECT_THAT(text,
              HasSubstr("Several sources: not series-parallel with batteries E and F in place."));
  EXPECT_THAT(text, HasSubstr("E: not series-parallel."));
  EXPECT_THAT(text, HasSubstr("F: series-parallel; "));
}

TEST(Inspection, SaysThatSeveralBatteriesWithoutABridgeSeeNone) {
  const std::string text = inspected(
      "battery E = 6 V internal 1 ohm from G to S\nresistor R1 = 2 from S to T\n"
      "battery F = 9 V internal 1 ohm from G to U\nresistor R2 = 3 from U to T\n"
      "resistor R3 = 6 from T to G\n");
  EXPECT_THAT(text, HasSubstr("Several sources, batteries E and F, and no embedded bridge"));
  EXPECT_THAT(text, HasSubstr("R1 and R2 meet at point T."));
  EXPECT_THAT(text, HasSubstr("E: series-parallel; "));
  EXPECT_THAT(text, HasSubstr("F: series-parallel; "));
}

TEST(Inspection, SaysWhereThereIsNothingToLookFromOrNoPath) {
  EXPECT_THAT(inspected("resistor R = 1 from A to B\nfind resistance between A and B\n"),
              HasSubstr("only one part, R, lies between A and B"));
  EXPECT_THAT(
      inspected(circuit({kBattery, "resistor R = 1 from T to A\nfind current through E\n"})),
      HasSubstr("no closed path runs through battery E"));
  EXPECT_THAT(inspected("battery E = 1 V internal 1 ohm from G to T\nwire from G to T\n"),
              HasSubstr("a short circuit"));
  EXPECT_THAT(inspected("battery E = 1 V from G to T\nwire w from G to T\n"),
              HasSubstr("contradict"));
}

TEST(InspectionAsJson, HoldsVerdictBridgeAndPairs) {
  const json bridge = inspected_json(circuit({kBattery, kArms, kMiddle}));
  EXPECT_EQ(bridge.at("series_parallel"), false);
  EXPECT_EQ(bridge.at("steps"), 0);
  EXPECT_THAT(bridge.at("bridge").at("corners"), ElementsAre("G", "T", "A", "B"));
  EXPECT_EQ(bridge.at("bridge").at("paths").size(), 6U);
  EXPECT_EQ(bridge.at("left").size(), 6U);
  ASSERT_EQ(bridge.at("pairs").size(), 10U);
  const json& pair = bridge.at("pairs").at(0);
  EXPECT_THAT(pair.at("parts"), ElementsAre("R1", "R2"));
  EXPECT_EQ(pair.at("likeness"), "share-a-point");
  EXPECT_EQ(pair.at("not_series"), "At point A, R5 is joined too.");
  EXPECT_EQ(pair.at("not_parallel"), "R1 ends at point T, but R2 ends at point G.");
  EXPECT_EQ(bridge.at("pairs").at(9).at("likeness"), "opposite-sides");

  const json plain = inspected_json(circuit({kBattery, kArms}));
  EXPECT_EQ(plain.at("series_parallel"), true);
  EXPECT_EQ(plain.at("steps"), 3);
  EXPECT_TRUE(plain.at("bridge").is_null());
}

TEST(TraceAsJson, HoldsTheBridge) {
  const json trace = json::parse(render_json(test::trace_of(circuit({kBattery, kArms, kMiddle}))))
                         .at("cases")
                         .at(0);
  EXPECT_THAT(trace.at("bridge").at("corners"), ElementsAre("G", "T", "A", "B"));
  const json expected = {{"between", {"G", "A"}}, {"parts", {"R2"}}};
  EXPECT_EQ(trace.at("bridge").at("paths").at(1), expected);
}

TEST(Solution, ShowsTheBridgeAndAFewPairs) {
  const std::string text =
      render_text(test::trace_of(circuit({kBattery, kArms, kMiddle})), {.width = 400});
  EXPECT_THAT(text, HasSubstr("Why no step in series or parallel is left"));
  EXPECT_THAT(text, HasSubstr("The points G, T, A and B are four corners"));
  EXPECT_THAT(text, HasSubstr("R1 and R2 meet at point A. Not in series: at point A, R5"));
  EXPECT_THAT(text, HasSubstr("7 pairs more"));
}

}  // namespace
}  // namespace ohmfold

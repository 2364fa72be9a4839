// Placements of networks in series and parallel, of bridges, and of what hangs loose.
#include "drawing/layout.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "drawing/sound.h"
#include "ohmfold/solve.h"
#include "support/circuit.h"
#include "support/random_network.h"

namespace ohmfold::drawing {
namespace {

using ::testing::ElementsAre;

struct Placed {
  Problem problem;
  Network network;
  Placement placement;

  [[nodiscard]] const PlacedPart& part(std::string_view name) const {
    const PartId id = test::part(problem, name);
    return *std::find_if(placement.parts.begin(), placement.parts.end(),
                         [&](const PlacedPart& placed) { return placed.part == id; });
  }
};

Placed placed(const std::string& text, bool slanted = true) {
  Placed made;
  made.problem = test::problem_of(text);
  made.network = set_case(made.problem, made.problem.cases.front());
  made.placement = lay_out(made.network, {.root = PartId{0}, .slanted = slanted});
  expect_sound(made.network, made.placement);
  return made;
}

TEST(Layout, PutsTheBatteryAtTheLeftWithItsPlusAbove) {
  const Placed drawn = placed("battery E = 6 V from G to T\nresistor R1 = 2 ohm from T to G\n");
  EXPECT_THAT(drawn.part("E").path, ElementsAre(Spot{0, kCell}, Spot{0, 0}));
  EXPECT_THAT(drawn.part("R1").path, ElementsAre(Spot{kCell, 0}, Spot{kCell, kCell}));
}

TEST(Layout, StacksPartsInSeries) {
  const Placed drawn = placed(
      "battery E = 6 V from G to T\nresistor R1 = 2 ohm from T to A\n"
      "resistor R2 = 2 ohm from G to A\n");
  EXPECT_THAT(drawn.part("R1").path, ElementsAre(Spot{kCell, 0}, Spot{kCell, kCell}));
  EXPECT_THAT(drawn.part("R2").path, ElementsAre(Spot{kCell, 2 * kCell}, Spot{kCell, kCell}));
}

TEST(Layout, PutsPartsInParallelSideBySideInTheOrderOfTheFile) {
  const Placed drawn = placed(
      "battery E = 6 V from G to T\nresistor R1 = 2 ohm from T to G\n"
      "resistor R2 = 2 ohm from T to G\nresistor R3 = 2 ohm from T to G\n");
  EXPECT_EQ(drawn.part("R1").path.front().x, kCell);
  EXPECT_EQ(drawn.part("R2").path.front().x, 2 * kCell);
  EXPECT_EQ(drawn.part("R3").path.front().x, 3 * kCell);
}

TEST(Layout, LaysTheRailsOfALadderAlongItsTop) {
  const Placed drawn = placed(
      "battery E = 6 V from G to T\nresistor R1 = 2 ohm from T to A\n"
      "resistor R2 = 2 ohm from A to G\nresistor R3 = 2 ohm from A to B\n"
      "resistor R4 = 2 ohm from B to G\n");
  EXPECT_THAT(drawn.part("R1").path, ElementsAre(Spot{0, 0}, Spot{kCell, 0}));
  EXPECT_THAT(drawn.part("R2").path, ElementsAre(Spot{kCell, 0}, Spot{kCell, kCell}));
  EXPECT_THAT(drawn.part("R3").path, ElementsAre(Spot{kCell, 0}, Spot{2 * kCell, 0}));
  EXPECT_THAT(drawn.part("R4").path, ElementsAre(Spot{2 * kCell, 0}, Spot{2 * kCell, kCell}));
}

TEST(Layout, DrawsABridgeOfSinglePartsAsADiamond) {
  const Placed drawn = placed(
      "battery E = 6 V from G to T\nresistor R1 = 2 ohm from T to A\n"
      "resistor R2 = 2 ohm from A to G\nresistor R3 = 3 ohm from T to B\n"
      "resistor R4 = 2 ohm from B to G\nresistor R5 = 1 ohm from A to B\n");
  const Path& arm = drawn.part("R1").path;
  EXPECT_LT(arm.back().x, arm.front().x);
  EXPECT_LT(arm.front().y, arm.back().y);
  const Path& across = drawn.part("R5").path;
  EXPECT_EQ(across.front().y, across.back().y);
  EXPECT_LT(across.front().x, across.back().x);
}

TEST(Layout, KeepsRightAnglesWhereNothingMayBeSlanted) {
  const Placed drawn = placed(
      "battery E = 6 V from G to T\nresistor R1 = 2 ohm from T to A\n"
      "resistor R2 = 2 ohm from A to G\nresistor R3 = 3 ohm from T to B\n"
      "resistor R4 = 2 ohm from B to G\nresistor R5 = 1 ohm from A to B\n",
      false);
  for (const PlacedPart& part : drawn.placement.parts) {
    EXPECT_TRUE(part.path[0].x == part.path[1].x || part.path[0].y == part.path[1].y);
  }
}

TEST(Layout, HangsADeadEndBesideItsNeighbour) {
  const Placed drawn = placed(
      "battery E = 6 V from G to T\nresistor R1 = 2 ohm from T to A\n"
      "resistor R2 = 2 ohm from A to G\nresistor R3 = 3 ohm from A to B\n");
  EXPECT_EQ(drawn.part("R3").path.front().y, drawn.part("R2").path.front().y);
  EXPECT_LT(drawn.part("R2").path.front().x, drawn.part("R3").path.front().x);
}

TEST(Layout, IsSoundForEveryCaseAndRedrawOfTheProblems) {
  const std::filesystem::path folder = std::string(OHMFOLD_SOURCE_DIR) + "/problems";
  std::size_t seen = 0;
  for (const auto& entry : std::filesystem::directory_iterator(folder)) {
    if (entry.path().extension() != ".circuit") continue;
    std::ostringstream text;
    text << std::ifstream(entry.path()).rdbuf();
    const Problem problem = test::problem_of(text.str());
    const Trace trace = solve(problem);
    for (const CaseTrace& one : trace.cases) {
      SCOPED_TRACE(entry.path().string() + " " + one.name);
      for (const bool slanted : {false, true}) {
        for (std::size_t k = 0; k <= one.main.steps.size(); ++k) {
          const Network network = replay(one.main, k);
          expect_sound(network, lay_out(network, {.root = one.main.source, .slanted = slanted}));
          ++seen;
        }
      }
    }
  }
  EXPECT_GT(seen, 300U);
}

TEST(Layout, IsSoundForRandomSeriesParallelNetworks) {
  support::RandomCircuits random(7);
  for (int round = 0; round < 300; ++round) {
    const Problem problem = random.series_parallel(1 + random.below(40), 20 + random.below(60));
    const Network network = set_case(problem, problem.cases.front());
    expect_sound(network, lay_out(network, {.root = PartId{0}}));
    if (::testing::Test::HasFailure()) FAIL() << network.dump();
  }
}

TEST(Layout, IsSoundForRandomNetworksOfAnyKind) {
  support::RandomCircuits random(11);
  for (int round = 0; round < 600; ++round) {
    const Problem problem = random.multigraph({.points = 2 + random.below(9),
                                               .resistors = 1 + random.below(12),
                                               .wires = random.below(4),
                                               .open_switches = random.below(3),
                                               .voltmeters = random.below(3),
                                               .batteries = random.below(3),
                                               .current_sources = random.below(2)});
    const Network network = set_case(problem, problem.cases.front());
    for (const bool slanted : {false, true}) {
      expect_sound(network, lay_out(network, {.root = PartId{0}, .slanted = slanted}));
    }
    if (::testing::Test::HasFailure()) FAIL() << network.dump();
  }
}

}  // namespace
}  // namespace ohmfold::drawing

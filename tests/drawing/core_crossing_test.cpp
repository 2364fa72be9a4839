// Cores that no planar drawing has are drawn with crossings that nobody reads as junctions.
#include "drawing/cores.h"
#include "drawing/sound.h"

namespace ohmfold::drawing {
namespace {

using namespace test;

/// Corner wires that cross uprights.
std::size_t crossings(const CorePlan& plan) {
  std::size_t count = 0;
  for (std::size_t a = 0; a < plan.wires.size(); ++a) {
    for (std::size_t b = a + 1; b < plan.wires.size(); ++b) {
      for (const Segment& one : plan.wires[a]) {
        for (const Segment& other : plan.wires[b]) count += sound::cross_over(one, other) ? 1 : 0;
      }
    }
  }
  return count;
}

TEST(CrossingCore, OfK5AndK33CrossesOnce) {
  for (const Core& core : {complete(5), complete_bipartite(3)}) {
    const CorePlan plan = place_crossing(core);
    expect_sound(core, plan);
    EXPECT_GE(crossings(plan), 1U);
    EXPECT_LE(crossings(plan), 3U);
  }
}

TEST(CrossingCore, OfPetersensGraphCrossesFewTimes) {
  const CorePlan plan = place_crossing(petersen());
  expect_sound(petersen(), plan);
  EXPECT_LE(crossings(plan), 6U);
}

TEST(CrossingCore, OfDenseGraphsIsSound) {
  for (std::uint32_t corners = 5; corners < 12; ++corners) {
    SCOPED_TRACE(corners);
    expect_sound(complete(corners), place_crossing(complete(corners)));
    expect_sound(complete_bipartite(corners / 2), place_crossing(complete_bipartite(corners / 2)));
  }
}

TEST(CrossingCore, IsSoundAtRandom) {
  for (std::uint64_t seed = 0; seed < 200; ++seed) {
    SCOPED_TRACE(seed);
    const auto corners = static_cast<std::uint32_t>(4 + seed % 14);
    const Core core = random_any(seed, corners, 2 * corners + seed % 9);
    expect_sound(core, place_crossing(core));
    if (HasFailure()) return;
  }
}

TEST(CrossingCore, OfAPlanarCoreHasNoCrossing) {
  for (std::uint64_t seed = 0; seed < 40; ++seed) {
    SCOPED_TRACE(seed);
    const Core core = random_planar(seed, 12, seed % 50);
    const CorePlan plan = place_crossing(core);
    expect_sound(core, plan);
    EXPECT_EQ(crossings(plan), 0U);
  }
}

TEST(CrossingCore, IsTheSameEachTime) {
  const Core core = random_any(3, 15, 40);
  const CorePlan one = place_crossing(core);
  const CorePlan other = place_crossing(core);
  EXPECT_EQ(one.wires, other.wires);
  EXPECT_EQ(one.at, other.at);
}

TEST(CrossingCore, OfThousandsOfEdgesEnds) {
  const Core core = random_any(1, 500, 1200);
  const CorePlan plan = place_crossing(core);
  EXPECT_EQ(plan.edges.size(), core.edges.size());
}

}  // namespace
}  // namespace ohmfold::drawing

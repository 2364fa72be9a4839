// Planar cores are drawn without a crossing, whatever their shape.
#include <chrono>

#include "drawing/cores.h"
#include "drawing/sound.h"

namespace ohmfold::drawing {
namespace {

using namespace test;

/// Lines that cross in the plan, boxes aside.
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

void expect_planar(const Core& core) {
  const std::optional<CorePlan> plan = place_planar(core);
  ASSERT_TRUE(plan.has_value());
  expect_sound(core, *plan);
  EXPECT_EQ(crossings(*plan), 0U);
}

TEST(PlanarCore, OfABridgeIsTheBridge) {
  const Core bridge = core_of(4, {{0, 2}, {0, 3}, {2, 3}, {2, 1}, {3, 1}});
  const std::optional<CorePlan> plan = place_planar(bridge);
  ASSERT_TRUE(plan.has_value());
  expect_sound(bridge, *plan);
  EXPECT_EQ(plan->width, 2 * kCell);
  EXPECT_EQ(plan->height, 3 * kCell);
}

TEST(PlanarCore, OfWellKnownGraphsIsSound) {
  expect_planar(complete(4));
  for (std::uint32_t rim = 3; rim < 12; ++rim) expect_planar(wheel(rim));
  for (std::uint32_t sides = 3; sides < 9; ++sides) expect_planar(prism(sides));
  for (std::uint32_t side = 2; side < 7; ++side) expect_planar(mesh(side, side + 1));
}

TEST(PlanarCore, IsSoundAtRandom) {
  for (std::uint64_t seed = 0; seed < 150; ++seed) {
    SCOPED_TRACE(seed);
    const auto corners = static_cast<std::uint32_t>(4 + seed % 20);
    expect_planar(random_planar(seed, corners, 0));
    if (HasFailure()) return;
  }
}

TEST(PlanarCore, MayHaveCutsAndLooseCorners) {
  for (std::uint64_t seed = 0; seed < 150; ++seed) {
    SCOPED_TRACE(seed);
    const auto corners = static_cast<std::uint32_t>(3 + seed % 15);
    expect_planar(random_planar(seed, corners, 20 + seed % 60));
    if (HasFailure()) return;
  }
}

TEST(PlanarCore, WithTwinsAndWithoutEdgesIsSound) {
  expect_planar(core_of(2, {}));
  expect_planar(core_of(2, {{0, 1}}));
  expect_planar(core_of(2, {{0, 1}, {1, 0}, {0, 1}}));
  expect_planar(core_of(5, {{0, 2}, {2, 0}, {2, 1}}));
}

TEST(PlanarCore, IsNoneWhereEdgesMustCross) {
  EXPECT_FALSE(place_planar(complete(5)).has_value());
  EXPECT_FALSE(place_planar(complete_bipartite(3)).has_value());
  EXPECT_FALSE(place_planar(petersen()).has_value());
  // Planar, but not with its terminals outside.
  Core core = complete(5);
  core.edges.erase(core.edges.begin());
  EXPECT_FALSE(place_planar(core).has_value());
}

TEST(PlanarCore, FollowsThePotentialsWhereTheyOrderIt) {
  Core core = mesh(3, 3);
  core.heights = {0, 4, 2, 1, 2, 3, 2, 3, 1};  // corner 8 lies where 1 would be in the mesh
  const std::optional<CorePlan> plan = place_planar(core);
  ASSERT_TRUE(plan.has_value());
  expect_sound(core, *plan);
  for (const CoreEdge& edge : core.edges) {
    if (core.heights[edge.from] == core.heights[edge.to]) continue;
    EXPECT_EQ(core.heights[edge.from] < core.heights[edge.to],
              plan->at[edge.from].y < plan->at[edge.to].y);
  }
}

TEST(PlanarCore, IgnoresPotentialsThatLeaveACornerAtTheEnd) {
  Core core = complete(4);
  core.heights = {0, 1, 5, 5};
  expect_planar(core);
}

TEST(PlanarCore, KeepsTheOrderOfTheFileWhereItCan) {
  const Core bridge = core_of(4, {{0, 2}, {0, 3}, {2, 3}, {2, 1}, {3, 1}});
  const std::optional<CorePlan> plan = place_planar(bridge);
  ASSERT_TRUE(plan.has_value());
  EXPECT_LT(plan->edges[0].top.x, plan->edges[1].top.x);
  const Core mirrored = core_of(4, {{0, 3}, {0, 2}, {2, 3}, {3, 1}, {2, 1}});
  const std::optional<CorePlan> other = place_planar(mirrored);
  ASSERT_TRUE(other.has_value());
  EXPECT_LT(other->edges[0].top.x, other->edges[1].top.x);
}

TEST(PlanarCore, OfTenThousandEdgesTakesAboutASecond) {
  const Core core = mesh(72, 70);
  const auto begin = std::chrono::steady_clock::now();
  const std::optional<CorePlan> plan = place_planar(core);
  const auto spent = std::chrono::steady_clock::now() - begin;
  ASSERT_TRUE(plan.has_value());
  RecordProperty(
      "milliseconds",
      static_cast<int>(std::chrono::duration_cast<std::chrono::milliseconds>(spent).count()));
  EXPECT_LT(spent, std::chrono::seconds(30)) << "a bound for slow machines and sanitizers";
}

}  // namespace
}  // namespace ohmfold::drawing

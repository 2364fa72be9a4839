// Spanning forests, the loops that chords close, and what lies on loops.
#include "circuit/spanning.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace ohmfold {
namespace {

using testing::ElementsAre;

// Points 0 to 5: a triangle 0 1 2 (parts 0, 1, 2), a link 2-3 (3), twins 3-4 (4, 5), 5 alone.
Network two_loops_and_a_link() {
  Network network(6);
  const int ends[][2] = {{0, 1}, {1, 2}, {2, 0}, {2, 3}, {3, 4}, {4, 3}};
  for (const auto& end : ends) {
    network.add(ElementKind::wire, PointId{static_cast<std::uint32_t>(end[0])},
                PointId{static_cast<std::uint32_t>(end[1])});
  }
  return network;
}

std::vector<PartId> all_parts(const Network& network) {
  std::vector<PartId> parts;
  for (std::uint32_t i = 0; i < network.part_count(); ++i) parts.push_back(PartId{i});
  return parts;
}

TEST(SpanForest, ReachesEveryPointOnceAndLeavesOneChordForEachLoop) {
  const Network network = two_loops_and_a_link();
  const SpanningForest forest = span_forest(network, all_parts(network));
  EXPECT_EQ(forest.order.size(), 6U);
  EXPECT_EQ(forest.chords.size(), 2U);
  EXPECT_TRUE(forest.joined(PointId{0}, PointId{4}));
  EXPECT_FALSE(forest.joined(PointId{0}, PointId{5}));
  std::vector<bool> seen(6, false);
  for (const PointId point : forest.order) {
    if (forest.up[point.index].exists()) {
      const PointId above = forest.above(network, point);
      EXPECT_TRUE(seen[above.index]) << "the point above comes first";
      EXPECT_EQ(forest.depth[point.index], forest.depth[above.index] + 1);
    }
    seen[point.index] = true;
  }
}

TEST(SpanForest, KnowsOnlyTheListedParts) {
  const Network network = two_loops_and_a_link();
  const SpanningForest forest = span_forest(network, {PartId{0}, PartId{4}});
  EXPECT_TRUE(forest.chords.empty());
  EXPECT_TRUE(forest.joined(PointId{0}, PointId{1}));
  EXPECT_FALSE(forest.joined(PointId{1}, PointId{2}));
}

TEST(FundamentalLoop, RunsFromTheChordsSecondPointBackToItsFirst) {
  const Network network = two_loops_and_a_link();
  const SpanningForest forest = span_forest(network, all_parts(network));
  EXPECT_THAT(fundamental_loop(network, forest, PartId{1}),
              ElementsAre(PartId{1}, PartId{2}, PartId{0}));
  EXPECT_THAT(fundamental_loop(network, forest, PartId{5}), ElementsAre(PartId{5}, PartId{4}));
}

TEST(OnLoops, TellsLinksFromPartsOfLoops) {
  const Network network = two_loops_and_a_link();
  EXPECT_THAT(on_loops(network, span_forest(network, all_parts(network))),
              ElementsAre(true, true, true, false, true, true));
  EXPECT_THAT(on_loops(network, span_forest(network, {PartId{0}, PartId{1}, PartId{3}})),
              ElementsAre(false, false, false, false, false, false));
}

TEST(OnLoops, TakesAPartWithBothEndsOnOnePointForALoop) {
  Network network(2);
  network.add(ElementKind::wire, PointId{0}, PointId{0});
  network.add(ElementKind::wire, PointId{0}, PointId{1});
  EXPECT_THAT(on_loops(network, span_forest(network, all_parts(network))),
              ElementsAre(true, false));
}

TEST(OnLoops, IsQuickWhereLoopsShareALongPath) {
  constexpr std::uint32_t kPoints = 200'000;
  Network network(kPoints);
  for (std::uint32_t i = 0; i + 1 < kPoints; ++i) {
    network.add(ElementKind::wire, PointId{i}, PointId{i + 1});
  }
  for (std::uint32_t i = 0; i + 2 < kPoints; i += 2) {
    network.add(ElementKind::wire, PointId{0}, PointId{kPoints - 1 - i});
  }
  const std::vector<bool> result = on_loops(network, span_forest(network, all_parts(network)));
  EXPECT_EQ(std::count(result.begin(), result.end(), false), 0);
}

}  // namespace
}  // namespace ohmfold

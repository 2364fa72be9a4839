// Leads that end at symbols, and arcs where lines cross.
#include "drawing/lines.h"

#include <gtest/gtest.h>

namespace ohmfold::drawing {
namespace {

using Spots = std::vector<FineSpot>;

DrawnPart bent() {
  DrawnPart part;
  part.path = {{0, 0}, {0, 100}, {200, 100}, {200, 50}};
  part.middle = {100, 100};
  part.direction = {200, 0};
  return part;
}

TEST(Leads, EndAtBothSidesOfTheSymbol) {
  const auto both = leads(bent(), 22);
  ASSERT_EQ(both.size(), 2U);
  EXPECT_EQ(both[0], (Spots{{0, 0}, {0, 100'000}, {78'000, 100'000}}));
  EXPECT_EQ(both[1], (Spots{{122'000, 100'000}, {200'000, 100'000}, {200'000, 50'000}}));
}

TEST(Leads, AreOneLineWithoutASymbol) {
  const auto whole = leads(bent(), 0);
  ASSERT_EQ(whole.size(), 1U);
  EXPECT_EQ(whole[0].size(), 4U);
}

TEST(Arcs, BulgeUpwardsWhicheverWayTheLineIsGoneAlong) {
  const std::vector<Crossing> crossings{{{50, 10}, {{0, 10}, {100, 10}}}};
  const Arcs arcs(crossings);
  const Line forth = arcs.through({{0, 10'000}, {100'000, 10'000}});
  ASSERT_EQ(forth.pieces.size(), 3U);
  EXPECT_EQ(forth.pieces[0].to, (FineSpot{44'000, 10'000}));
  EXPECT_TRUE(forth.pieces[1].arc);
  EXPECT_TRUE(forth.pieces[1].clockwise);
  EXPECT_EQ(forth.pieces[1].to, (FineSpot{56'000, 10'000}));
  const Line back = arcs.through({{100'000, 10'000}, {0, 10'000}});
  ASSERT_EQ(back.pieces.size(), 3U);
  EXPECT_EQ(back.pieces[0].to, (FineSpot{56'000, 10'000}));
  EXPECT_FALSE(back.pieces[1].clockwise);
}

TEST(Arcs, StandOnlyOnTheLineThatIsOver) {
  const std::vector<Crossing> crossings{{{50, 10}, {{0, 10}, {100, 10}}}};
  const Arcs arcs(crossings);
  EXPECT_EQ(arcs.through({{50'000, 0}, {50'000, 100'000}}).pieces.size(), 1U);
  EXPECT_EQ(arcs.through({{0, 20'000}, {100'000, 20'000}}).pieces.size(), 1U);
  EXPECT_EQ(arcs.through({{50'000, 10'000}, {100'000, 10'000}}).pieces.size(), 1U);
}

TEST(Arcs, ComeInOrderAlongALine) {
  const Segment over{{20, 0}, {20, 200}};
  const std::vector<Crossing> crossings{
      {{20, 150}, over}, {{20, 50}, over}, {{30, 100}, {{30, 0}, {30, 200}}}};
  const Arcs arcs(crossings);
  const Line line = arcs.through({{20'000, 0}, {20'000, 200'000}});
  ASSERT_EQ(line.pieces.size(), 5U);
  EXPECT_EQ(line.pieces[0].to, (FineSpot{20'000, 44'000}));
  EXPECT_EQ(line.pieces[2].to, (FineSpot{20'000, 144'000}));
}

TEST(Arcs, StandOnSlantedLinesToo) {
  const std::vector<Crossing> crossings{{{50, 50}, {{0, 0}, {100, 100}}}};
  const Arcs arcs(crossings);
  EXPECT_EQ(arcs.through({{0, 0}, {100'000, 100'000}}).pieces.size(), 3U);
  EXPECT_EQ(arcs.through({{100'000, 0}, {0, 100'000}}).pieces.size(), 1U);
}

}  // namespace
}  // namespace ohmfold::drawing

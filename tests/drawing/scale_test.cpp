// Columns and rows of different widths.
#include "drawing/scale.h"

#include <gtest/gtest.h>

namespace ohmfold::drawing {
namespace {

TEST(Scale, WidensOnlyTheColumnsThatNeedIt) {
  Scale scale({{0, 0}, {8, 4}}, 10, true);
  scale.widen_columns(4, 6, 60);
  scale.settle();
  EXPECT_EQ(scale({4, 0}), (Spot{40, 0}));
  EXPECT_EQ(scale({6, 0}), (Spot{100, 0}));
  EXPECT_EQ(scale({8, 4}), (Spot{120, 40}));
}

TEST(Scale, NeverNarrowsAColumn) {
  Scale scale({{0, 0}, {2, 2}}, 10, true);
  scale.widen_columns(0, 2, 4);
  scale.settle();
  EXPECT_EQ(scale({2, 2}), (Spot{20, 20}));
}

TEST(Scale, KeepsTheAngleOfASlantedLine) {
  Scale scale({{-4, -4}, {8, 8}}, 10, true);
  scale.share({{0, 4}, {4, 0}});
  scale.widen_columns(1, 2, 30);
  scale.settle();
  const Spot along = scale({4, 0}) - scale({0, 4});
  EXPECT_EQ(along, (Spot{120, -120}));
  EXPECT_EQ(scale({8, 0}) - scale({4, 0}), (Spot{40, 0}));
}

TEST(Scale, HasTheMiddleOfAGridSegmentNotOfItsDrawing) {
  Scale scale({{0, 0}, {4, 4}}, 10, true);
  scale.widen_columns(0, 1, 40);
  scale.settle();
  EXPECT_EQ(scale.middle({{0, 0}, {4, 0}}), (Spot{50, 0}));
  EXPECT_EQ(scale.middle({{0, 0}, {3, 0}}), (Spot{45, 0}));
}

TEST(Scale, FindsTheGridLineBeforeASpot) {
  Scale scale({{-2, 0}, {4, 4}}, 10, true);
  scale.origin = {100, 200};
  EXPECT_EQ(scale.lines_at({79, 200}), (Spot{-2, 0}));
  EXPECT_EQ(scale.lines_at({99, 219}), (Spot{-1, 1}));
  EXPECT_EQ(scale.lines_at({100, 240}), (Spot{0, 4}));
}

}  // namespace
}  // namespace ohmfold::drawing

// Whose a label is taken for.
#include "drawing/surroundings.h"

#include <gtest/gtest.h>

namespace ohmfold::drawing {
namespace {

/// Two upright resistors, 60 apart, between two points.
class Pair : public ::testing::Test {
 protected:
  Pair() {
    for (const int x : {0, 60}) {
      DrawnPart part;
      part.kind = SymbolKind::resistor;
      part.path = {{x, -100}, {x, 100}};
      part.middle = {x, 0};
      part.direction = {0, 200};
      schematic_.parts.push_back(part);
    }
    schematic_.points.resize(2);
    schematic_.points[0].wires = {{{0, -100}, {60, -100}}};
    schematic_.points[1].wires = {{{0, 100}, {60, 100}}};
  }

  Surroundings surroundings() {
    return {schematic_, {{0, 1, 0}, {0, 1, 0}}, paper_sizes(), std::nullopt};
  }

  Schematic schematic_;
};

TEST_F(Pair, LeavesALabelToTheNearerPart) {
  EXPECT_TRUE(surroundings().belongs_to_part({{{16, -8}, {36, 8}}}, 0));
  EXPECT_FALSE(surroundings().belongs_to_part({{{30, -8}, {50, 8}}}, 0));
  EXPECT_TRUE(surroundings().belongs_to_part({{{30, -8}, {50, 8}}}, 1));
}

TEST_F(Pair, LeavesANameToTheNearerPoint) {
  const Box below_the_upper_wire{{20, -90}, {30, -80}};
  EXPECT_TRUE(surroundings().belongs_to_point({below_the_upper_wire}, {20, -100}, 0));
  EXPECT_FALSE(surroundings().belongs_to_point({below_the_upper_wire}, {20, -100}, 1));
  const Box far_down{{20, 60}, {30, 80}};
  EXPECT_FALSE(surroundings().belongs_to_point({far_down}, {20, -100}, 0));
}

TEST_F(Pair, TakesNoRoomOfAPartForItsOwnTag) {
  const Box on_its_frame{{6, -40}, {14, -24}};
  EXPECT_FALSE(surroundings().is_free(on_its_frame));
  EXPECT_TRUE(surroundings().is_free(on_its_frame, 0));
}

}  // namespace
}  // namespace ohmfold::drawing

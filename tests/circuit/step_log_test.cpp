// The log of steps: what it keeps of an edit, and replaying it.
#include <gtest/gtest.h>

#include <array>

#include "ohmfold/trace.h"

namespace ohmfold {
namespace {

// A delta of three parts becomes a star with a new point in its middle.
Reduction delta_to_star() {
  Reduction reduction;
  Network network(3);
  const std::array<std::array<std::uint32_t, 2>, 3> sides{{{0, 1}, {1, 2}, {2, 0}}};
  for (const auto& [from, to] : sides) {
    network.add(ElementKind::resistor, PointId{from}, PointId{to}, Ratio(Number(3)));
  }
  reduction.start = network;
  Edit edit;
  edit.removes = {PartId{0}, PartId{1}, PartId{2}};
  edit.new_points = 1;
  for (std::uint32_t i = 0; i < 3; ++i) {
    edit.adds.push_back({PointId{i}, PointId{3}, Ratio(Number(1))});
  }
  const PartId made = network.commit(edit);
  reduction.steps.append(RuleName::parallel, 1, {}, edit, made, {});
  reduction.end = std::move(network);
  return reduction;
}

TEST(StepLog, KeepsAllThatAStepMakesWhereItIsNotOneResistor) {
  const Reduction reduction = delta_to_star();
  const Step step = reduction.steps[0];
  EXPECT_EQ(step.makes, PartId{3});
  ASSERT_EQ(step.adds.size(), 3U);
  EXPECT_EQ(step.adds[2].from, PointId{2});
  EXPECT_EQ(step.new_points, 1U);
}

TEST(StepLog, ReplaysPointsAndPartsThatCameTogether) {
  const Reduction reduction = delta_to_star();
  EXPECT_EQ(replay(reduction, 1).dump(), reduction.end.dump());
  EXPECT_EQ(replay(reduction, 0).dump(), reduction.start.dump());
}

}  // namespace
}  // namespace ohmfold

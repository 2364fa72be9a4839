// Steps that make one battery of several: right ones pass, each kind of wrong one is caught.
#include "check/battery_step.h"

#include <gtest/gtest.h>

#include "check/building.h"

namespace ohmfold {
namespace {

/// A battery step with the lists that it points into.
struct BatteryStep {
  std::vector<PartId> takes;
  std::vector<PointId> merges;
  std::vector<NewPart> adds;
  Merging merging = Merging::by_twos;

  [[nodiscard]] bool holds(const Network& network) const {
    Step step;
    step.number = 1;
    step.rule = RuleName::batteries;
    step.takes = takes;
    step.merges = merges;
    step.merging = merging;
    step.adds = adds;
    const check::StepFinding finding = check::check_battery_step(network, step);
    EXPECT_EQ(finding.holds, finding.detail.empty());
    EXPECT_EQ(check::check_step(network, step, adds.front()).holds, finding.holds);
    return finding.holds;
  }
};

// Battery 0 of 9 V, 1 ohm from 0 to 1; 4 ohm 1-2 (1); battery 2 of 4 V, 2 ohm from 3 to 2, against
// it; 5 ohm 3-0 (3).
Network opposed() {
  return Builder(4)
      .battery(0, 1, 9, 1)
      .resistor(1, 2, 4)
      .battery(3, 2, 4, 2)
      .resistor(3, 0, 5)
      .build();
}

BatteryStep right() {
  return {{part(0), part(2)},
          {point(2), point(3)},
          {{point(0), point(1), ohm(3), ElementKind::battery, Voltage{5}}}};
}

TEST(BatteryStep, HoldsWithTheSumBySign) {
  EXPECT_TRUE(right().holds(opposed()));
  BatteryStep turned = right();
  turned.merges = {point(3), point(2)};
  turned.adds = {{point(1), point(0), ohm(3), ElementKind::battery, Voltage{-5}}};
  EXPECT_TRUE(turned.holds(opposed()));
}

TEST(BatteryStep, FailsWithAnotherVoltageOrInternalResistance) {
  for (const int volt : {13, -5, 9, 6}) {
    BatteryStep step = right();
    step.adds.front().emf = Voltage{volt};
    EXPECT_FALSE(step.holds(opposed())) << volt;
  }
  BatteryStep step = right();
  step.adds.front().resistance = ohm(1);
  EXPECT_FALSE(step.holds(opposed()));
}

TEST(BatteryStep, FailsWithOtherPoints) {
  BatteryStep elsewhere = right();
  elsewhere.adds.front().from = point(3);
  EXPECT_FALSE(elsewhere.holds(opposed()));
  BatteryStep swapped = right();
  swapped.merges = {point(3), point(2)};
  EXPECT_FALSE(swapped.holds(opposed())) << "the direction of the second is wrong";
  BatteryStep others = right();
  others.merges = {point(1), point(2)};
  EXPECT_FALSE(others.holds(opposed())) << "a resistor is short-circuited";
  BatteryStep together = right();
  together.merging = Merging::together;
  EXPECT_FALSE(together.holds(opposed()));
  BatteryStep none = right();
  none.merges.clear();
  EXPECT_FALSE(none.holds(opposed()));
}

TEST(BatteryStep, FailsWhereSomethingElseIsJoinedBetween) {
  Network branched = opposed();
  branched.add(ElementKind::resistor, point(2), point(0), ohm(7));
  EXPECT_FALSE(right().holds(branched));
}

TEST(BatteryStep, HoldsWhereAWholePieceLiesBetweenThoughNoChain) {
  Network wide = opposed();
  wide.add(ElementKind::resistor, point(1), point(2), ohm(7));
  EXPECT_TRUE(right().holds(wide)) << "one current runs through both all the same";
}

TEST(BatteryStep, HoldsInARowThatClosesNoLoop) {
  const Network row = Builder(4).battery(0, 1, 9, 1).resistor(1, 2, 4).battery(3, 2, 4, 2).build();
  EXPECT_TRUE(right().holds(row));
  BatteryStep wrong = right();
  wrong.adds.front().emf = Voltage{13};
  EXPECT_FALSE(wrong.holds(row));
}

TEST(BatteryStep, FailsWhereTheBatteriesAreBesideEachOther) {
  const Network beside = Builder(3)
                             .battery(0, 1, 9, 1)
                             .battery(0, 1, 4, 2)
                             .resistor(1, 2, 4)
                             .resistor(2, 0, 4)
                             .build();
  BatteryStep step = right();
  step.takes = {part(0), part(1)};
  step.merges = {point(1), point(0)};
  EXPECT_FALSE(step.holds(beside));
}

TEST(BatteryStep, FailsWhereAResistorIsTakenToo) {
  BatteryStep step = right();
  step.takes = {part(0), part(1)};
  step.merges = {point(1), point(2)};
  EXPECT_FALSE(step.holds(opposed()));
}

TEST(BatteryStep, FailsForPartsThatAreNotThereOrTwice) {
  BatteryStep step = right();
  step.takes = {part(0), part(0)};
  EXPECT_FALSE(step.holds(opposed()));
  step.takes = {part(0)};
  step.merges.clear();
  EXPECT_FALSE(step.holds(opposed()));
}

}  // namespace
}  // namespace ohmfold

// Single steps: right ones pass, and each kind of wrong one is caught.
#include "check/step.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "check/building.h"

namespace ohmfold {
namespace {

using testing::HasSubstr;

bool holds(const Network& network, const WrittenStep& step) {
  const check::StepFinding finding = check::check_step(network, step.step(), step.made);
  EXPECT_EQ(finding.holds, finding.detail.empty());
  return finding.holds;
}

// Battery 0 from 0 to 3; R1 = 4 ohm 3-2 (1), R2 = 6 ohm 2-1 (2), R3 = 5 ohm 1-0 (3).
Network chain() {
  return Builder(4).battery(0, 3, 12).resistor(3, 2, 4).resistor(2, 1, 6).resistor(1, 0, 5).build();
}

TEST(SeriesStep, HoldsWithTheSum) {
  EXPECT_TRUE(holds(chain(), making({1, 2}, 3, 1, ohm(10))));
  EXPECT_TRUE(holds(chain(), making({1, 2, 3}, 3, 0, ohm(15))));
  EXPECT_TRUE(holds(chain(), making({1, 2, 3}, 0, 3, ohm(30, 2)))) << "not in lowest terms";
}

TEST(SeriesStep, FailsWithAnotherValueEndOrPart) {
  EXPECT_FALSE(holds(chain(), making({1, 2}, 3, 1, ohm(11))));
  EXPECT_FALSE(holds(chain(), making({1, 2}, 3, 0, ohm(10)))) << "wrong end";
  EXPECT_FALSE(holds(chain(), making({1, 2}, 3, 2, ohm(10)))) << "ends in the middle";
  EXPECT_FALSE(holds(chain(), making({1, 2}, 3, 3, ohm(10)))) << "a loop in place of a chain";
  EXPECT_FALSE(holds(chain(), making({1}, 3, 1, ohm(10)))) << "R2 is forgotten";
  EXPECT_FALSE(holds(chain(), making({1, 2, 3}, 3, 1, ohm(10)))) << "R3 is gone too";
  EXPECT_FALSE(holds(chain(), taking({1, 2}))) << "nothing takes its place";
  EXPECT_FALSE(holds(chain(), making({0, 1}, 0, 2, ohm(4)))) << "a battery is no resistor";
  EXPECT_FALSE(holds(chain(), making({1, 2}, 3, 1, ohm(0))));
}

TEST(SeriesStep, FailsWhereAThirdPartMeets) {
  Network network = chain();
  network.add(ElementKind::resistor, point(2), point(0), ohm(1));
  EXPECT_FALSE(holds(network, making({1, 2}, 3, 1, ohm(10))));
}

TEST(SeriesStep, NamesWhatItWasComparedWith) {
  const WrittenStep step = making({1, 2}, 3, 1, ohm(5));
  const std::string detail = check::check_step(chain(), step.step(), step.made).detail;
  EXPECT_THAT(detail, HasSubstr("between point #3 and point #1: off by 1/10 S"));
  EXPECT_THAT(detail, HasSubstr("compared with 1/10 S"));
}

// Battery 0 from 0 to 1; 3 ohm, 6 ohm and 2 ohm (1, 2, 3) all from 1 to 0.
Network bundle() {
  return Builder(2).battery(0, 1, 6).resistor(1, 0, 3).resistor(0, 1, 6).resistor(1, 0, 2).build();
}

TEST(ParallelStep, HoldsWithTheReciprocalSum) {
  EXPECT_TRUE(holds(bundle(), making({1, 2}, 1, 0, ohm(2))));
  EXPECT_TRUE(holds(bundle(), making({1, 2, 3}, 1, 0, ohm(1))));
}

TEST(ParallelStep, FailsWithAnotherValueOrPart) {
  EXPECT_FALSE(holds(bundle(), making({1, 2}, 1, 0, ohm(9)))) << "the sum";
  EXPECT_FALSE(holds(bundle(), making({1, 2}, 1, 0, ohm(1, 2)))) << "the reciprocal";
  EXPECT_FALSE(holds(bundle(), making({1, 2, 3}, 1, 0, ohm(2)))) << "one too many";
  EXPECT_FALSE(holds(bundle(), making({1, 1}, 1, 0, ohm(3, 2)))) << "one part twice";
}

// Battery 0 from 0 to 4; wires 1-2 (1) and 2-3 (2); 3 ohm from 4 to 1 (3) and 3 to 0 (4);
// 7 ohm from 2 to 0 (5).
Network wired() {
  return Builder(5)
      .battery(0, 4, 9)
      .wire(1, 2)
      .wire(2, 3)
      .resistor(4, 1, 3)
      .resistor(3, 0, 3)
      .resistor(2, 0, 7)
      .build();
}

TEST(WireStep, HoldsWhereExactlyTheJoinedPointsBecomeOne) {
  EXPECT_TRUE(holds(wired(), merging({1, 2}, {1, 2, 3})));
  EXPECT_TRUE(holds(wired(), merging({1}, {1, 2})));
}

TEST(WireStep, FailsWithAnotherSetOfPoints) {
  EXPECT_FALSE(holds(wired(), merging({1, 2}, {1, 2}))) << "point 3 loses its wire";
  EXPECT_FALSE(holds(wired(), merging({1}, {1, 2, 3}))) << "the second wire is not taken";
  EXPECT_FALSE(holds(wired(), merging({1, 2}, {1, 2, 3, 4})));
  EXPECT_FALSE(holds(wired(), taking({1, 2})));
  EXPECT_FALSE(holds(wired(), merging({3}, {1, 4}))) << "a resistor joins no points";
}

TEST(WireStep, FailsWhereTheBatteryGoesWithTheWire) {
  EXPECT_FALSE(holds(Builder(2).battery(0, 1, 3, 1).wire(0, 1).resistor(0, 1, 2).build(),
                     merging({0, 1}, {0, 1})));
}

TEST(GapStep, HoldsForWhatConductsNothing) {
  const auto with = [](ElementKind kind) {
    return Builder(3)
        .battery(0, 2, 9)
        .resistor(2, 1, 3)
        .resistor(1, 0, 3)
        .other(kind, 1, 0)
        .build();
  };
  for (const auto kind : {ElementKind::open_switch, ElementKind::voltmeter, ElementKind::taken_out,
                          ElementKind::switched_off}) {
    EXPECT_TRUE(holds(with(kind), taking({3})));
    EXPECT_FALSE(holds(with(kind), merging({3}, {0, 1})));
    EXPECT_FALSE(holds(with(kind), taking({2, 3}))) << "a resistor goes with it";
  }
  EXPECT_FALSE(holds(with(ElementKind::closed_switch), taking({3})));
}

TEST(ShortedStep, HoldsForAResistorWithBothEndsOnOnePointOnly) {
  const Network network =
      Builder(2).battery(0, 1, 9).resistor(1, 0, 3).resistor(1, 1, 3).battery(1, 1, 3, 2).build();
  EXPECT_TRUE(holds(network, taking({2})));
  EXPECT_FALSE(holds(network, taking({1})));
  EXPECT_FALSE(holds(network, taking({3}))) << "a battery drives a current round itself";
}

// The loop of battery 0 and R (1); from point 1 hang 2 ohm to 2 (2), and a loop 2-3-2 (3, 4).
Network hanging_loop() {
  return Builder(4)
      .battery(0, 1, 9)
      .resistor(1, 0, 3)
      .resistor(1, 2, 2)
      .resistor(2, 3, 4)
      .resistor(3, 2, 4)
      .build();
}

TEST(DeadEndStep, HoldsForWhatHangsFromOnePoint) {
  EXPECT_TRUE(holds(hanging_loop(), taking({2, 3, 4})));
  EXPECT_TRUE(holds(hanging_loop(), taking({3, 4})));
  EXPECT_FALSE(holds(hanging_loop(), taking({1, 2, 3, 4}))) << "R lies on the battery's loop";
  EXPECT_FALSE(holds(hanging_loop(), taking({3}))) << "its twin stays";
}

TEST(DeadEndStep, HoldsForABatteryThatHangsOpenButNotForOneOnALoop) {
  const Network open =
      Builder(4).battery(0, 1, 9).resistor(1, 0, 3).resistor(1, 2, 2).battery(2, 3, 5).build();
  EXPECT_TRUE(holds(open, taking({2, 3})));
  EXPECT_FALSE(holds(open, taking({0, 1})));
  Network closed = open;
  closed.add(ElementKind::resistor, point(3), point(2), ohm(1));
  EXPECT_FALSE(holds(closed, taking({2, 3, 4})));
  Network two = open;
  two.add_battery(point(2), point(3), {5}, {1});
  EXPECT_FALSE(holds(two, taking({2, 3, 4}))) << "two batteries drive each other";
}

TEST(DeadEndStep, HoldsForWhatIsJoinedToNothing) {
  const Network network =
      Builder(4).battery(0, 1, 9).resistor(1, 0, 3).resistor(2, 3, 2).resistor(3, 2, 2).build();
  EXPECT_TRUE(holds(network, taking({2, 3})));
}

// Two loops, each a battery and a resistor: 0-1 (parts 0, 1) and 2-3 (2, 3); links follow.
Builder two_loops() {
  return Builder(6).battery(0, 1, 9).resistor(1, 0, 3).battery(2, 3, 5).resistor(3, 2, 4);
}

TEST(OnlyLinkStep, HoldsForOneLinkOfAnyKind) {
  EXPECT_TRUE(holds(two_loops().resistor(1, 3, 7).build(), taking({4})));
  EXPECT_TRUE(holds(two_loops().wire(1, 3).build(), taking({4})));
  EXPECT_TRUE(holds(two_loops().battery(1, 3, 7).build(), taking({4})));
  EXPECT_TRUE(holds(two_loops().resistor(1, 4, 7).resistor(4, 3, 2).build(), taking({4, 5})));
}

TEST(OnlyLinkStep, FailsForTwoLinksThatCloseAPath) {
  const Network network = two_loops().resistor(1, 3, 7).resistor(0, 2, 7).build();
  EXPECT_FALSE(holds(network, taking({4})));
  EXPECT_FALSE(holds(network, taking({4, 5}))) << "though each would be the only one";
  const Network star = two_loops().resistor(1, 4, 7).resistor(3, 4, 7).resistor(2, 4, 7).build();
  EXPECT_FALSE(holds(star, taking({4, 5, 6})));
}

TEST(OnlyLinkStep, FailsWhereMergedPointsCloseThePath) {
  // A wire 4-5 is merged in the same step; the rest joins 0 to 4 and 5 to 2.
  const Network network =
      two_loops().resistor(1, 3, 7).resistor(0, 4, 1).wire(4, 5).resistor(5, 2, 1).build();
  EXPECT_FALSE(holds(network, merging({4, 6}, {4, 5})));
  EXPECT_TRUE(holds(network, merging({6}, {4, 5})));
}

TEST(OnlyLinkStep, HoldsForAChainOfLoopsAllAtOnce) {
  Builder builder(2 * 50);
  std::vector<int> links;
  for (int i = 0; i < 50; ++i)
    builder.battery(2 * i, 2 * i + 1, 3, 1).resistor(2 * i, 2 * i + 1, 2);
  for (int i = 0; i + 1 < 50; ++i) {
    builder.resistor(2 * i + 1, 2 * i + 2, 5);
    links.push_back(100 + i);
  }
  EXPECT_TRUE(holds(builder.build(), taking(links)));
  EXPECT_FALSE(holds(builder.resistor(0, 99, 1).build(), taking(links)));
}

TEST(Step, NeverTakesAPort) {
  const Network network = Builder(3)
                              .other(ElementKind::port, 0, 1)
                              .resistor(0, 1, 2)
                              .other(ElementKind::port, 1, 2)
                              .build();
  EXPECT_FALSE(holds(network, taking({2})));
  EXPECT_FALSE(holds(network, making({1, 2}, 0, 2, ohm(2))));
}

TEST(Step, RefusesPartsThatAreNotThere) {
  Network network = bundle();
  Edit edit;
  edit.removes = {part(3)};
  network.commit(edit);
  EXPECT_FALSE(holds(network, taking({3})));
  EXPECT_FALSE(holds(network, taking({99})));
}

}  // namespace
}  // namespace ohmfold

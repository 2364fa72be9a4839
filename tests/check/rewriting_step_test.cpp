// Steps that make several parts, and steps that rest on equal potentials: right ones pass, wrong
// ones are caught.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "check/building.h"
#include "check/step.h"

namespace ohmfold {
namespace {

using testing::HasSubstr;

// A step with the lists that it points into.
struct Rewriting {
  std::vector<PartId> takes;
  std::vector<PointId> merges;
  std::vector<NewPart> adds;
  std::uint32_t new_points = 0;
  Scope scope = Scope::everywhere;

  [[nodiscard]] check::StepFinding check(const Network& network) const {
    Step step;
    step.number = 1;
    step.takes = takes;
    step.merges = merges;
    step.adds = adds;
    step.new_points = new_points;
    step.scope = scope;
    if (!adds.empty()) step.makes = part(static_cast<int>(network.part_count()));
    return check::check_step(network, step, std::nullopt);
  }
};

bool holds(const Network& network, const Rewriting& step) {
  const check::StepFinding finding = step.check(network);
  EXPECT_EQ(finding.holds, finding.detail.empty());
  return finding.holds;
}

NewPart arm(int from, int to, const Ratio& value) {
  return {point(from), point(to), value};
}

// Battery 0 from 0 to 1; R1 = 1 ohm 1-2, R2 = 2 ohm 2-0, R3 = 3 ohm 1-3, R4 = 4 ohm 3-0, R5 = 5 ohm
// 2-3.
Network bridge(int last = 4) {
  return Builder(4)
      .battery(0, 1, 12)
      .resistor(1, 2, 1)
      .resistor(2, 0, 2)
      .resistor(1, 3, 3)
      .resistor(3, 0, last)
      .resistor(2, 3, 5)
      .build();
}

Rewriting delta_to_star() {
  return {{part(1), part(3), part(5)},
          {},
          {arm(1, 4, ohm(1, 3)), arm(2, 4, ohm(5, 9)), arm(3, 4, ohm(5, 3))},
          1};
}

Rewriting star_to_delta() {
  return {{part(1), part(2), part(5)},
          {},
          {arm(1, 0, ohm(17, 5)), arm(1, 3, ohm(17, 2)), arm(0, 3, ohm(17))}};
}

TEST(SeveralParts, HoldWithTheRightValues) {
  EXPECT_TRUE(holds(bridge(), delta_to_star()));
  EXPECT_TRUE(holds(bridge(), star_to_delta()));
}

TEST(SeveralParts, FailWithAnyOtherValue) {
  for (std::size_t i = 0; i < 3; ++i) {
    Rewriting star = delta_to_star();
    star.adds[i].resistance = ohm(7, 2);
    EXPECT_FALSE(holds(bridge(), star)) << i;
    Rewriting delta = star_to_delta();
    delta.adds[i].resistance = ohm(16);
    EXPECT_FALSE(holds(bridge(), delta)) << i;
    delta.adds[i].resistance = ohm(0);
    EXPECT_FALSE(holds(bridge(), delta)) << i;
  }
}

TEST(SeveralParts, FailWithAnEndElsewhereOrAPartLess) {
  Rewriting star = delta_to_star();
  star.adds[0].from = point(0);
  EXPECT_FALSE(holds(bridge(), star)) << "no part taken ends at 0";
  star = delta_to_star();
  std::swap(star.adds[0].from, star.adds[1].from);
  EXPECT_FALSE(holds(bridge(), star));
  star = delta_to_star();
  star.adds.pop_back();
  EXPECT_FALSE(holds(bridge(), star));
  star = delta_to_star();
  star.takes.pop_back();
  EXPECT_FALSE(holds(bridge(), star));
  star = delta_to_star();
  star.new_points = 0;
  EXPECT_FALSE(holds(bridge(), star)) << "the middle is no point";
}

TEST(SeveralParts, FailWhereThePointThatGoesIsJoinedElsewhere) {
  Network network = bridge();
  network.add(ElementKind::resistor, point(2), point(0), ohm(9));
  EXPECT_FALSE(holds(network, star_to_delta()));
}

TEST(SeveralParts, FailWhereASourceIsTaken) {
  Rewriting star = delta_to_star();
  star.takes.push_back(part(0));
  EXPECT_FALSE(holds(bridge(), star));
}

TEST(SeveralParts, NameWhatTheyWereComparedWith) {
  Rewriting star = delta_to_star();
  star.adds[0].resistance = ohm(2, 3);
  EXPECT_THAT(star.check(bridge()).detail, HasSubstr("conductance between point #1 and point #2"));
}

Rewriting cutting(int one) {
  return {{part(one)}, {}, {}, 0, Scope::as_seen_by_the_source};
}
Rewriting joining(int first, int second) {
  return {{}, {point(first), point(second)}, {}, 0, Scope::as_seen_by_the_source};
}

TEST(EqualPotentialsStep, HoldsForABalancedBridge) {
  EXPECT_TRUE(holds(bridge(6), cutting(5)));
  EXPECT_TRUE(holds(bridge(6), joining(2, 3)));
}

TEST(EqualPotentialsStep, FailsWhereThePotentialsDiffer) {
  EXPECT_FALSE(holds(bridge(), cutting(5)));
  EXPECT_FALSE(holds(bridge(), joining(2, 3)));
  EXPECT_FALSE(holds(bridge(6), cutting(1)));
  EXPECT_FALSE(holds(bridge(6), joining(1, 2)));
  EXPECT_FALSE(holds(bridge(6), joining(0, 1))) << "the terminals";
  EXPECT_THAT(cutting(5).check(bridge()).detail, HasSubstr("not at the same potential: off by"));
}

TEST(EqualPotentialsStep, FailsWhereItIsSaidToHoldEverywhere) {
  Rewriting cut = cutting(5);
  cut.scope = Scope::everywhere;
  EXPECT_FALSE(holds(bridge(6), cut));
  Rewriting join = joining(2, 3);
  join.scope = Scope::everywhere;
  EXPECT_FALSE(holds(bridge(6), join));
}

TEST(EqualPotentialsStep, FailsWithoutOneSourceThatFeedsBothPoints) {
  Network two = bridge(6);
  two.add_battery(point(0), point(1), {5}, {1});
  EXPECT_FALSE(holds(two, cutting(5)));
  const Network apart =
      Builder(6).battery(0, 1, 3).resistor(0, 1, 1).resistor(2, 3, 1).resistor(4, 5, 1).build();
  EXPECT_FALSE(holds(apart, joining(2, 4))) << "nothing feeds them";
  EXPECT_FALSE(holds(apart, joining(2, 9))) << "no such point";
}

TEST(EqualPotentialsStep, FailsWhereAPartIsMadeOrTheSourceTaken) {
  Rewriting cut = cutting(5);
  cut.adds = {arm(2, 3, ohm(5))};
  EXPECT_FALSE(holds(bridge(6), cut));
  EXPECT_FALSE(holds(bridge(6), cutting(0)));
}

TEST(EqualPotentialsStep, DoesNotDependOnTheVoltage) {
  Network none(4);
  none.add_battery(point(0), point(1), {0}, {2});
  for (const auto& [from, to, ohms] :
       {std::tuple{1, 2, 1}, {2, 0, 2}, {1, 3, 3}, {3, 0, 4}, {2, 3, 5}}) {
    none.add(ElementKind::resistor, point(from), point(to), ohm(ohms));
  }
  EXPECT_FALSE(holds(none, cutting(5)))
      << "at 0 V all potentials are equal, but not by the circuit";
}

}  // namespace
}  // namespace ohmfold

// Points at the same potential: by balance, by symmetry, by the solution, and not.
#include <gmock/gmock.h>

#include <algorithm>

#include "rule_case.h"

namespace ohmfold::test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

std::string bridge(const std::string& last) {
  return "battery E = 12 V from G to T\n"
         "resistor R1 = 4 ohm from T to A\n"
         "resistor R2 = 8 ohm from A to G\n"
         "resistor R3 = 6 ohm from T to B\n"
         "resistor R4 = " +
         last +
         " ohm from B to G\n"
         "resistor R5 = 5 ohm from A to B\n";
}

// A cube of equal wires, seen along its long diagonal; A is joined to B, C and D, H to E, F and I.
constexpr const char* kCube =
    "resistor R1 = 1 ohm from A to B\n"
    "resistor R2 = 1 ohm from A to C\n"
    "resistor R3 = 1 ohm from A to D\n"
    "resistor R4 = 1 ohm from B to E\n"
    "resistor R5 = 1 ohm from B to F\n"
    "resistor R6 = 1 ohm from C to E\n"
    "resistor R7 = 1 ohm from C to I\n"
    "resistor R8 = 1 ohm from D to F\n"
    "resistor R9 = 1 ohm from D to I\n"
    "resistor R10 = 1 ohm from E to H\n"
    "resistor R11 = 1 ohm from F to H\n"
    "resistor R12 = 1 ohm from I to H\n"
    "battery E1 = 1 V from H to A\n";

Verdict judge_points(const RuleCase& c, const std::vector<std::string>& names) {
  Place place;
  for (const std::string& name : names) place.points.push_back(c.at(name));
  const Network network = set_case(c.problem(), c.problem().cases.front());
  return rule(RuleName::equal_potentials).judge(network, place);
}

std::vector<std::vector<PointId>> merges(const RuleCase& c) {
  const Network network = set_case(c.problem(), c.problem().cases.front());
  std::vector<std::vector<PointId>> found;
  const Rule& equal = rule(RuleName::equal_potentials);
  for (const Place& place : equal.find(network, whole(network))) {
    EXPECT_TRUE(equal.judge(network, place).allowed);
    if (place.parts.empty()) found.push_back(place.points);
  }
  return found;
}

TEST(EqualPotentials, OfABalancedBridgeAreShownByItsRatio) {
  const RuleCase c(bridge("12"));
  EXPECT_THAT(c.find(RuleName::equal_potentials), ElementsAre("R5"));
  const auto fact = only_fact<Balanced>(c.judge(RuleName::equal_potentials, "R5"));
  EXPECT_EQ(fact.part, c.id("R5"));
  EXPECT_EQ(fact.first_near, c.id("R1"));
  EXPECT_EQ(fact.first_far, c.id("R2"));
  EXPECT_EQ(fact.second_near, c.id("R3"));
  EXPECT_EQ(fact.second_far, c.id("R4"));
}

TEST(EqualPotentials, DifferWhereTheRatiosDo) {
  const RuleCase c(bridge("13"));
  EXPECT_THAT(c.find(RuleName::equal_potentials), IsEmpty());
  // B is higher: 13 ohm of 19 lie below it, 8 of 12 below A.
  const auto fact = only_fact<PotentialsDiffer>(c.judge(RuleName::equal_potentials, "R5"));
  EXPECT_EQ(fact.higher, c.at("B"));
  EXPECT_EQ(fact.lower, c.at("A"));
}

TEST(EqualPotentials, LeaveOutThePartBetweenThem) {
  RuleCase c(bridge("12"));
  const Edit edit = rule(RuleName::equal_potentials).apply(c.network(), c.place("R5"));
  EXPECT_THAT(edit.removes, ElementsAre(c.id("R5")));
  EXPECT_THAT(edit.adds, IsEmpty());
  EXPECT_EQ(edit.scope, Scope::as_seen_by_the_source);
}

TEST(EqualPotentials, OfACubeAreThreeAndThree) {
  const RuleCase c(kCube);
  EXPECT_THAT(merges(c), ElementsAre(ElementsAre(c.at("B"), c.at("C"), c.at("D")),
                                     ElementsAre(c.at("E"), c.at("F"), c.at("I"))));
}

TEST(EqualPotentials, NameASymmetryThatMovesOneToTheOtherAndKeepsTheRest) {
  const RuleCase c(kCube);
  const Verdict verdict = judge_points(c, {"B", "C"});
  ASSERT_TRUE(verdict.allowed);
  ASSERT_TRUE(std::holds_alternative<Symmetric>(verdict.facts.front()));
  std::vector<PointId> image(c.problem().points.size());
  for (std::uint32_t i = 0; i < image.size(); ++i) image[i] = PointId{i};
  for (const Fact& fact : verdict.facts) {
    if (const auto* move = std::get_if<Moves>(&fact)) image[move->from.index] = move->to;
  }
  EXPECT_EQ(image[c.at("B").index], c.at("C"));
  EXPECT_EQ(image[c.at("A").index], c.at("A"));
  EXPECT_EQ(image[c.at("H").index], c.at("H"));
  // Every wire goes onto a wire.
  const auto has_wire = [&](PointId a, PointId b) {
    return std::any_of(c.problem().parts.begin(), c.problem().parts.end(), [&](const Part& p) {
      return (p.from == a && p.to == b) || (p.from == b && p.to == a);
    });
  };
  for (const Part& part : c.problem().parts) {
    EXPECT_TRUE(has_wire(image[part.from.index], image[part.to.index])) << part.name;
  }
}

TEST(EqualPotentials, AreNotMadeByASymmetryOfShapeAlone) {
  std::string other = kCube;
  other.replace(other.find("R2 = 1"), 6, "R2 = 2");
  const RuleCase c(other);
  EXPECT_TRUE(judge_points(c, {"B", "D"}).allowed);
  EXPECT_EQ(only_fact<PotentialsDiffer>(judge_points(c, {"B", "C"})).higher, c.at("B"));
}

TEST(EqualPotentials, LieHalfWayWhereASymmetryTurnsTheTerminalsRound) {
  // Two chains with the same resistance above and below their middles, joined crosswise.
  const RuleCase c(
      "battery E = 10 V from G to T\n"
      "resistor R1 = 1 ohm from T to A\n"
      "resistor R2 = 2 ohm from A to M\n"
      "resistor R3 = 2 ohm from M to B\n"
      "resistor R4 = 1 ohm from B to G\n"
      "resistor R5 = 3 ohm from T to N\n"
      "resistor R6 = 3 ohm from N to G\n"
      "resistor R7 = 4 ohm from A to N\n"
      "resistor R8 = 4 ohm from N to B\n"
      "resistor R9 = 7 ohm from M to N\n");
  EXPECT_THAT(c.find(RuleName::equal_potentials), testing::Contains("R9"));
  const Verdict verdict = c.judge(RuleName::equal_potentials, "R9");
  ASSERT_TRUE(verdict.allowed);
  EXPECT_TRUE(std::holds_alternative<InTheMiddle>(verdict.facts.front()));
}

TEST(EqualPotentials, ThatOnlyTheSolutionShowsAreAllowedButNotFound) {
  // V_A = 8 V; B lies at 8 V too, over another arrangement: 3 and 6 ohm beside 2 and 4 in one node.
  const RuleCase c(
      "battery E = 12 V from G to T\n"
      "resistor R1 = 4 ohm from T to A\n"
      "resistor R2 = 8 ohm from A to G\n"
      "resistor R3 = 2 ohm from T to B\n"
      "resistor R4 = 2 ohm from B to C\n"
      "resistor R5 = 2 ohm from C to G\n"
      "resistor R6 = 1 ohm from A to B\n");
  EXPECT_THAT(c.find(RuleName::equal_potentials), IsEmpty());
  only_fact<SamePotential>(c.judge(RuleName::equal_potentials, "R6"));
}

TEST(EqualPotentials, NeedOneSourceAndPointsThatItFeeds) {
  const RuleCase two(bridge("12") + "battery E2 = 1 V from G to T\n");
  only_fact<NotOneSource>(two.judge(RuleName::equal_potentials, "R5"));
  const RuleCase apart(bridge("12") + "resistor R6 = 1 ohm from X to Y\n");
  only_fact<NotFed>(judge_points(apart, {"A", "X"}));
  EXPECT_EQ(only_fact<NotAResistor>(apart.judge(RuleName::equal_potentials, "E")).part,
            apart.id("E"));
  only_fact<TooFewParts>(judge_points(apart, {"A"}));
}

TEST(EqualPotentials, EndInTimeOnGraphsThatAreHardToTellApart) {
  // A ladder of two rungs' symmetry many times over: a grid of equal squares closed to a torus.
  std::string text = "battery E = 1 V from p0_0 to p5_5\n";
  constexpr int kSide = 10;
  const auto name = [](int i, int j) {
    return "p" + std::to_string(i % kSide) + "_" + std::to_string(j % kSide);
  };
  int number = 0;
  for (int i = 0; i < kSide; ++i) {
    for (int j = 0; j < kSide; ++j) {
      for (const std::string& other : {name(i + 1, j), name(i, j + 1)}) {
        text += "resistor R" + std::to_string(++number) + " = 1 from " + name(i, j) + " to " +
                other + "\n";
      }
    }
  }
  EXPECT_FALSE(merges(RuleCase(text)).empty());
}

}  // namespace
}  // namespace ohmfold::test

// Each kind of fault of a placement is found: a check that cannot fail holds nothing.
#include "drawing/sound.h"

#include <functional>

namespace ohmfold::drawing {
namespace {

using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

constexpr PointId kTop{0}, kBottom{1};

/// A battery at the left, two resistors beside it, all between the same two points.
Network three_side_by_side() {
  Network network(2);
  network.add_battery(kBottom, kTop, {}, {});
  network.add(ElementKind::resistor, kTop, kBottom, Ratio(1));
  network.add(ElementKind::resistor, kTop, kBottom, Ratio(1));
  return network;
}

Placement sound_placement() {
  Placement placement;
  placement.parts = {{PartId{0}, {{0, 4}, {0, 0}}, 0},
                     {PartId{1}, {{4, 0}, {4, 4}}, 0},
                     {PartId{2}, {{8, 0}, {8, 4}}, 0}};
  placement.points = {{kTop, {{{0, 0}, {8, 0}}}, {0, 0}}, {kBottom, {{{0, 4}, {8, 4}}}, {0, 4}}};
  return placement;
}

struct Spoiling {
  const char* name;
  std::function<void(Placement&)> spoil;
  const char* fault;
};

class SoundPlacement : public ::testing::TestWithParam<Spoiling> {};

TEST_P(SoundPlacement, FindsTheFault) {
  Placement placement = sound_placement();
  ASSERT_THAT(faults_of(three_side_by_side(), placement), IsEmpty());
  GetParam().spoil(placement);
  EXPECT_THAT(faults_of(three_side_by_side(), placement), Contains(HasSubstr(GetParam().fault)));
}

const Spoiling kSpoilings[] = {
    {"PartMissing", [](Placement& p) { p.parts.pop_back(); }, "parts are missing"},
    {"PartTwice", [](Placement& p) { p.parts.push_back(p.parts.back()); }, "come twice"},
    {"PartsOutOfOrder", [](Placement& p) { std::swap(p.parts[0], p.parts[1]); }, "out of order"},
    {"PointMissing", [](Placement& p) { p.points.pop_back(); }, "is missing: point 1"},
    {"PointWithNothing",
     [](Placement& p) {
       p.points.push_back({PointId{2}, {}, {20, 20}});
     },
     "nothing is joined at point 2"},
    {"PointsOutOfOrder", [](Placement& p) { std::swap(p.points[0], p.points[1]); },
     "points are out of order"},
    {"NoPath",
     [](Placement& p) {
       p.parts[2].path = {{8, 0}};
     },
     "has no path: part 2"},
    {"SpotTwice",
     [](Placement& p) {
       p.parts[2].path = {{8, 0}, {8, 0}, {8, 4}};
     },
     "a spot comes twice: part 2"},
    {"NoSeat", [](Placement& p) { p.parts[2].seat = 1; }, "has no seat: part 2"},
    {"StartsElsewhere",
     [](Placement& p) {
       p.parts[2].path.front() = {8, -2};
     },
     "does not start at its point: part 2"},
    {"EndsElsewhere",
     [](Placement& p) {
       p.parts[2].path.back() = {8, 6};
     },
     "does not end at its point: part 2"},
    {"WrongWayRound", [](Placement& p) { std::swap(p.parts[2].path[0], p.parts[2].path[1]); },
     "does not start at its point: part 2"},
    {"WiresFallApart",
     [](Placement& p) {
       p.points[0].wires.push_back({{20, 0}, {24, 0}});
     },
     "wires fall apart: point 0"},
    {"CrossingWiresAreNotJoined",
     [](Placement& p) {
       p.points[0].wires.push_back({{6, -2}, {6, 2}});
     },
     "wires fall apart: point 0"},
    {"WireOfNoLength",
     [](Placement& p) {
       p.points[0].wires.push_back({{4, 0}, {4, 0}});
     },
     "a wire has no length: point 0"},
    {"NameElsewhere",
     [](Placement& p) {
       p.points[0].at = {4, 2};
     },
     "its name is away from its wires: point 0"},
    {"NoWiresButSeveralSpots", [](Placement& p) { p.points[0].wires.clear(); },
     "does not start at its point"},
    {"SharedStretch",
     [](Placement& p) {
       p.parts[2].path = {{4, 0}, {4, 2}, {8, 2}, {8, 4}};
     },
     "a stretch is shared: part 1"},
    {"PartAlongItsPoint",
     [](Placement& p) {
       p.parts[2].path = {{4, 0}, {8, 0}, {8, 4}};
       p.parts[2].seat = 1;
     },
     "a stretch is shared: point 0"},
    {"WireOnAPart",
     [](Placement& p) {
       p.points[0].wires.push_back({{6, 0}, {6, 4}});
     },
     "an end lies on a line: point 0"},
    {"CornerOnAPart",
     [](Placement& p) {
       p.parts[2].path = {{8, 0}, {8, 2}, {4, 2}, {6, 3}, {8, 4}};
     },
     "an end lies on a line: part 1"},
    {"SlantedCrossing",
     [](Placement& p) {
       p.points[0].wires.push_back({{0, 0}, {0, -8}});
       p.points[0].wires.push_back({{0, -8}, {20, -8}});
       p.parts[2].path = {{8, 0}, {7, -12}, {30, -12}, {30, 4}, {8, 4}};
     },
     "a crossing is slanted"},
    {"MeetsItself",
     [](Placement& p) {
       p.parts[2].path = {{8, 0},   {8, -8},   {12, -8}, {12, -4}, {4, -4},
                          {4, -12}, {20, -12}, {20, 8},  {8, 8},   {8, 4}};
     },
     "meets itself: part 2"},
    {"CornerNearASeat",
     [](Placement& p) {
       p.parts[2].path = {{8, 0}, {8, 3}, {9, 3}, {8, 4}};
     },
     "a corner is near the seat of part 2"},
    {"LineNearASeat",
     [](Placement& p) {
       p.points[0].wires.push_back({{5, 0}, {5, 3}});
     },
     "a line is near the seat of part 1: point 0"},
    {"OwnLineNearASeat",
     [](Placement& p) {
       p.parts[2].path = {{8, 0}, {8, -8}, {9, -8}, {9, -4}, {20, -4}, {20, 8}, {8, 8}, {8, 4}};
     },
     "a line is near the seat of part 2: part 2"},
    {"CrossingNearASeat",
     [](Placement& p) {
       p.points[1].wires.push_back({{0, 4}, {-4, 4}});
       p.points[1].wires.push_back({{-4, 4}, {-4, 1}});
       p.points[1].wires.push_back({{-4, 1}, {2, 1}});
     },
     "a line is near the seat of part 0"},
    {"SeatsNearEachOther",
     [](Placement& p) {
       p.parts[2].path = {{7, 0}, {7, 4}};
     },
     "two seats are near each other"},
    {"TerminalWithoutAPort",
     [](Placement& p) {
       p.terminals = {{kTop, {0, 0}}};
     },
     "terminals are not those of the port"},
};

INSTANTIATE_TEST_SUITE_P(Kinds, SoundPlacement, ::testing::ValuesIn(kSpoilings),
                         [](const auto& one) { return std::string(one.param.name); });

TEST(SoundTerminals, AreEndsOfTheWiresOfThePort) {
  Network network(2);
  network.add(ElementKind::port, kBottom, kTop);
  network.add(ElementKind::resistor, kTop, kBottom, Ratio(1));
  Placement placement;
  placement.parts = {{PartId{1}, {{4, 0}, {4, 4}}, 0}};
  placement.points = {{kTop, {{{0, 0}, {4, 0}}}, {0, 0}}, {kBottom, {{{0, 4}, {4, 4}}}, {0, 4}}};
  placement.terminals = {{kTop, {0, 0}}, {kBottom, {0, 4}}};
  EXPECT_THAT(faults_of(network, placement), IsEmpty());
  placement.terminals[0].at = {2, 0};
  EXPECT_THAT(faults_of(network, placement), Contains(HasSubstr("is not the end of a wire")));
  placement.terminals[0].at = {4, 0};
  EXPECT_THAT(faults_of(network, placement), Contains(HasSubstr("a part ends at a terminal")));
  placement.terminals.pop_back();
  EXPECT_THAT(faults_of(network, placement), Contains(HasSubstr("are not those of the port")));
  placement.terminals = {{kTop, {0, 0}}, {kTop, {0, 0}}};
  EXPECT_THAT(faults_of(network, placement), Contains(HasSubstr("two terminals are at one spot")));
}

TEST(SoundPlacementOf, PartsThatCrossAtRightAnglesInTheMiddle) {
  Network network(4);
  network.add(ElementKind::resistor, PointId{0}, PointId{1}, Ratio(1));
  network.add(ElementKind::resistor, PointId{2}, PointId{3}, Ratio(1));
  Placement placement;
  placement.parts = {{PartId{0}, {{0, 0}, {12, 0}}, 0}, {PartId{1}, {{9, 4}, {9, -10}}, 0}};
  placement.points = {{PointId{0}, {}, {0, 0}},
                      {PointId{1}, {}, {12, 0}},
                      {PointId{2}, {}, {9, 4}},
                      {PointId{3}, {}, {9, -10}}};
  expect_sound(network, placement);
}

/// Two boxes between corners 0 and 1.
Core two_boxes() {
  Core core;
  core.corners = 2;
  core.edges = {{0, 1, 0, 0, true}, {1, 0, 4, 8, false}};
  return core;
}

CorePlan sound_plan() {
  CorePlan plan;
  plan.width = 8;
  plan.height = 8;
  plan.wires = {{{{0, 0}, {4, 0}}}, {{{0, 8}, {4, 8}}, {{0, 4}, {0, 8}}}};
  plan.at = {{0, 0}, {0, 8}};
  plan.edges = {{{0, 0}, false, {}, 0}, {{4, 0}, true, {}, 0}};
  return plan;
}

struct PlanSpoiling {
  const char* name;
  std::function<void(CorePlan&)> spoil;
  const char* fault;
};

class SoundPlan : public ::testing::TestWithParam<PlanSpoiling> {};

TEST_P(SoundPlan, FindsTheFault) {
  CorePlan plan = sound_plan();
  ASSERT_THAT(faults_of(two_boxes(), plan), IsEmpty());
  GetParam().spoil(plan);
  EXPECT_THAT(faults_of(two_boxes(), plan), Contains(HasSubstr(GetParam().fault)));
}

const PlanSpoiling kPlanSpoilings[] = {
    {"EdgeMissing", [](CorePlan& p) { p.edges.pop_back(); }, "corners or edges are missing"},
    {"WiresFallApart",
     [](CorePlan& p) {
       p.wires[0].push_back({{0, 2}, {1, 2}});
     },
     "wires fall apart: corner 0"},
    {"NameElsewhere",
     [](CorePlan& p) {
       p.at[1] = {1, 1};
     },
     "its name is away"},
    {"NoWayOutAbove",
     [](CorePlan& p) {
       p.wires[0] = {{{2, 0}, {4, 0}}};
     },
     "corner 0 does not lead to the top left"},
    {"NoWayOutBelow", [](CorePlan& p) { p.height = 12; }, "corner 1 does not lead"},
    {"EdgeTheWrongWay", [](CorePlan& p) { p.edges[1].turned = false; },
     "does not start at its corner: edge 1"},
    {"NoLead", [](CorePlan& p) { p.wires[1].pop_back(); }, "does not end at its corner: edge 0"},
    {"BoxAlongALine",
     [](CorePlan& p) {
       p.edges[1].line = {{4, 8}, {4, 0}};
     },
     "a box lies along a line"},
    {"LeavesThePlan", [](CorePlan& p) { p.width = 4; }, "leaves the plan"},
    {"ForeignLineInABox",
     [](CorePlan& p) {
       p.edges[0].line = {{0, 0}, {0, 2}, {2, 2}, {2, 6}, {0, 6}, {0, 8}};
       p.edges[0].seat = 2;
       p.edges[1].top = {3, 0};
     },
     "comes into the box of edge 1: edge 0"},
    {"OwnLineInABox",
     [](CorePlan& p) {
       p.wires[0].push_back({{4, 0}, {6, 0}});
       p.wires[0].push_back({{6, 0}, {6, 4}});
     },
     "comes into the box of edge 1: corner 0"},
    {"SharedStretch",
     [](CorePlan& p) {
       p.wires[1].push_back({{0, 4}, {0, 2}});
     },
     "a stretch is shared"},
};

INSTANTIATE_TEST_SUITE_P(Kinds, SoundPlan, ::testing::ValuesIn(kPlanSpoilings),
                         [](const auto& one) { return std::string(one.param.name); });

}  // namespace
}  // namespace ohmfold::drawing

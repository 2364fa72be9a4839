// The network as rules see it: parts at points, twins, merging, and the order of ids.
#include "ohmfold/network.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <random>

#include "ohmfold/error.h"

namespace ohmfold {
namespace {

using testing::UnorderedElementsAre;

constexpr PointId kA{0}, kB{1}, kC{2}, kD{3};

std::vector<std::uint32_t> parts_at(const Network& network, PointId point) {
  std::vector<std::uint32_t> parts;
  network.for_each_at(point, [&](PartId part) { parts.push_back(part.index); });
  return parts;
}

std::vector<std::uint32_t> twins_of(const Network& network, PartId part) {
  std::vector<std::uint32_t> parts;
  network.for_each_twin(part, [&](PartId twin) { parts.push_back(twin.index); });
  return parts;
}

PartId resistor(Network& network, PointId from, PointId to, int ohm = 1) {
  return network.add(ElementKind::resistor, from, to, Ratio(Number(ohm)));
}

Edit removal(std::vector<PartId> parts) {
  Edit edit;
  edit.removes = std::move(parts);
  return edit;
}

TEST(Network, KnowsThePartsAtEachPointAndTheirNumber) {
  Network network(3);
  resistor(network, kA, kB);
  resistor(network, kB, kC);
  resistor(network, kB, kB);
  EXPECT_THAT(parts_at(network, kB), UnorderedElementsAre(0, 1, 2, 2));
  EXPECT_EQ(network.degree(kB), 4U);
  EXPECT_EQ(network.degree(kA), 1U);
}

TEST(Network, FindsTheTwinsOfAPartWhicheverWayTheyRun) {
  Network network(3);
  const PartId first = resistor(network, kA, kB);
  resistor(network, kB, kA);
  resistor(network, kB, kC);
  EXPECT_THAT(twins_of(network, first), UnorderedElementsAre(0, 1));
  EXPECT_TRUE(network.has_twin(first));
  EXPECT_FALSE(network.has_twin(PartId{2}));
}

TEST(Network, ForgetsTheTwinsThatWereRemoved) {
  Network network(2);
  const PartId first = resistor(network, kA, kB);
  const PartId second = resistor(network, kA, kB);
  const PartId third = resistor(network, kA, kB);
  network.commit(removal({first}));
  EXPECT_THAT(twins_of(network, second), UnorderedElementsAre(1, 2));
  network.commit(removal({second}));
  EXPECT_FALSE(network.has_twin(third));
  network.commit(removal({third}));
  EXPECT_THAT(twins_of(network, resistor(network, kA, kB)), UnorderedElementsAre(3));
  EXPECT_EQ(network.alive_count(), 1U);
}

TEST(Network, MergesPointsIntoTheFirstOfThemWithAllTheirParts) {
  Network network(4);
  const PartId part = resistor(network, kB, kC);
  const PartId other = resistor(network, kD, kA);
  Edit edit;
  edit.merges = {kB, kD};
  network.commit(edit);
  EXPECT_EQ(network.representative(kD), kB);
  EXPECT_EQ(network.from(other), kB);
  EXPECT_EQ(network.degree(kB), 2U);
  EXPECT_EQ(network.degree(kD), 0U);
  EXPECT_EQ(network.from(part), kB);
}

TEST(Network, MakesPartsTwinsWhenTheirPointsBecomeOne) {
  Network network(4);
  const PartId first = resistor(network, kA, kB);
  const PartId second = resistor(network, kC, kD);
  Edit edit;
  edit.merges = {kA, kC};
  network.commit(edit);
  EXPECT_FALSE(network.has_twin(first));
  edit.merges = {kB, kD};
  network.commit(edit);
  EXPECT_THAT(twins_of(network, second), UnorderedElementsAre(0, 1));
}

TEST(Network, FollowsAPointThroughSeveralMerges) {
  Network network(4);
  Edit edit;
  edit.merges = {kC, kD};
  network.commit(edit);
  edit.merges = {kA, kC};
  network.commit(edit);
  EXPECT_EQ(network.representative(kD), kA);
  EXPECT_EQ(network.representative(kC), kA);
  EXPECT_EQ(network.representative(kB), kB);
}

TEST(Network, GivesNewPartsTheNextIds) {
  Network network(2);
  const PartId old = resistor(network, kA, kB);
  Edit edit = removal({old});
  edit.adds.push_back({kB, kA, Ratio(Number(7))});
  const PartId made = network.commit(edit);
  EXPECT_EQ(made, PartId{1});
  EXPECT_EQ(network.dump(), "1 resistor 1-0 7");
}

TEST(Network, RefusesToRemoveAPartTwice) {
  Network network(2);
  const PartId part = resistor(network, kA, kB);
  network.commit(removal({part}));
  EXPECT_THROW(network.commit(removal({part})), InternalError);
}

TEST(Network, RefusesAResistorOfZeroOhm) {
  Network network(2);
  EXPECT_THROW(resistor(network, kA, kB, 0), InternalError);
}

// The pair table must find every pair after many insertions and removals in any order.
TEST(Network, KeepsTwinsRightThroughRandomEdits) {
  std::mt19937 random(7);
  const auto any_point = [&] { return PointId{static_cast<std::uint32_t>(random() % 8)}; };
  Network network(8);
  std::vector<PartId> living;
  for (int round = 0; round < 5'000; ++round) {
    if (living.size() < 10 || random() % 2 == 0) {
      living.push_back(resistor(network, any_point(), any_point()));
    } else {
      const std::size_t pick = random() % living.size();
      network.commit(removal({living[pick]}));
      living[pick] = living.back();
      living.pop_back();
    }
    const PartId asked = living[random() % living.size()];
    const auto ends = std::minmax({network.from(asked), network.to(asked)});
    const auto expected = std::count_if(living.begin(), living.end(), [&](PartId part) {
      return std::minmax({network.from(part), network.to(part)}) == ends;
    });
    ASSERT_EQ(twins_of(network, asked).size(), static_cast<std::size_t>(expected)) << round;
  }
}

TEST(Network, TakesInNewPointsBeforeThePartsThatMeetThere) {
  Network network(3);
  const PartId first = resistor(network, kA, kB);
  const PartId second = resistor(network, kB, kC);
  const PartId third = resistor(network, kC, kA);
  Edit edit = removal({first, second, third});
  edit.new_points = 1;
  for (const PointId corner : {kA, kB, kC}) {
    edit.adds.push_back({corner, PointId{3}, Ratio(Number(1))});
  }
  EXPECT_EQ(network.commit(edit), PartId{3});
  EXPECT_EQ(network.point_count(), 4U);
  EXPECT_EQ(network.degree(PointId{3}), 3U);
  EXPECT_EQ(network.representative(PointId{3}), PointId{3});
}

TEST(Network, TakesInABatteryWithItsInternalResistance) {
  Network network(2);
  Edit edit;
  edit.adds.push_back({kA, kB, Ratio(Number(2)), ElementKind::battery, Voltage{Number(9)}});
  const PartId battery = network.commit(edit);
  EXPECT_EQ(network.battery(battery).emf, Voltage{Number(9)});
  EXPECT_EQ(network.battery(battery).internal, Resistance{Number(2)});
}

}  // namespace
}  // namespace ohmfold

// Blocks against their definition: two parts are in one block when a closed path runs through both.
#include "circuit/blocks.h"

#include <gmock/gmock.h>

#include <random>

namespace ohmfold {
namespace {

using testing::ElementsAre;

std::vector<PartId> all_parts(const Network& network) {
  std::vector<PartId> parts;
  for (std::uint32_t i = 0; i < network.part_count(); ++i) parts.push_back(PartId{i});
  return parts;
}

Network network_of(std::uint32_t points, const std::vector<std::pair<int, int>>& ends) {
  Network network(points);
  for (const auto& [from, to] : ends) {
    network.add(ElementKind::resistor, PointId{static_cast<std::uint32_t>(from)},
                PointId{static_cast<std::uint32_t>(to)}, Ratio(Number(1)));
  }
  return network;
}

// Menger: parts a and b lie on a common closed path exactly where no single point parts them once
// both are cut in the middle; equivalently, blocks are the classes of "joined after taking any one
// point out".
bool on_common_loop(const Network& network, PartId a, PartId b) {
  const auto connected_without = [&](std::uint32_t taken) {
    // Points reachable from part a's ends without passing the point taken, and not through parts a,
    // b.
    std::vector<bool> reached(network.point_count(), false);
    for (const PointId end : {network.from(a), network.to(a)}) {
      if (end.index != taken) reached[end.index] = true;
    }
    for (std::size_t round = 0; round < network.point_count(); ++round) {
      for (const PartId part : all_parts(network)) {
        if (part == a || part == b) continue;
        const auto from = network.from(part).index;
        const auto to = network.to(part).index;
        if (from == taken || to == taken) continue;
        if (reached[from] || reached[to]) reached[from] = reached[to] = true;
      }
    }
    return (network.from(b).index != taken && reached[network.from(b).index]) ||
           (network.to(b).index != taken && reached[network.to(b).index]);
  };
  for (std::uint32_t point = 0; point < network.point_count(); ++point) {
    if (!connected_without(point)) return false;
  }
  return true;
}

TEST(Blocks, OfATriangleWithATailAndADoubleEnd) {
  const Network network = network_of(5, {{0, 1}, {1, 2}, {2, 0}, {2, 3}, {3, 4}, {4, 3}});
  const std::vector<std::uint32_t> block = blocks(network, all_parts(network));
  EXPECT_EQ(block[0], block[1]);
  EXPECT_EQ(block[0], block[2]);
  EXPECT_NE(block[3], block[0]);
  EXPECT_EQ(block[4], block[5]);
  EXPECT_NE(block[4], block[3]);
}

TEST(Blocks, APartWithBothEndsOnOnePointIsABlockOfItsOwn) {
  const Network network = network_of(2, {{0, 1}, {0, 0}, {1, 0}});
  const std::vector<std::uint32_t> block = blocks(network, all_parts(network));
  EXPECT_NE(block[1], block[0]);
  EXPECT_EQ(block[0], block[2]);
}

TEST(Blocks, SeeOnlyTheListedParts) {
  const Network network = network_of(3, {{0, 1}, {1, 2}, {2, 0}});
  const std::vector<std::uint32_t> block = blocks(network, {PartId{0}, PartId{2}});
  EXPECT_NE(block[0], block[1]);
}

TEST(Blocks, AgreeWithTheDefinitionOnRandomNetworks) {
  std::mt19937 generator(11);
  const auto random = [&] { return static_cast<std::uint32_t>(generator()); };
  for (int round = 0; round < 400; ++round) {
    const std::uint32_t points = 2 + random() % 5;
    Network network(points);
    const std::size_t parts = 1 + random() % 8;
    for (std::size_t i = 0; i < parts; ++i) {
      const std::uint32_t from = random() % points;
      network.add(ElementKind::resistor, PointId{from},
                  PointId{(from + 1 + random() % (points - 1)) % points}, Ratio(Number(1)));
    }
    const std::vector<PartId> all = all_parts(network);
    const std::vector<std::uint32_t> block = blocks(network, all);
    for (std::size_t i = 0; i < parts; ++i) {
      for (std::size_t j = i + 1; j < parts; ++j) {
        EXPECT_EQ(block[i] == block[j], on_common_loop(network, all[i], all[j]))
            << round << ": parts " << i << " and " << j << " of " << network.dump();
      }
    }
  }
}

TEST(Blocks, OfAChainOfAHundredThousandPartsNeedNoRecursion) {
  constexpr std::uint32_t kParts = 100'000;
  Network network(kParts + 1);
  for (std::uint32_t i = 0; i < kParts; ++i) {
    network.add(ElementKind::resistor, PointId{i}, PointId{i + 1}, Ratio(Number(1)));
  }
  const std::vector<std::uint32_t> block = blocks(network, all_parts(network));
  EXPECT_NE(block.front(), block.back());
}

TEST(FedBySource, HoldsInTheBlocksThatHaveASourceOnALoop) {
  Network network(5);
  network.add_battery(PointId{0}, PointId{1}, Voltage{Number(1)}, Resistance{});
  network.add(ElementKind::resistor, PointId{0}, PointId{1}, Ratio(Number(1)));
  network.add(ElementKind::resistor, PointId{1}, PointId{2}, Ratio(Number(1)));
  network.add_battery(PointId{2}, PointId{3}, Voltage{Number(1)}, Resistance{});
  network.add_battery(PointId{4}, PointId{4}, Voltage{Number(1)}, Resistance{Number(1)});
  EXPECT_THAT(fed_by_source(network, all_parts(network)),
              ElementsAre(true, true, false, false, true));
}

}  // namespace
}  // namespace ohmfold

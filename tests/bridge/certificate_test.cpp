// A network does not reduce exactly where a certificate is found, and every certificate holds.
#include "bridge/certificate.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "bridge/brute_force.h"
#include "check/certificate.h"
#include "properties/rounds.h"
#include "solve/reduce.h"
#include "support/circuit.h"
#include "support/random_network.h"

namespace ohmfold::test {
namespace {

using support::Multigraph;
using support::RandomCircuits;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

Network network_of(const std::string& text) {
  return support::network_of(problem_of(text));
}

std::vector<std::string> names(const Problem& problem, const std::vector<PartId>& parts) {
  std::vector<std::string> all;
  for (const PartId one : parts) all.push_back(problem.part(one).name);
  return all;
}

constexpr const char* kBridge =
    "battery E = 12 V from G to T\n"
    "resistor R1 = 4 from T to A\n"
    "resistor R2 = 24 from A to G\n"
    "resistor R3 = 18 from T to B\n"
    "resistor R4 = 6 from B to G\n"
    "resistor R5 = 3 from A to B\n";

TEST(Certificate, OfABridgeHasTheBatteryAsOnePath) {
  const Problem problem = problem_of(kBridge);
  const auto certificate = find_certificate(support::network_of(problem));
  ASSERT_TRUE(certificate);
  EXPECT_EQ(certificate->corners, (std::array{point(problem, "G"), point(problem, "T"),
                                              point(problem, "A"), point(problem, "B")}));
  const std::vector<std::string> expected = {"E", "R2", "R4", "R1", "R3", "R5"};
  for (std::size_t i = 0; i < 6; ++i) {
    EXPECT_THAT(names(problem, certificate->paths[i].parts), ElementsAre(expected[i]));
  }
}

TEST(Certificate, NamesThePartsOfAMadePartInTheirOrder) {
  const Problem problem = problem_of(
      "battery E = 12 V from G to T\n"
      "resistor R1 = 4 from T to X\nresistor R6 = 1 from Y to A\nresistor R7 = 1 from X to Y\n"
      "resistor R8 = 1 from X to Y\nresistor R9 = 1 from X to Z\nresistor R10 = 1 from Z to Y\n"
      "resistor R2 = 24 from A to G\nresistor R3 = 18 from T to B\nresistor R4 = 6 from B to G\n"
      "resistor R5 = 3 from A to B\n");
  const auto certificate = find_certificate(support::network_of(problem));
  ASSERT_TRUE(certificate);
  const auto& path = certificate->paths[3];
  EXPECT_EQ(path.from, point(problem, "T"));
  EXPECT_EQ(path.to, point(problem, "A"));
  EXPECT_THAT(names(problem, path.parts), ElementsAre("R1", "R7", "R6"));
}

TEST(Certificate, OfABatteryWithAResistorInTheSameBranchHoldsBoth) {
  const Problem problem = problem_of(
      "battery E = 12 V from G to S\nresistor R0 = 1 from T to S\n"
      "resistor R1 = 4 from T to A\nresistor R2 = 24 from A to G\nresistor R3 = 18 from T to B\n"
      "resistor R4 = 6 from B to G\nresistor R5 = 3 from A to B\n");
  const auto certificate = find_certificate(support::network_of(problem));
  ASSERT_TRUE(certificate);
  EXPECT_THAT(names(problem, certificate->paths[0].parts), ElementsAre("E", "R0"));
}

TEST(Certificate, IsNotFoundWhereTheBridgeIsSeenFromItsMiddle) {
  EXPECT_FALSE(
      find_certificate(network_of("battery E = 1 V from A to B\nresistor R1 = 4 from T to A\n"
                                  "resistor R2 = 24 from A to G\nresistor R3 = 18 from T to B\n"
                                  "resistor R4 = 6 from B to G\nresistor R5 = 3 from A to B\n")));
}

TEST(Certificate, IsNotFoundInADeadEnd) {
  EXPECT_FALSE(
      find_certificate(network_of("battery E = 1 V from P to Q\nresistor R = 1 from P to Q\n"
                                  "resistor R1 = 1 from P to A\nresistor R2 = 1 from P to B\n"
                                  "resistor R3 = 1 from P to C\nresistor R4 = 1 from A to B\n"
                                  "resistor R5 = 1 from A to C\nresistor R6 = 1 from B to C\n")));
}

// As seen by one battery: reducing, the certificate and trying everything say the same.
TEST(Certificate, IsFoundExactlyWhereTryingEverythingFindsABridge) {
  RandomCircuits random(11);
  std::size_t bridges = 0;
  const std::uint64_t all = rounds(20000);
  for (std::uint64_t round = 0; round < all; ++round) {
    Multigraph wanted;
    wanted.points = 4 + random.below(4);
    wanted.resistors = wanted.points + random.below(7);
    wanted.wires = random.below(3);
    wanted.open_switches = random.below(2);
    wanted.internal = Multigraph::Internal::all;
    wanted.connected = random.below(2) == 0;
    const Network network = support::network_of(random.multigraph(wanted));
    const bool expected = SmallGraph(network).holds_bridge();
    const auto certificate = find_certificate(network);
    ASSERT_EQ(certificate.has_value(), expected) << round << ' ' << network.dump();
    ASSERT_EQ(reduce(network).stop == Stop::bridge, expected) << round << ' ' << network.dump();
    if (!certificate) continue;
    ++bridges;
    ASSERT_THAT(verify(*certificate, network), IsEmpty()) << round << ' ' << network.dump();
  }
  EXPECT_GT(bridges, all / 10);
  EXPECT_LT(bridges, all * 9 / 10);
}

TEST(Certificate, IsFoundNowhereInSeriesParallelNetworks) {
  RandomCircuits random(12);
  for (std::uint64_t round = 0; round < rounds(500); ++round) {
    const Network network =
        support::network_of(random.series_parallel(1 + random.below(60), 20 + random.below(60)));
    ASSERT_FALSE(find_certificate(network)) << round << ' ' << network.dump();
  }
}

// Sparse graphs with many points of separation, where the search has to narrow down often.
TEST(Certificate, HoldsInLargerNetworksWithSeveralBatteries) {
  RandomCircuits random(13);
  std::size_t found = 0;
  for (std::uint64_t round = 0; round < rounds(1500); ++round) {
    Multigraph wanted;
    wanted.points = 8 + random.below(40);
    wanted.resistors = wanted.points + random.below(wanted.points);
    wanted.wires = random.below(4);
    wanted.batteries = 1 + random.below(3);
    wanted.internal = Multigraph::Internal::all;
    wanted.connected = true;
    const Network network = support::network_of(random.multigraph(wanted));
    const auto certificate = find_certificate(network);
    const Reduction reduction = reduce(network);
    if (reduction.stop == Stop::bridge) {
      ASSERT_TRUE(certificate) << round;
    }
    if (!certificate) continue;
    ++found;
    ASSERT_THAT(verify(*certificate, network), IsEmpty()) << round << ' ' << network.dump();
  }
  EXPECT_GT(found, 500U);
}

}  // namespace
}  // namespace ohmfold::test

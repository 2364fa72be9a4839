// Node-voltage analysis against published values, by both methods.
#include "check/node_voltage.h"

#include <gtest/gtest.h>

#include "check/arithmetic.h"
#include "check/building.h"
#include "check/matrix_solution.h"
#include "ohmfold/error.h"
#include "support/random_network.h"

namespace ohmfold {
namespace {

using check::Method;

constexpr Method kBoth[] = {Method::matrix, Method::modular};

Number fraction(int numerator, int denominator) {
  return Number::quotient(numerator, denominator);
}

// Kuphaldt, Lessons In Electric Circuits, vol. I (DC), ch. 10, the unbalanced bridge (from memory):
// 10 V on 12 and 18 ohm above, 6 ohm across, 18 and 12 ohm below. Points 0, A = 1, B = 2, C = 3.
Network bridge() {
  return Builder(4)
      .battery(0, 1, 10)
      .resistor(1, 2, 12)
      .resistor(1, 3, 18)
      .resistor(3, 2, 6)
      .resistor(2, 0, 18)
      .resistor(3, 0, 12)
      .build();
}

CaseTrace published_bridge() {
  CaseTrace results;
  const auto branch = [&](int id, const Number& ampere, const Number& volt) {
    results.branches.push_back({part(id), Current{ampere}, Voltage{volt}, Power{ampere * volt}});
  };
  branch(0, fraction(35, 51), 10);
  branch(1, fraction(20, 51), fraction(240, 51));
  branch(2, fraction(5, 17), fraction(90, 17));
  branch(3, fraction(-5, 51), fraction(-30, 51));
  branch(4, fraction(15, 51), fraction(270, 51));
  branch(5, fraction(20, 51), fraction(240, 51));
  return results;
}

TEST(NodeVoltages, AgreeWithAPublishedBridge) {
  for (const Method method : kBoth) {
    const auto check = check_node_voltages(bridge(), published_bridge(), method);
    ASSERT_TRUE(check.has_value());
    EXPECT_TRUE(check->holds) << check->detail;
    EXPECT_EQ(check->places, 12U);
    EXPECT_EQ(check->primes, method == Method::matrix ? 0 : check::kPrimes);
  }
}

TEST(NodeVoltages, FailWhereOneNumberIsChanged) {
  for (const Method method : kBoth) {
    for (std::size_t i = 0; i < 6; ++i) {
      CaseTrace results = published_bridge();
      results.branches[i].current.value->number += fraction(1, 51);
      EXPECT_FALSE(check_node_voltages(bridge(), results, method)->holds);
      results = published_bridge();
      results.branches[i].voltage.value->number += fraction(1, 51);
      EXPECT_FALSE(check_node_voltages(bridge(), results, method)->holds);
    }
    CaseTrace results = published_bridge();
    results.nodes = {{point(2), Voltage{fraction(270, 51)}},
                     {point(3), Voltage{fraction(240, 51)}}};
    EXPECT_TRUE(check_node_voltages(bridge(), results, method)->holds);
    results.nodes[1].potential = Voltage{fraction(241, 51)};
    EXPECT_FALSE(check_node_voltages(bridge(), results, method)->holds);
  }
}

TEST(NodeVoltages, TellWhatWasComparedWithWhat) {
  CaseTrace results = published_bridge();
  results.branches[3].current = Current{fraction(5, 51)};
  EXPECT_EQ(check_node_voltages(bridge(), results)->detail,
            "current of part #3: off by 10/51 A, compared with -5/51 A");
}

TEST(NodeVoltages, MatrixFindsTheBridgesPotentials) {
  const std::vector<Number> potential = check::matrix_potentials(bridge(), std::nullopt);
  EXPECT_EQ(check::count_unknowns(bridge()), 4U) << "three potentials and the battery's current";
  EXPECT_EQ(potential[1] - potential[0], Number(10));
  EXPECT_EQ(potential[2] - potential[0], fraction(90, 17));
  EXPECT_EQ(potential[3] - potential[0], fraction(80, 17));
}

// Two loops from Kirchhoff's own kind of exercise: 5 V in 1 ohm and 10 V in 2 ohm feed 3 ohm.
// By hand: V (1 + 1/2 + 1/3) = 5 + 5, V = 60/11.
TEST(NodeVoltages, HandleSeveralBatteriesWithInternalResistance) {
  const Network network =
      Builder(2).battery(0, 1, 5, 1).battery(0, 1, 10, 2).resistor(1, 0, 3).build();
  EXPECT_EQ(check::matrix_potentials(network, std::nullopt)[1] -
                check::matrix_potentials(network, std::nullopt)[0],
            fraction(60, 11));
  const CaseTrace results = results_of(network);
  EXPECT_EQ(results.branches[0].current.value->number, fraction(-5, 11));
  EXPECT_EQ(results.branches[1].current.value->number, fraction(25, 11));
  for (const Method method : kBoth)
    EXPECT_TRUE(check_node_voltages(network, results, method)->holds);
}

TEST(NodeVoltages, LeaveOpenWhatIdealLoopsLeaveOpen) {
  const Network network =
      Builder(3).battery(0, 1, 6).battery(0, 1, 6).wire(1, 2).resistor(2, 0, 3).build();
  CaseTrace results = results_of(network);
  CaseTrace guessed = results;
  guessed.branches[0].current = guessed.branches[1].current = Current{1};
  for (const Method method : kBoth) {
    EXPECT_TRUE(check_node_voltages(network, results, method)->holds);
    EXPECT_FALSE(check_node_voltages(network, guessed, method)->holds);
  }
}

TEST(NodeVoltages, FailWhereWhatFloatsHasAPotential) {
  const Network network = Builder(4).battery(0, 1, 6).resistor(1, 0, 3).resistor(2, 3, 3).build();
  CaseTrace results = results_of(network);
  for (const Method method : kBoth)
    EXPECT_TRUE(check_node_voltages(network, results, method)->holds);
  results.nodes[2].potential = Voltage{0};
  for (const Method method : kBoth) {
    EXPECT_FALSE(check_node_voltages(network, results, method)->holds);
  }
}

TEST(NodeVoltages, FailWhereIdealBatteriesContradictEachOther) {
  const Network network = Builder(2).battery(0, 1, 6).battery(0, 1, 5).resistor(1, 0, 3).build();
  CaseTrace results;
  results.branches = {{part(0), Undetermined::ideal_loop, Voltage{6}, Undetermined::ideal_loop},
                      {part(1), Undetermined::ideal_loop, Voltage{5}, Undetermined::ideal_loop},
                      {part(2), Current{2}, Voltage{6}, Power{12}}};
  for (const Method method : kBoth) {
    EXPECT_FALSE(check_node_voltages(network, results, method)->holds);
  }
}

TEST(NodeVoltages, AgreeByBothMethodsOnRandomNetworks) {
  support::RandomCircuits random(3);
  for (int i = 0; i < 80; ++i) {
    support::Multigraph wanted;
    wanted.points = 2 + random.below(8);
    wanted.resistors = 1 + random.below(12);
    wanted.wires = random.below(3);
    wanted.open_switches = random.below(2);
    wanted.batteries = random.below(4);
    wanted.internal = support::Multigraph::Internal::all;
    const Network network = support::network_of(random.multigraph(wanted));
    CaseTrace results = results_of(network);
    for (const Method method : kBoth) {
      const auto check = check_node_voltages(network, results, method);
      ASSERT_TRUE(check && check->holds) << network.dump() << check->detail;
    }
    Reading& changed = results.branches[random.below(results.branches.size())].voltage;
    if (!changed.value) continue;
    changed.value->number += fraction(1, 7);
    for (const Method method : kBoth) {
      EXPECT_FALSE(check_node_voltages(network, results, method)->holds) << network.dump();
    }
  }
}

TEST(NodeVoltages, AreLeftOutWhereTheNetworkIsTooEntangled) {
  support::RandomCircuits random(5);
  support::Multigraph wanted;
  wanted.points = 6'000;
  wanted.resistors = 30'000;
  const Network network = support::network_of(random.multigraph(wanted));
  EXPECT_FALSE(check_node_voltages(network, CaseTrace()).has_value());
}

TEST(NodeVoltages, AreNearLinearForLongLadders) {
  constexpr int kRungs = 10'000;
  Builder builder(2 * kRungs + 2);
  builder.battery(0, 1, 1);
  for (int i = 0; i < kRungs; ++i) {
    builder.resistor(2 * i, 2 * i + 2, 1).resistor(2 * i + 1, 2 * i + 3, 1);
    builder.resistor(2 * i + 2, 2 * i + 3, 1);
  }
  CaseTrace results;
  results.branches = {{part(0), Undetermined::too_long, Voltage{1}, Undetermined::too_long}};
  EXPECT_TRUE(check_node_voltages(builder.build(), results)->holds);
}

Network with_port(Builder builder, int from, int to) {
  return builder.other(ElementKind::port, from, to).build();
}

TEST(ResistanceBetween, IsTheDifferenceOfPotentialsAtOneAmpere) {
  // The bridge above takes 35/51 A at 10 V: 102/7 ohm.
  const Network network = with_port(Builder(4)
                                        .resistor(1, 2, 12)
                                        .resistor(1, 3, 18)
                                        .resistor(3, 2, 6)
                                        .resistor(2, 0, 18)
                                        .resistor(3, 0, 12),
                                    1, 0);
  for (const Method method : kBoth) {
    EXPECT_TRUE(check_resistance(network, Resistance{fraction(102, 7)}, method)->holds);
    EXPECT_FALSE(check_resistance(network, Resistance{fraction(101, 7)}, method)->holds);
    EXPECT_FALSE(check_resistance(network, Undetermined::no_path, method)->holds);
  }
  EXPECT_FALSE(check_resistance(network, Undetermined::too_long).has_value());
}

TEST(ResistanceBetween, IsZeroAlongWiresAndNoneWithoutAPath) {
  const Network joined = with_port(Builder(3).wire(0, 1).resistor(1, 2, 5), 0, 1);
  const Network apart = with_port(
      Builder(4).resistor(0, 1, 5).resistor(2, 3, 5).other(ElementKind::voltmeter, 1, 2), 0, 3);
  for (const Method method : kBoth) {
    EXPECT_TRUE(check_resistance(joined, Resistance{0}, method)->holds);
    EXPECT_FALSE(check_resistance(joined, Resistance{5}, method)->holds);
    EXPECT_TRUE(check_resistance(apart, Undetermined::no_path, method)->holds);
    EXPECT_FALSE(check_resistance(apart, Resistance{10}, method)->holds);
  }
}

TEST(ResistanceBetween, OfACubeAcrossItsDiagonalIsFiveSixths) {
  // Twelve unit resistors along the edges of a cube: 5/6 ohm across the space diagonal, 7/12 along
  // an edge, 3/4 across a face (a standard exercise; from memory).
  Builder cube(8);
  for (int corner = 0; corner < 8; ++corner) {
    for (const int bit : {1, 2, 4}) {
      if ((corner & bit) == 0) cube.resistor(corner, corner | bit, 1);
    }
  }
  for (const Method method : kBoth) {
    EXPECT_TRUE(check_resistance(with_port(cube, 0, 7), Resistance{fraction(5, 6)}, method)->holds);
    EXPECT_TRUE(
        check_resistance(with_port(cube, 0, 1), Resistance{fraction(7, 12)}, method)->holds);
    EXPECT_TRUE(check_resistance(with_port(cube, 0, 3), Resistance{fraction(3, 4)}, method)->holds);
  }
}

TEST(ResistanceBetween, NeedsAPortAndNoBattery) {
  EXPECT_THROW((void)check_resistance(Builder(2).resistor(0, 1, 2).build(), Resistance{2}),
               InternalError);
  EXPECT_THROW((void)check_resistance(with_port(Builder(2).battery(0, 1, 2), 0, 1), Resistance{2}),
               InternalError);
}

}  // namespace
}  // namespace ohmfold

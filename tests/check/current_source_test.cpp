// Sources of current in the laws and in node-voltage analysis.
#include <gtest/gtest.h>

#include "check/building.h"
#include "check/laws.h"
#include "check/node_voltage.h"
#include "check/step.h"

namespace ohmfold {
namespace {

// 2 A from 0 to 1 (0); 6 ohm 1-0 (1); 4 ohm 1-2 (2); battery 3 of 8 V from 0 to 2.
Network fed() {
  Network network(3);
  network.add_current_source(point(0), point(1), Current{2});
  network.add(ElementKind::resistor, point(1), point(0), ohm(6));
  network.add(ElementKind::resistor, point(1), point(2), ohm(4));
  network.add_battery(point(0), point(2), {8}, {});
  return network;
}

// By the current law at point 1: V/6 + (V - 8)/4 = 2, so V = 48/5.
CaseTrace results() {
  CaseTrace results;
  const auto fraction = [](int p, int q) { return Number(p) / Number(q); };
  results.branches = {
      {part(0), Current{2}, Voltage{fraction(-48, 5)}, Power{fraction(96, 5)}},
      {part(1), Current{fraction(8, 5)}, Voltage{fraction(48, 5)}, Power{fraction(384, 25)}},
      {part(2), Current{fraction(2, 5)}, Voltage{fraction(8, 5)}, Power{fraction(16, 25)}},
      {part(3), Current{fraction(-2, 5)}, Voltage{8}, Power{fraction(-16, 5)}}};
  results.nodes = {
      {point(0), Voltage{}}, {point(1), Voltage{fraction(48, 5)}}, {point(2), Voltage{8}}};
  return results;
}

TEST(CurrentSource, InAWorkedNetworkObeysEveryLaw) {
  EXPECT_TRUE(all_hold(check_laws(fed(), results())));
  for (const auto method : {check::Method::matrix, check::Method::modular}) {
    EXPECT_TRUE(check_node_voltages(fed(), results(), method)->holds);
  }
}

TEST(CurrentSource, WithAnotherCurrentVoltageOrPowerFails) {
  CaseTrace current = results();
  current.branches[0].current = Current{3};
  EXPECT_FALSE(all_hold(check_laws(fed(), current)));
  EXPECT_FALSE(check_node_voltages(fed(), current)->holds);
  CaseTrace voltage = results();
  voltage.branches[0].voltage = Voltage{5};
  EXPECT_EQ(failing_law(check_laws(fed(), voltage)), CheckLaw::voltage);
  EXPECT_FALSE(check_node_voltages(fed(), voltage)->holds);
  CaseTrace power = results();
  power.branches[0].power = Power{5};
  EXPECT_EQ(failing_law(check_laws(fed(), power)), CheckLaw::power);
  CaseTrace missing = results();
  missing.branches[0].power = Undetermined::floating;
  EXPECT_EQ(failing_law(check_laws(fed(), missing)), CheckLaw::power);
  CaseTrace silent = results();
  silent.branches[0].current = Undetermined::floating;
  EXPECT_FALSE(all_hold(check_laws(fed(), silent)));
}

// Two sources of 2 A one after the other, from 0 to 1 and from 1 to 2, and 3 ohm from 2 to 0:
// nothing fixes the potential of point 1.
TEST(CurrentSource, BesideAPointWithoutPotentialHasNoVoltageButThePowersBalance) {
  Network network(3);
  network.add_current_source(point(0), point(1), Current{2});
  network.add_current_source(point(1), point(2), Current{2});
  network.add(ElementKind::resistor, point(2), point(0), ohm(3));
  CaseTrace results;
  results.branches = {{part(0), Current{2}, Undetermined::floating, Undetermined::floating},
                      {part(1), Current{2}, Undetermined::floating, Undetermined::floating},
                      {part(2), Current{2}, Voltage{6}, Power{12}}};
  results.nodes = {
      {point(0), Voltage{}}, {point(1), Undetermined::floating}, {point(2), Voltage{6}}};
  EXPECT_TRUE(all_hold(check_laws(network, results)));
  EXPECT_TRUE(check_node_voltages(network, results)->holds);
  results.branches[0].voltage = Voltage{1};
  EXPECT_FALSE(all_hold(check_laws(network, results)));
}

TEST(CurrentSource, IsTakenByNoStepUnlessItDrivesNothing) {
  for (const int ampere : {0, 2}) {
    Network network = Builder(3).battery(0, 1, 6).resistor(1, 0, 3).build();
    network.add_current_source(point(1), point(2), Current{ampere});
    const WrittenStep step = taking({2});
    EXPECT_EQ(check::check_step(network, step.step(), step.made).holds, ampere == 0);
  }
}

TEST(ShortCircuit, CurrentIsThatOfAWirePutIn) {
  for (const auto method : {check::Method::matrix, check::Method::modular}) {
    // With points 1 and 0 joined, the battery gives 8 V / 4 ohm and the source its 2 A.
    EXPECT_TRUE(check_short_circuit(fed(), point(1), point(0), Current{4}, method)->holds);
    EXPECT_TRUE(check_short_circuit(fed(), point(0), point(1), Current{-4}, method)->holds);
    EXPECT_FALSE(check_short_circuit(fed(), point(1), point(0), Current{2}, method)->holds);
    EXPECT_FALSE(check_short_circuit(fed(), point(2), point(0), Current{1}, method)->holds)
        << "a wire across the ideal battery";
  }
  EXPECT_FALSE(check_short_circuit(fed(), point(2), point(0), Undetermined::unlimited));
}

}  // namespace
}  // namespace ohmfold

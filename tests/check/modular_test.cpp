// Whole solutions modulo primes.
#include "check/modular.h"

#include <gtest/gtest.h>

#include "check/building.h"
#include "exact/prime_field.h"
#include "support/random_network.h"

namespace ohmfold {
namespace {

// The results as residues, as whoever solves modulo primes would give them.
std::vector<ModularSolution> residues(const CaseTrace& results, int primes) {
  std::vector<ModularSolution> solutions;
  for (int i = 0; i < primes; ++i) {
    const PrimeField field = PrimeField::random();
    ModularSolution solution{field.prime(), {}, {}};
    for (const BranchResult& branch : results.branches) {
      const auto residue = [&](const Reading& reading) {
        return reading.value ? field.from(reading.value->number) : 0;
      };
      solution.current.push_back(residue(branch.current));
      solution.voltage.push_back(residue(branch.voltage));
    }
    solutions.push_back(std::move(solution));
  }
  return solutions;
}

Reduction starting_at(const Network& network) {
  Reduction reduction;
  reduction.start = network;
  return reduction;
}

TEST(ModularCheck, HoldsForSolvedNetworks) {
  support::RandomCircuits random(11);
  for (const std::size_t resistors : {1U, 2U, 10U, 100U, 400U}) {
    const Network network = support::network_of(random.series_parallel(resistors));
    const auto checks = check_modular(starting_at(network), residues(results_of(network), 2));
    EXPECT_TRUE(all_hold(checks));
    EXPECT_EQ(checks.back().law, CheckLaw::node_voltage);
    for (const Check& check : checks) EXPECT_EQ(check.primes, 2);
  }
}

TEST(ModularCheck, FailsWhereOneResidueIsChanged) {
  support::RandomCircuits random(12);
  const Network network = support::network_of(random.series_parallel(12));
  const std::vector<ModularSolution> right = residues(results_of(network), 2);
  for (std::size_t i = 0; i < network.part_count(); ++i) {
    for (const auto list : {&ModularSolution::current, &ModularSolution::voltage}) {
      std::vector<ModularSolution> wrong = right;
      std::uint64_t& residue = (wrong[1].*list)[i];
      residue = residue == 0 ? 1 : residue - 1;
      EXPECT_FALSE(all_hold(check_modular(starting_at(network), wrong)));
    }
  }
}

TEST(ModularCheck, LooksAtNoSharesThatIdealLoopsLeaveOpen) {
  const Network network =
      Builder(3).battery(0, 1, 6).wire(1, 2).wire(1, 2).resistor(2, 0, 3).build();
  std::vector<ModularSolution> solutions = residues(results_of(network), 1);
  solutions[0].current[1] = 5;
  EXPECT_TRUE(all_hold(check_modular(starting_at(network), solutions)));
  solutions[0].current[3] = 5;
  EXPECT_FALSE(all_hold(check_modular(starting_at(network), solutions)));
}

TEST(ModularCheck, LooksAtTheCurrentsOfGapsButNotAtTheirVoltages) {
  const Network network =
      Builder(2).battery(0, 1, 6).resistor(1, 0, 3).other(ElementKind::voltmeter, 1, 0).build();
  std::vector<ModularSolution> solutions = residues(results_of(network), 1);
  solutions[0].voltage[2] = 0;
  EXPECT_TRUE(all_hold(check_modular(starting_at(network), solutions)));
  solutions[0].current[2] = 1;
  EXPECT_FALSE(all_hold(check_modular(starting_at(network), solutions)));
}

TEST(ModularCheck, RefusesWhatIsNoSolutionModuloAPrime) {
  const Network network = Builder(2).battery(0, 1, 6).resistor(1, 0, 3).build();
  const std::vector<ModularSolution> right = residues(results_of(network), 2);
  const auto refused = [&](auto change) {
    std::vector<ModularSolution> wrong = right;
    change(wrong[1]);
    return !all_hold(check_modular(starting_at(network), wrong));
  };
  EXPECT_TRUE(all_hold(check_modular(starting_at(network), right)));
  EXPECT_TRUE(refused([](ModularSolution& s) { s.prime = 7; }));
  EXPECT_TRUE(refused([](ModularSolution& s) { s.prime += 1; }));
  EXPECT_TRUE(refused([](ModularSolution& s) { s.current.pop_back(); }));
  EXPECT_TRUE(refused([](ModularSolution& s) { s.voltage[0] = UINT64_MAX; }));
  EXPECT_TRUE(refused([&](ModularSolution& s) { s = right[0]; }));
}

}  // namespace
}  // namespace ohmfold

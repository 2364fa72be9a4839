// The laws hold for right results and fail where one number is changed or missing.
#include "check/laws.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "check/building.h"
#include "support/random_network.h"

namespace ohmfold {
namespace {

using check::Arithmetic;

constexpr Arithmetic kBoth[] = {Arithmetic::exact, Arithmetic::modular};

// 12 V with 1 ohm inside (part 0), ammeter (1), 2 ohm (2), then 6 ohm and 3 ohm in parallel (3, 4),
// a voltmeter over them (5), an open switch to a part that floats (6, 7). By hand: I = 12/5 A.
Network fed() {
  return Builder(6)
      .battery(0, 1, 12, 1)
      .other(ElementKind::ammeter, 1, 2)
      .resistor(2, 3, 2)
      .resistor(3, 0, 6)
      .resistor(0, 3, 3)
      .other(ElementKind::voltmeter, 3, 0)
      .other(ElementKind::open_switch, 3, 4)
      .resistor(4, 5, 9)
      .build();
}

Number fraction(int numerator, int denominator) {
  return Number::quotient(numerator, denominator);
}

CaseTrace by_hand() {
  const Undetermined none = Undetermined::floating;
  const auto branch = [](int id, const Number& ampere, const Number& volt) {
    return BranchResult{part(id), Current{ampere}, Voltage{volt}, Power{ampere * volt}};
  };
  CaseTrace results;
  results.branches = {
      branch(0, fraction(12, 5), fraction(48, 5)),   branch(1, fraction(12, 5), 0),
      branch(2, fraction(12, 5), fraction(24, 5)),   branch(3, fraction(4, 5), fraction(24, 5)),
      branch(4, fraction(-8, 5), fraction(-24, 5)),  branch(5, 0, fraction(24, 5)),
      BranchResult{part(6), Current{0}, none, none}, branch(7, 0, 0)};
  results.nodes = {{point(0), Voltage{0}},
                   {point(1), Voltage{fraction(48, 5)}},
                   {point(2), Voltage{fraction(48, 5)}},
                   {point(3), Voltage{fraction(24, 5)}},
                   {point(4), none},
                   {point(5), none}};
  return results;
}

TEST(Laws, HoldForResultsByHand) {
  for (const auto arithmetic : kBoth) {
    const std::vector<Check> checks = check_laws(fed(), by_hand(), 60, arithmetic);
    EXPECT_TRUE(all_hold(checks));
    for (const Check& check : checks) {
      EXPECT_EQ(check.primes, arithmetic == Arithmetic::exact ? 0 : check::kPrimes);
    }
  }
}

TEST(Laws, HaveAnEntryForEachPointAndLoop) {
  const std::vector<Check> checks = check_laws(fed(), by_hand());
  const auto count = [&](CheckLaw law, bool with_loop) {
    return std::count_if(checks.begin(), checks.end(), [&](const Check& check) {
      return check.law == law && check.loop.empty() != with_loop;
    });
  };
  EXPECT_EQ(count(CheckLaw::current, false), 6);
  EXPECT_EQ(count(CheckLaw::voltage, true), 3) << "two loops and the voltmeter's";
  EXPECT_EQ(count(CheckLaw::voltage, false), 1) << "potentials";
  EXPECT_EQ(count(CheckLaw::ohm, false), 1);
  EXPECT_EQ(count(CheckLaw::power, false), 1);
}

TEST(Laws, HaveOneEntryForAllPlacesWhereThereAreMany) {
  const std::vector<Check> checks = check_laws(fed(), by_hand(), 2);
  ASSERT_EQ(checks.size(), 5U);
  EXPECT_EQ(checks[0].places, 6U);
  EXPECT_EQ(checks[1].places, 3U);
  EXPECT_TRUE(all_hold(checks));
}

TEST(Laws, FailWhereOneNumberIsChanged) {
  for (const auto arithmetic : kBoth) {
    for (const std::size_t most_single : {std::size_t{60}, std::size_t{0}}) {
      const auto fails = [&](const CaseTrace& results) {
        return !all_hold(check_laws(fed(), results, most_single, arithmetic));
      };
      for (std::size_t i = 0; i < 8; ++i) {
        const auto change = [&](Reading BranchResult::*what) {
          CaseTrace results = by_hand();
          Reading& reading = results.branches[i].*what;
          if (!reading.value) reading = Voltage{0};
          reading.value->number += Number::quotient(1, 1000);
          return results;
        };
        EXPECT_TRUE(fails(change(&BranchResult::current))) << "current of part " << i;
        EXPECT_TRUE(fails(change(&BranchResult::voltage))) << "voltage of part " << i;
        if (i >= 5) continue;
        EXPECT_TRUE(fails(change(&BranchResult::power))) << "power of part " << i;
      }
      for (std::size_t i = 0; i < 6; ++i) {
        CaseTrace results = by_hand();
        Reading& reading = results.nodes[i].potential;
        reading = Voltage{reading.value ? reading.value->number + 1 : Number(1)};
        EXPECT_TRUE(fails(results)) << "potential of point " << i;
      }
    }
  }
}

TEST(Laws, FailWhereOneNumberIsMissing) {
  for (std::size_t i = 0; i < 5; ++i) {
    for (const auto what : {&BranchResult::current, &BranchResult::voltage, &BranchResult::power}) {
      CaseTrace results = by_hand();
      results.branches[i].*what = Undetermined::ideal_loop;
      EXPECT_FALSE(all_hold(check_laws(fed(), results))) << i;
    }
  }
  CaseTrace results = by_hand();
  results.branches.pop_back();
  EXPECT_FALSE(all_hold(check_laws(fed(), results)));
  results = by_hand();
  results.nodes[3].potential = Undetermined::floating;
  EXPECT_FALSE(all_hold(check_laws(fed(), results)));
}

TEST(Laws, TellWhatDiffersAndByHowMuch) {
  CaseTrace results = by_hand();
  results.branches[3].current = Current{1};
  const std::vector<Check> checks = check_laws(fed(), results);
  EXPECT_EQ(failing_law(checks), CheckLaw::current);
  for (const Check& check : checks) {
    if (check.law == CheckLaw::current && check.at == point(3)) {
      EXPECT_EQ(check.detail, "currents out of point #3: off by 1/5 A, compared with 0 A");
    }
  }
}

// 6 V on 3 ohm, with two wires side by side in between (1, 2), and a third in series with them (3).
TEST(Laws, LookAtTheCutRoundWiresWhoseSharesAreOpen) {
  const Network network =
      Builder(4).battery(0, 1, 6).wire(1, 2).wire(1, 2).wire(2, 3).resistor(3, 0, 3).build();
  CaseTrace results = results_of(network);
  EXPECT_FALSE(results.branches[1].current.value);
  EXPECT_TRUE(results.branches[3].current.value);
  EXPECT_TRUE(all_hold(check_laws(network, results)));

  CaseTrace guessed = results;
  guessed.branches[1].current = guessed.branches[2].current = Current{1};
  guessed.branches[1].power = guessed.branches[2].power = Power{0};
  EXPECT_FALSE(all_hold(check_laws(network, guessed))) << "a guess is no result";
  CaseTrace lost = results;
  lost.branches[3].current = Current{3};
  EXPECT_FALSE(all_hold(check_laws(network, lost)));
  CaseTrace evaded = results;
  evaded.branches[3].current = Undetermined::ideal_loop;
  EXPECT_FALSE(all_hold(check_laws(network, evaded))) << "this one is determined";
}

TEST(Laws, AcceptZeroInALoopOfWiresOnlyWhereThereIsNoBattery) {
  const Network dead = Builder(2).wire(0, 1).wire(0, 1).resistor(0, 1, 2).build();
  CaseTrace results = results_of(dead);
  EXPECT_TRUE(all_hold(check_laws(dead, results))) << "none stated";
  results.branches[0].current = results.branches[1].current = Current{0};
  EXPECT_TRUE(all_hold(check_laws(dead, results)));
  results.branches[0].current = Current{1};
  EXPECT_FALSE(all_hold(check_laws(dead, results)));

  const Network fed = Builder(3).battery(0, 1, 6).battery(0, 2, 6).wire(1, 2).build();
  results = results_of(fed);
  EXPECT_TRUE(all_hold(check_laws(fed, results)));
  for (BranchResult& branch : results.branches) branch.current = Current{0};
  EXPECT_FALSE(all_hold(check_laws(fed, results)));
}

TEST(Laws, AcceptEqualIdealBatteriesSideBySide) {
  const Network network = Builder(2).battery(0, 1, 6).battery(0, 1, 6).resistor(1, 0, 3).build();
  const CaseTrace results = results_of(network);
  EXPECT_FALSE(results.branches[0].current.value);
  EXPECT_TRUE(all_hold(check_laws(network, results)));
}

TEST(Laws, HoldForSolvedRandomNetworksAndFailWhenOneCurrentIsChanged) {
  support::RandomCircuits random(20);
  for (int i = 0; i < 200; ++i) {
    support::Multigraph wanted;
    wanted.points = 3 + random.below(6);
    wanted.resistors = 2 + random.below(10);
    wanted.wires = random.below(3);
    wanted.voltmeters = random.below(2);
    wanted.open_switches = random.below(2);
    wanted.batteries = 1 + random.below(2);
    wanted.internal = support::Multigraph::Internal::all;
    const Network network = support::network_of(random.multigraph(wanted));
    CaseTrace results = results_of(network);
    for (const auto arithmetic : kBoth) {
      ASSERT_TRUE(all_hold(check_laws(network, results, 60, arithmetic))) << network.dump();
    }
    BranchResult& changed = results.branches[random.below(results.branches.size())];
    if (!changed.current.value) continue;
    changed.current.value->number += 1;
    EXPECT_FALSE(all_hold(check_laws(network, results)));
  }
}

TEST(Laws, AreLinearInTheSize) {
  constexpr int kParts = 20'000;
  Builder builder(kParts + 1);
  builder.battery(0, kParts, kParts);
  for (int i = 0; i < kParts; ++i) builder.resistor(i + 1, i, 1).resistor(i + 1, i, 1);
  const Network network = builder.build();
  CaseTrace results;
  results.branches.push_back(
      {part(0), Current{2}, Voltage{kParts}, Power{Number(2) * Number(kParts)}});
  for (int i = 0; i < 2 * kParts; ++i) {
    results.branches.push_back({part(i + 1), Current{1}, Voltage{1}, Power{1}});
  }
  EXPECT_TRUE(all_hold(check_laws(network, results)));
  results.branches[777].voltage = Voltage{2};
  EXPECT_FALSE(all_hold(check_laws(network, results)));
}

}  // namespace
}  // namespace ohmfold

// What holds of the rules on any network: find agrees with judge, and the order of rules does not
// matter.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "ohmfold/rule.h"
#include "ohmfold/solve.h"
#include "rounds.h"
#include "support/random_network.h"

namespace ohmfold::test {
namespace {

using support::Multigraph;
using support::RandomCircuits;

using Parts = std::set<PartId>;

void clean_up(Network& network) {
  for (const Rule& rule : all_rules()) {
    if (rule.tier != Tier::clean_up) continue;
    for (const Place& place : rule.find(network, whole(network))) {
      network.commit(rule.apply(network, place));
    }
  }
}

Network small_network(RandomCircuits& random) {
  Multigraph wanted;
  wanted.points = 2 + random.below(4);
  wanted.resistors = 2 + random.below(6);
  wanted.wires = random.below(2);
  wanted.open_switches = random.below(2);
  wanted.internal = Multigraph::Internal::all;
  const Problem problem = random.multigraph(wanted);
  return set_case(problem, problem.cases.front());
}

// All sets of living parts that judge allows and that are part of no larger one.
std::set<Parts> maximal_places(const Network& network, const Rule& rule) {
  const std::vector<PartId> parts = whole(network).parts;
  std::vector<Parts> allowed;
  for (std::uint32_t bits = 1; bits < (1U << parts.size()); ++bits) {
    Place place;
    for (std::size_t i = 0; i < parts.size(); ++i) {
      if ((bits >> i) & 1U) place.parts.push_back(parts[i]);
    }
    if (rule.judge(network, place).allowed)
      allowed.emplace_back(place.parts.begin(), place.parts.end());
  }
  std::set<Parts> maximal;
  for (const Parts& one : allowed) {
    const bool inside = std::any_of(allowed.begin(), allowed.end(), [&](const Parts& other) {
      return other.size() > one.size() &&
             std::includes(other.begin(), other.end(), one.begin(), one.end());
    });
    if (!inside) maximal.insert(one);
  }
  return maximal;
}

TEST(Rules, SeriesAndParallelFindExactlyTheMaximalPlacesThatJudgeAllows) {
  RandomCircuits random(20'201);
  std::size_t places = 0;
  for (std::uint64_t i = 0; i < rounds(1'500); ++i) {
    Network network = small_network(random);
    clean_up(network);
    for (const RuleName name : {RuleName::series, RuleName::parallel}) {
      std::set<Parts> found;
      for (const Place& place : rule(name).find(network, whole(network))) {
        found.emplace(place.parts.begin(), place.parts.end());
      }
      EXPECT_EQ(found, maximal_places(network, rule(name))) << i << ": " << network.dump();
      places += found.size();
    }
  }
  EXPECT_GT(places, 1'000U);
}

TEST(Rules, BatteriesFindExactlyTheMaximalPlacesThatJudgeAllows) {
  RandomCircuits random(20'206);
  std::size_t places = 0;
  for (std::uint64_t i = 0; i < rounds(1'500); ++i) {
    Multigraph wanted;
    wanted.points = 2 + random.below(4);
    wanted.resistors = random.below(4);
    wanted.batteries = 2 + random.below(3);
    wanted.current_sources = random.below(2);
    wanted.internal = Multigraph::Internal::some;
    const Problem problem = random.multigraph(wanted);
    const Network network = set_case(problem, problem.cases.front());
    std::set<Parts> found;
    for (const Place& place : rule(RuleName::batteries).find(network, whole(network))) {
      found.emplace(place.parts.begin(), place.parts.end());
    }
    EXPECT_EQ(found, maximal_places(network, rule(RuleName::batteries)))
        << i << ": " << network.dump();
    places += found.size();
  }
  EXPECT_GT(places, 300U);
}

TEST(Rules, DeadEndsFoundTogetherAreAllPartsThatJudgeAllowsAlone) {
  RandomCircuits random(20'202);
  std::size_t dead = 0;
  for (std::uint64_t i = 0; i < rounds(1'500); ++i) {
    Network network = small_network(random);
    for (const RuleName name : {RuleName::gap, RuleName::ideal_wire, RuleName::shorted}) {
      for (const Place& place : rule(name).find(network, whole(network))) {
        network.commit(rule(name).apply(network, place));
      }
    }
    const Rule& dead_end = rule(RuleName::dead_end);
    Parts found;
    for (const Place& place : dead_end.find(network, whole(network))) {
      found.insert(place.parts.begin(), place.parts.end());
    }
    for (const PartId part : whole(network).parts) {
      if (is_source(network.kind(part))) continue;
      EXPECT_EQ(dead_end.judge(network, {{part}, {}, {}}).allowed, found.count(part) == 1)
          << i << ": part " << part.index << " in " << network.dump();
    }
    dead += found.size();
  }
  EXPECT_GT(dead, 1'000U);
}

// Applies rules at places picked at random, one place at a time, until none is left.
Number resistance_in_random_order(Network network, RandomCircuits& random) {
  clean_up(network);
  while (true) {
    std::vector<std::pair<const Rule*, Place>> open;
    for (const Rule& rule : all_rules()) {
      if (rule.tier != Tier::combine) continue;
      for (Place& place : rule.find(network, whole(network))) {
        // A part of the place will do as well, as long as it is a place.
        if (place.parts.size() > 2 && random.below(2) == 0) {
          place.parts.resize(2);
          place.first = place.second = PointId{};
        }
        open.emplace_back(&rule, std::move(place));
      }
    }
    if (open.empty()) break;
    const auto& [rule, place] = open[random.below(open.size())];
    network.commit(rule->apply(network, place));
  }
  const std::vector<PartId> left = whole(network).parts;
  EXPECT_EQ(left.size(), 2U);
  return network.resistance(left.back()).lowest_terms();
}

TEST(Rules, InAnyOrderGiveTheSameResistance) {
  RandomCircuits random(20'203);
  for (std::uint64_t i = 0; i < rounds(1'000); ++i) {
    const Problem problem = random.series_parallel(2 + random.below(14));
    const Reduction reduction = reduce_case(problem, problem.cases.front());
    EXPECT_EQ(resistance_in_random_order(reduction.start, random),
              reduction.end.resistance(reduction.root).lowest_terms())
        << i;
  }
}

TEST(Rules, TakingTwoAtATimeGivesTheSameAnswers) {
  RandomCircuits random(20'204);
  SolveOptions pairs;
  pairs.pairs = true;
  for (std::uint64_t i = 0; i < rounds(500); ++i) {
    const Problem problem = random.series_parallel(2 + random.below(14));
    const Trace all = solve(problem);
    const Trace two = solve(problem, pairs);
    for (std::size_t k = 0; k < problem.parts.size(); ++k) {
      EXPECT_EQ(all.cases[0].branches[k].current.value, two.cases[0].branches[k].current.value);
    }
    for (std::size_t k = 0; k < two.cases[0].main.steps.size(); ++k) {
      EXPECT_EQ(two.cases[0].main.steps[k].takes.size(), 2U);
    }
  }
}

}  // namespace
}  // namespace ohmfold::test

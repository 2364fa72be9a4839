// Random networks, drawn with all their redraws and read back.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

#include "drawing/read_back_trace.h"
#include "ohmfold/solve.h"
#include "properties/rounds.h"
#include "support/random_network.h"

namespace ohmfold::test {
namespace {

using support::Multigraph;
using support::RandomCircuits;

/// What a round was about, roughly as a circuit file.
std::string as_file(const Problem& problem) {
  std::string text;
  for (const Part& part : problem.parts) {
    text += "    " + std::string(keyword(part.kind)) + " " + part.name + " from " +
            problem.point(part.from) + " to " + problem.point(part.to) + "\n";
  }
  for (const PlaceHint& hint : problem.places) {
    text += "    place " + problem.point(hint.point) + " at " + hint.x.to_string() + ", " +
            hint.y.to_string() + "\n";
  }
  return text;
}

/// Every way to draw would take long; each drawing takes one of them in turn.
void judge(const Problem& problem, std::uint64_t round, Tally& tally) {
  const Trace trace = solve(problem);
  const std::vector<DrawOptions> ways = ways_to_draw();
  const std::size_t wrong = tally.wrong;
  const std::size_t way = round % ways.size();
  judge_case(trace, 0, "round " + std::to_string(round) + " drawn in way " + std::to_string(way),
             {ways[way]}, 4, tally);
  if (tally.wrong > wrong && tally.wrong <= Tally::kMostShown) tally.report += as_file(problem);
}

/// A resistor of the problem becomes two in series or in parallel.
void split(Problem& problem, RandomCircuits& random) {
  const std::size_t index = 1 + random.below(problem.parts.size() - 1);
  Part more = problem.parts[index];
  more.name = "X" + std::to_string(problem.parts.size());
  more.value = random.resistance();
  if (random.below(2) == 0) {
    const PointId middle{static_cast<std::uint32_t>(problem.points.size())};
    problem.points.push_back("P" + std::to_string(middle.index));
    problem.parts[index].to = middle;
    more.from = middle;
  }
  problem.parts.push_back(more);
}

/// A battery E from G to T, and resistors between points with these numbers (0 is G, 1 is T).
Problem fed(std::size_t points, const std::vector<std::array<std::uint32_t, 2>>& resistors,
            RandomCircuits& random) {
  Problem problem = random.series_parallel(1);
  problem.parts.pop_back();
  for (std::size_t i = problem.points.size(); i < points; ++i) {
    problem.points.push_back("P" + std::to_string(i));
  }
  for (const auto& [from, to] : resistors) {
    Part part;
    part.name = "X" + std::to_string(problem.parts.size());
    part.from = PointId{from};
    part.to = PointId{to};
    part.value = random.resistance();
    problem.parts.push_back(part);
  }
  return problem;
}

/// 500 networks, a hundred at a time.
class RandomSeriesParallel : public ::testing::TestWithParam<std::uint64_t> {};

TEST_P(RandomSeriesParallel, ReadsBack) {
  RandomCircuits random(40'001 + 1'000 * GetParam());
  Tally tally;
  for (std::uint64_t i = 0; i < rounds(100); ++i) {
    judge(random.series_parallel(1 + random.below(24), 25 + random.below(51)), i, tally);
  }
  RecordProperty("drawings", std::to_string(tally.drawings));
  EXPECT_EQ(tally.wrong, 0U) << "of " << tally.drawings << " drawings\n" << tally.report;
}

INSTANTIATE_TEST_SUITE_P(Hundreds, RandomSeriesParallel,
                         ::testing::Range<std::uint64_t>(std::uint64_t{0}, std::uint64_t{5}));

TEST(RandomDrawings, OfBridgesReadBack) {
  RandomCircuits random(40'002);
  Tally tally;
  for (std::uint64_t i = 0; i < rounds(200); ++i) {
    Problem problem = fed(4, {{1, 2}, {1, 3}, {2, 0}, {3, 0}, {2, 3}}, random);
    const std::size_t parts = 6 + random.below(10);
    while (problem.parts.size() < parts) split(problem, random);
    judge(problem, i, tally);
  }
  RecordProperty("drawings", std::to_string(tally.drawings));
  EXPECT_EQ(tally.wrong, 0U) << "of " << tally.drawings << " drawings\n" << tally.report;
}

// No plane drawing shows the complete graph of five points, nor three houses and three wells
// (Kuratowski 1930).
TEST(RandomDrawings, OfWhatCannotLieInAPlaneReadBack) {
  RandomCircuits random(40'003);
  std::vector<std::array<std::uint32_t, 2>> five, houses;
  for (std::uint32_t a = 0; a < 5; ++a) {
    for (std::uint32_t b = a + 1; b < 5; ++b) five.push_back({a, b});
  }
  for (const std::uint32_t a : {0U, 2U, 4U}) {
    for (const std::uint32_t b : {1U, 3U, 5U}) houses.push_back({a, b});
  }
  Tally tally;
  for (std::uint64_t i = 0; i < rounds(10); ++i) {
    Problem complete = fed(5, five, random);
    Problem utilities = fed(6, houses, random);
    for (std::uint64_t k = 0; k < i; ++k) {
      split(complete, random);
      split(utilities, random);
    }
    judge(complete, i, tally);
    judge(utilities, i, tally);
  }
  EXPECT_EQ(tally.wrong, 0U) << "of " << tally.drawings << " drawings\n" << tally.report;
}

// Loose ends, wires, open switches, meters, floating pieces, current sources, several batteries.
TEST(RandomDrawings, OfAnyPartsAnywhereReadBack) {
  RandomCircuits random(40'004);
  Tally tally;
  for (std::uint64_t i = 0; i < rounds(150); ++i) {
    Multigraph wanted;
    wanted.points = 2 + random.below(8);
    wanted.resistors = random.below(12);
    wanted.wires = random.below(3);
    wanted.open_switches = random.below(3);
    wanted.voltmeters = random.below(2);
    wanted.batteries = random.below(3);
    wanted.current_sources = random.below(2);
    wanted.internal = Multigraph::Internal::some;
    wanted.connected = random.below(2) == 0;
    Problem problem = random.multigraph(wanted);
    if (problem.parts.empty()) continue;
    if (random.below(5) == 0) problem.parts.back().to = problem.parts.back().from;
    judge(problem, i, tally);
  }
  EXPECT_EQ(tally.wrong, 0U) << "of " << tally.drawings << " drawings\n" << tally.report;
}

TEST(RandomDrawings, WithHintsReadBack) {
  RandomCircuits random(40'005);
  Tally tally;
  for (std::uint64_t i = 0; i < rounds(60); ++i) {
    Problem problem = random.series_parallel(2 + random.below(8));
    for (std::uint32_t point = 0; point < problem.points.size(); ++point) {
      if (random.below(3) == 0) continue;
      problem.places.push_back(
          {PointId{point}, static_cast<int>(random.below(6)), static_cast<int>(random.below(6))});
    }
    judge(problem, i, tally);
  }
  EXPECT_EQ(tally.wrong, 0U) << "of " << tally.drawings << " drawings\n" << tally.report;
}

}  // namespace
}  // namespace ohmfold::test

// A cube is recognised wherever its terminals are, and drawn as one.
#include "drawing/cores.h"
#include "drawing/sound.h"

namespace ohmfold::drawing {
namespace {

using namespace test;

/// The corners of a cube by three bits, with these two as corners 0 and 1, shuffled otherwise.
Core cube(std::uint32_t first, std::uint32_t second, std::uint64_t seed = 0) {
  std::vector<std::uint32_t> number{first, second};
  std::mt19937_64 random(seed);
  for (std::uint32_t i = 0; i < 8; ++i) {
    if (i == first || i == second) continue;
    const auto at = static_cast<std::ptrdiff_t>(2 + random() % (number.size() - 1));
    number.insert(number.begin() + at, i);
  }
  std::vector<std::uint32_t> corner(8);
  for (std::uint32_t i = 0; i < 8; ++i) corner[number[i]] = i;
  Core core = core_of(8, {});
  for (std::uint32_t i = 0; i < 8; ++i) {
    for (const std::uint32_t bit : {1U, 2U, 4U}) {
      if ((i & bit) == 0) core.edges.push_back({corner[i], corner[i | bit], 0, kCell, true});
    }
  }
  return core;
}

std::size_t slanted(const CorePlan& plan) {
  std::size_t count = 0;
  for (const EdgePlace& edge : plan.edges) {
    const Spot along = edge.line.back() - edge.line.front();
    if (along.x != 0 && along.y != 0) {
      EXPECT_EQ(along.x, -along.y);
      ++count;
    }
  }
  return count;
}

TEST(Cube, IsDrawnWithFourSlantedEdgesWhereverItsTerminalsAre) {
  for (const std::uint32_t second : {1U, 2U, 4U, 3U, 5U, 6U, 7U}) {
    for (std::uint64_t seed = 0; seed < 10; ++seed) {
      const Core core = cube(0, second, seed);
      const std::optional<CorePlan> plan = place_cube(core);
      ASSERT_TRUE(plan.has_value());
      expect_sound(core, *plan);
      EXPECT_EQ(slanted(*plan), 4U);
    }
  }
}

TEST(Cube, HasTwoCrossingsAwayFromItsSymbols) {
  const std::optional<CorePlan> plan = place_cube(cube(0, 7));
  ASSERT_TRUE(plan.has_value());
  std::vector<std::pair<std::size_t, Segment>> lines;
  std::vector<Spot> seats;  // in half units
  for (std::size_t i = 0; i < plan->edges.size(); ++i) {
    const EdgePlace& edge = plan->edges[i];
    for (std::size_t k = 0; k + 1 < edge.line.size(); ++k) {
      lines.push_back({i, {edge.line[k], edge.line[k + 1]}});
    }
    seats.push_back(edge.line[edge.seat] + edge.line[edge.seat + 1]);
  }
  std::size_t count = 0;
  for (std::size_t a = 0; a < lines.size(); ++a) {
    for (std::size_t b = a + 1; b < lines.size(); ++b) {
      count += sound::cross_over(lines[a].second, lines[b].second) ? 1 : 0;
    }
    for (std::size_t seat = 0; seat < seats.size(); ++seat) {
      if (lines[a].first == seat) continue;
      EXPECT_FALSE(sound::is_closer(seats[seat], lines[a].second, 3 * kCell / 4));
    }
  }
  EXPECT_EQ(count, 2U);
}

TEST(Cube, IsNothingElse) {
  Core with_box = cube(0, 7);
  with_box.edges[3].single = false;
  Core one_less = cube(0, 7);
  one_less.edges.pop_back();
  Core ladder = core_of(8, {});
  for (std::uint32_t i = 0; i < 8; ++i) ladder.edges.push_back({i, (i + 1) % 8, 0, kCell, true});
  for (std::uint32_t i = 0; i < 4; ++i) ladder.edges.push_back({i, i + 4, 0, kCell, true});
  for (const Core& core : {with_box, one_less, ladder, mesh(4, 2), petersen(), complete(5),
                           core_of(8, {{0, 1},
                                       {1, 2},
                                       {2, 3},
                                       {3, 0},
                                       {4, 5},
                                       {5, 6},
                                       {6, 7},
                                       {7, 4},
                                       {0, 2},
                                       {1, 3},
                                       {4, 6},
                                       {5, 7}})}) {
    EXPECT_FALSE(place_cube(core).has_value());
  }
}

}  // namespace
}  // namespace ohmfold::drawing

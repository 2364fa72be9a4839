// Counts of the resistances of equal resistors where bridges are allowed, against the On-Line
// Encyclopedia of Integer Sequences (https://oeis.org): A174283, A174284, A174285.
#include <gtest/gtest.h>

#include <array>
#include <set>

#include "circuit/set_case.h"
#include "ohmfold/solve.h"
#include "published/networks.h"
#include "solve/answers.h"
#include "solve/reduce.h"

namespace ohmfold::published {
namespace {

using Values = std::set<Number>;
using Arms = std::array<Number, 5>;

/// What the engine finds between A and D for arms A-B, A-C, B-C, B-D, C-D.
Number bridge(const Arms& arms) {
  Network network(4);
  constexpr std::array<std::array<std::uint32_t, 2>, 5> ends{
      {{0, 1}, {0, 2}, {1, 2}, {1, 3}, {2, 3}}};
  for (std::size_t i = 0; i < arms.size(); ++i) {
    network.add(ElementKind::resistor, PointId{ends[i][0]}, PointId{ends[i][1]}, Ratio(arms[i]));
  }
  network.add(ElementKind::port, PointId{0}, PointId{3});
  return seen_resistance(reduce(std::move(network), false)).value->number;
}

Number in_series(const Number& a, const Number& b) {
  return Ratio::series(Ratio(a), Ratio(b)).lowest_terms();
}
Number in_parallel(const Number& a, const Number& b) {
  return Ratio::parallel(Ratio(a), Ratio(b)).lowest_terms();
}

class Enumeration {
 public:
  /// All values of 1 to `most` resistors of 1 ohm.
  explicit Enumeration(std::size_t most) : all_(most + 1), plain_(most + 1), inside_(most + 1) {
    all_[1].insert(Number(1));
    plain_[1].insert(Number(1));
    for (std::size_t parts = 2; parts <= most; ++parts) {
      for (std::size_t first = 1; 2 * first <= parts; ++first) {
        combine(all_, first, parts - first);
        combine(plain_, first, parts - first);
      }
      put_in_arms({&plain_, &inside_[parts]}, {}, 0, parts);
      put_in_arms({&all_, &all_[parts]}, {}, 0, parts);
    }
  }

  /// By number of resistors: of any network; of those that are one
  /// bridge whose arms are in series and parallel alone.
  [[nodiscard]] const std::vector<Values>& all() const { return all_; }
  [[nodiscard]] const std::vector<Values>& inside_a_bridge() const { return inside_; }

 private:
  static void combine(std::vector<Values>& sets, std::size_t first, std::size_t second) {
    for (const Number& a : sets[first]) {
      for (const Number& b : sets[second]) {
        sets[first + second].insert(in_series(a, b));
        sets[first + second].insert(in_parallel(a, b));
      }
    }
  }

  struct Bridges {
    const std::vector<Values>* arms;
    Values* found;
  };

  /// Arms from `arm` on are still to be chosen, of `left` resistors together.
  static void put_in_arms(const Bridges& bridges, Arms arms, std::size_t arm, std::size_t left) {
    if (arm == arms.size()) {
      if (left == 0) bridges.found->insert(bridge(arms));
      return;
    }
    const std::size_t others = arms.size() - arm - 1;
    for (std::size_t size = 1; size + others <= left; ++size) {
      for (const Number& value : (*bridges.arms)[size]) {
        arms[arm] = value;
        put_in_arms(bridges, arms, arm + 1, left - size);
      }
    }
  }

  std::vector<Values> all_, plain_, inside_;  // plain: in series and parallel alone
};

const Enumeration& enumeration() {
  static const Enumeration once(11);
  return once;
}

std::vector<std::size_t> sizes(const std::vector<Values>& sets) {
  std::vector<std::size_t> counted;
  for (std::size_t n = 1; n < sets.size(); ++n) counted.push_back(sets[n].size());
  return counted;
}

TEST(EqualResistorsWithBridges, GiveAsManyValuesAsA174283Says) {
  const std::vector<std::size_t> published{1, 2, 4, 9, 23, 57, 151, 415, 1157, 3191, 8687};
  EXPECT_EQ(sizes(enumeration().all()), published);
}

// Older copies print 489 for n = 8, corrected to 493.
TEST(EqualResistorsWithBridges, GiveWithAtMostSoManyAsManyValuesAsA174284Says) {
  const std::vector<std::size_t> published{1, 3, 7, 15, 35, 79, 193, 493, 1299, 3429, 9049};
  std::vector<Values> sets = enumeration().all();
  for (std::size_t n = 2; n < sets.size(); ++n) {
    sets[n].insert(sets[n - 1].begin(), sets[n - 1].end());
  }
  EXPECT_EQ(sizes(sets), published);
}

TEST(EqualResistorsInsideOneBridge, GiveAsManyValuesAsA174285Says) {
  const std::vector<std::size_t> published{0, 0, 0, 0, 1, 3, 17, 61, 235, 815, 2563};
  EXPECT_EQ(sizes(enumeration().inside_a_bridge()), published);
}

}  // namespace
}  // namespace ohmfold::published

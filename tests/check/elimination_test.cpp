// Node equations: conductances that remain, and potentials.
#include "check/elimination.h"

#include <gtest/gtest.h>

#include "check/rationals.h"
#include "exact/prime_field.h"
#include "support/random_network.h"

namespace ohmfold::check {
namespace {

TEST(Elimination, MakesADeltaOfAStar) {
  // Star of 1, 2 and 3 S: each pair gets its product over the sum (Kennelly 1899).
  Elimination<Rationals> equations({}, 4);
  for (int i = 0; i < 3; ++i) equations.join(3, static_cast<std::uint32_t>(i), Number(i + 1));
  ASSERT_TRUE(equations.eliminate({true, true, true, false}, 0));
  EXPECT_EQ(equations.conductance(0, 1), Number::quotient(2, 6));
  EXPECT_EQ(equations.conductance(0, 2), Number::quotient(3, 6));
  EXPECT_EQ(equations.conductance(2, 1), Number(1));
}

// All nodes joined to each other by 1 S: n/2 S between any two (common knowledge: by symmetry the
// others do not matter but in pairs; 2/n ohm).
TEST(Elimination, GoesOnDenselyWhereNeighboursAreMany) {
  constexpr std::uint32_t kNodes = 80;
  const auto fill = [](auto& equations) {
    for (std::uint32_t i = 0; i < kNodes; ++i) {
      for (std::uint32_t j = i + 1; j < kNodes; ++j) equations.join(i, j, {1});
    }
  };
  std::vector<bool> keep(kNodes, false);
  keep[3] = keep[70] = true;
  Elimination<Rationals> exact({}, kNodes);
  fill(exact);
  ASSERT_TRUE(exact.eliminate(keep, 100));
  EXPECT_EQ(exact.conductance(3, 70), Number(40));
  Elimination<PrimeField> modular(PrimeField::random(), kNodes);
  fill(modular);
  ASSERT_TRUE(modular.eliminate(keep, 100));
  EXPECT_EQ(modular.conductance(3, 70), 40U);
  Elimination<Rationals> too_large({}, kNodes);
  fill(too_large);
  EXPECT_FALSE(too_large.eliminate(keep, 77));
}

TEST(Elimination, FindsPotentialsThatSatisfyTheEquations) {
  support::RandomCircuits random(7);
  for (const std::uint32_t nodes : {2U, 5U, 30U, 120U}) {
    const PrimeField field = PrimeField::random();
    Elimination<PrimeField> equations(field, nodes);
    std::vector<std::uint64_t> injected(nodes, 0);
    struct Edge {
      std::uint32_t a, b;
      std::uint64_t conductance;
    };
    std::vector<Edge> edges;
    for (std::uint32_t i = 1; i < nodes; ++i) {
      edges.push_back({i, static_cast<std::uint32_t>(random.below(i)), 1 + random.below(50)});
    }
    for (std::uint32_t i = 0; i < 6 * nodes; ++i) {
      edges.push_back({static_cast<std::uint32_t>(random.below(nodes)),
                       static_cast<std::uint32_t>(random.below(nodes)), 1 + random.below(50)});
    }
    for (const Edge& edge : edges) equations.join(edge.a, edge.b, edge.conductance);
    for (std::uint32_t i = 1; i < nodes; ++i) {
      injected[i] = random.below(100);
      equations.inject(i, injected[i]);
    }
    std::vector<bool> keep(nodes, false);
    keep[0] = true;
    ASSERT_TRUE(equations.eliminate(keep, 1000));
    const std::vector<std::uint64_t> potential = equations.potentials();
    for (const Edge& edge : edges) {
      const std::uint64_t current =
          field.multiply(edge.conductance, field.subtract(potential[edge.a], potential[edge.b]));
      injected[edge.a] = field.subtract(injected[edge.a], current);
      injected[edge.b] = field.add(injected[edge.b], current);
    }
    for (std::uint32_t i = 1; i < nodes; ++i) EXPECT_EQ(injected[i], 0U) << nodes;
  }
}

}  // namespace
}  // namespace ohmfold::check

// Polynomial equations in unknowns: elimination, roots, and what cannot be solved.

#include "solve/equations.h"

#include <gtest/gtest.h>

namespace ohmfold {
namespace {

using End = EquationSolution::End;

const Number x = Number::symbol("x");  // NOLINT(cert-err58-cpp): fails the test program at worst
const Number y = Number::symbol("y");  // NOLINT(cert-err58-cpp)
const Number z = Number::symbol("z");  // NOLINT(cert-err58-cpp)

std::vector<std::vector<Number>> rational_roots(const EquationSolution& solution) {
  std::vector<std::vector<Number>> roots;
  for (const EquationSolution::Root& root : solution.roots) {
    std::vector<Number> values;
    for (const Surd& value : root.values) {
      EXPECT_TRUE(value.is_rational());
      values.push_back(value.rational());
    }
    roots.push_back(std::move(values));
  }
  return roots;
}

using Roots = std::vector<std::vector<Number>>;

TEST(Equations, AreCollectedIntoWholeNumbersWithAPositiveHighestTerm) {
  EXPECT_EQ(collected(Number(12) / (x + 4) - 2), x - 2);
  EXPECT_EQ(collected((Number(4) - Number(6) * x) / (x + 1)), Number(3) * x - 2);
  EXPECT_EQ(collected(Number(7)), Number(1));
  EXPECT_EQ(collected(Number(0)), Number(0));
}

TEST(Equations, InOneUnknownHaveTheirRoots) {
  EXPECT_EQ(rational_roots(solve_equations({x * 3 - 5}, {"x"})), (Roots{{Number(5) / Number(3)}}));
  EXPECT_EQ(rational_roots(solve_equations({x * x - x * 10 + 16}, {"x"})), (Roots{{2}, {8}}));
  EXPECT_EQ(rational_roots(solve_equations({x * x - x * 8 + 16}, {"x"})), (Roots{{4}}));
  EXPECT_TRUE(solve_equations({x * x + 1}, {"x"}).roots.empty());
  EXPECT_EQ(solve_equations({x * x + 1}, {"x"}).end, End::solved);
}

TEST(Equations, MayHaveIrrationalRoots) {
  const EquationSolution solution = solve_equations({x * x - x * 7 + 4}, {"x"});
  ASSERT_EQ(solution.roots.size(), 2U);
  for (const EquationSolution::Root& root : solution.roots) {
    EXPECT_EQ(root.values[0].radicand(), Number(33));
    const std::vector<SurdValue> put_in{{"x", root.values[0]}};
    EXPECT_TRUE(value_at(x * x - x * 7 + 4, put_in)->is_zero());
  }
  EXPECT_EQ((solution.roots[1].values[0] - solution.roots[0].values[0]).sign(), Sign::positive);
}

TEST(Equations, InSeveralUnknownsAreEliminatedOneAfterTheOther) {
  EXPECT_EQ(rational_roots(solve_equations({x - y * 2, x - y - 3}, {"x", "y"})), (Roots{{6, 3}}));
  EXPECT_EQ(rational_roots(solve_equations({x + y + z - 6, x * y - 2, z - 3}, {"x", "y", "z"})),
            (Roots{{2, 1, 3}, {1, 2, 3}}));
}

TEST(Equations, BringIrrationalRootsToTheOtherUnknowns) {
  const EquationSolution solution = solve_equations({x * y - 1, x + y - 3}, {"x", "y"});
  ASSERT_EQ(solution.roots.size(), 2U);
  for (const EquationSolution::Root& root : solution.roots) {
    EXPECT_EQ(root.values[0] + root.values[1], Surd(Number(3)));
    EXPECT_EQ(root.values[0] * root.values[1], Surd(Number(1)));
  }
}

TEST(Equations, ThatCannotHoldAreNamed) {
  const EquationSolution solution = solve_equations({x - 2, Number(1)}, {"x"});
  EXPECT_EQ(solution.end, End::contradictory);
  EXPECT_EQ(solution.failed, 1U);
  const EquationSolution parallel = solve_equations({x + y - 2, x + y - 3}, {"x", "y"});
  EXPECT_EQ(parallel.end, End::contradictory);
}

TEST(Equations, BeyondTheUnknownsAreLookedAtForEachRoot) {
  const EquationSolution solution = solve_equations({x * x - x * 10 + 16, x - 8}, {"x"});
  EXPECT_EQ(rational_roots(solution), (Roots{{8}}));
  EXPECT_FALSE(solution.roots[0].broken);
  const EquationSolution other = solve_equations({x * x - x * 10 + 16, x - 3}, {"x"});
  ASSERT_EQ(other.roots.size(), 1U);
  EXPECT_EQ(other.roots[0].broken, std::optional<std::size_t>(0));
}

TEST(Equations, LeaveAnUnknownFreeThatNoneHolds) {
  EXPECT_EQ(solve_equations({Number(0)}, {"x"}).end, End::free);
  const EquationSolution solution = solve_equations({x + y - 2, x * 2 + y * 2 - 4}, {"x", "y"});
  EXPECT_EQ(solution.end, End::free);
  EXPECT_EQ(solution.free.size(), 1U);
}

TEST(Equations, OfHigherDegreeAreTooEntangled) {
  EXPECT_EQ(solve_equations({x * x * x - x - 1}, {"x"}).end, End::too_entangled);
  EXPECT_EQ(solve_equations({x * x + y * y - 5, x * x * y * y - 4}, {"x", "y"}).end,
            End::too_entangled);
}

TEST(Equations, LoseFactorsOfZeroBeforeTheDegreeIsJudged) {
  EXPECT_EQ(rational_roots(solve_equations({x * x * (x - 1) * (x - 2)}, {"x"})), (Roots{{1}, {2}}));
}

// (y − 2)(x − 1) = 0 and x + y = 5: at y = 2 the first holds for every x, so that solving it for x
// would lose x = 3.
TEST(Equations, AreNotSolvedForAnUnknownThatTheyMayLose) {
  const EquationSolution solution =
      solve_equations({(y - 2) * (x - 1), (x + y - 5) * (x + 1)}, {"x", "y"});
  EXPECT_NE(solution.end, End::contradictory);
  if (solution.end == End::solved) {
    EXPECT_EQ(solution.roots.size(), 2U);
  }
}

TEST(Equations, SayWhereAnEliminationDividesByZero) {
  // From the first x = 1/(y − 2), which the other drives to y = 2.
  const EquationSolution solution =
      solve_equations({x * (y - 2) - 1, (x * (y - 2) - 1) * 3 + (y - 2)}, {"x", "y"});
  for (const EquationSolution::Root& root : solution.roots) EXPECT_TRUE(root.values.empty());
}

}  // namespace
}  // namespace ohmfold

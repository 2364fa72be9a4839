// Lifted potentials are those of exact elimination, whatever prime and weights are drawn.
#include "solve/lifting.h"

#include <gtest/gtest.h>

#include <random>

#include "ohmfold/error.h"
#include "solve/elimination.h"

namespace ohmfold {
namespace {

constexpr std::uint64_t kPlenty = 1'000'000'000'000;
// The largest prime below 2^61, the ninth Mersenne prime (Pervushin 1883).
constexpr std::uint64_t kMersenne = (std::uint64_t{1} << 61) - 1;

struct System {
  std::size_t nodes = 0;
  std::vector<Joint> joints;
  std::vector<Number> brought;
};

class RandomSystems {
 public:
  explicit RandomSystems(std::uint64_t seed) : random_(seed) {}

  std::uint64_t below(std::uint64_t end) { return random_() % end; }
  Number conductance(int most_numerator) {
    return Number::quotient(1 + static_cast<int>(below(static_cast<std::uint64_t>(most_numerator))),
                            1 + static_cast<int>(below(10)));
  }

  // `extra` joints more than those of a tree; a tree for each of `pieces` pieces.
  System any(std::size_t nodes, std::size_t extra, std::size_t pieces, int most_numerator) {
    System system{nodes, {}, std::vector<Number>(nodes)};
    const auto piece = [&](std::uint64_t node) { return node % pieces; };
    for (std::uint32_t i = static_cast<std::uint32_t>(pieces); i < nodes; ++i) {
      auto other = static_cast<std::uint32_t>(below(i));
      while (piece(other) != piece(i)) other = static_cast<std::uint32_t>(below(i));
      system.joints.push_back({i, other, Conductance{conductance(most_numerator)}});
    }
    for (std::size_t i = 0; i < extra; ++i) {
      const auto a = static_cast<std::uint32_t>(below(nodes));
      const auto b = static_cast<std::uint32_t>(below(nodes));
      if (piece(a) != piece(b)) continue;
      system.joints.push_back({a, b, Conductance{conductance(most_numerator)}});
      if (below(2) == 0) continue;
      const Number current = conductance(50);
      system.brought[a] += current;
      system.brought[b] -= current;
    }
    return system;
  }

  System grid(std::uint32_t k) {
    System system{std::size_t{k} * k, {}, std::vector<Number>(std::size_t{k} * k)};
    for (std::uint32_t i = 0; i < k * k; ++i) {
      const auto join = [&](std::uint32_t other) {
        const int ohms = 1 + static_cast<int>(below(10));
        system.joints.push_back({i, other, Conductance{Number::quotient(1, ohms)}});
      };
      if (i % k + 1 < k) join(i + 1);
      if (i + k < k * k) join(i + k);
    }
    system.brought.front() = 1;
    system.brought.back() = -1;
    return system;
  }

 private:
  std::mt19937_64 random_;
};

std::optional<SharedFractions> lifted(const System& system, LiftingChoices choices = {},
                                      std::uint64_t most_work = kPlenty) {
  NodeLifting equations(system.nodes, std::move(choices));
  for (const auto& [a, b, conductance] : system.joints) equations.join(a, b, conductance);
  return equations.solve(system.brought, most_work);
}

// Compares with exact elimination, which may have another ground: drops of joints, and the current
// law at every node.
void expect_right(const System& system, const std::optional<SharedFractions>& solution) {
  ASSERT_TRUE(solution);
  NodeEquations equations(system.nodes);
  for (const auto& [a, b, conductance] : system.joints) equations.join(a, b, conductance);
  for (std::uint32_t i = 0; i < system.nodes; ++i) {
    equations.bring(i, Current{system.brought[i]});
  }
  const auto expected = equations.solve(kPlenty);
  ASSERT_TRUE(expected);
  std::vector<Number> left = system.brought;
  for (const auto& [a, b, conductance] : system.joints) {
    const Number drop = solution->lowest_terms(a) - solution->lowest_terms(b);
    ASSERT_EQ(drop, (*expected)[a] - (*expected)[b]);
    left[a] -= conductance.number * drop;
    left[b] += conductance.number * drop;
  }
  for (const Number& current : left) ASSERT_TRUE(current.is_zero());
}

TEST(NodeLifting, AgreesWithEliminationOnRandomNetworks) {
  RandomSystems random(1);
  for (int round = 0; round < 400; ++round) {
    const std::size_t pieces = 1 + random.below(3);
    const std::size_t nodes = pieces + random.below(30);
    const System system = random.any(nodes, random.below(60), pieces, 1 + round % 12);
    expect_right(system, lifted(system));
    ASSERT_FALSE(HasFatalFailure()) << round;
  }
}

TEST(NodeLifting, AgreesWithEliminationOnGrids) {
  RandomSystems random(2);
  for (const std::uint32_t k : {1U, 2U, 5U, 10U, 14U}) {
    System system = random.grid(k);
    if (k == 1) system.brought[0] = 0;
    expect_right(system, lifted(system));
  }
}

TEST(NodeLifting, SolvesForFurtherCurrentsWithTheSameFactor) {
  RandomSystems random(3);
  System system = random.grid(6);
  NodeLifting equations(system.nodes);
  for (const auto& [a, b, conductance] : system.joints) equations.join(a, b, conductance);
  for (std::size_t node = 1; node < system.nodes; ++node) {
    system.brought.assign(system.nodes, 0);
    system.brought[0] = Number::quotient(static_cast<int>(node), 7);
    system.brought[node] = -system.brought[0];
    expect_right(system, equations.solve(system.brought, kPlenty));
  }
}

TEST(NodeLifting, KeepsLongNumbersWhereWordsWouldNotDo) {
  RandomSystems random(4);
  const cln::cl_I huge = cln::expt_pos(cln::cl_I(10), 60) + 7;
  for (int round = 0; round < 30; ++round) {
    System system = random.any(12, 20, 1, 5);
    for (Joint& joint : system.joints) {  // from 10^-60 to 10^60 siemens, some odd in between
      if (random.below(3) == 0) joint.conductance.number += Number(cln::cl_RA(huge));
      if (random.below(3) == 0) {
        joint.conductance.number = joint.conductance.number / Number(cln::cl_RA(huge));
      }
    }
    const Number current = Number::quotient(huge, 3);
    system.brought[0] += current;
    system.brought[5] -= current;
    expect_right(system, lifted(system));
    ASSERT_FALSE(HasFatalFailure()) << round;
  }
}

TEST(NodeLifting, TakesValuesOnBothSidesOfAWord) {
  // 2 * total + 2 reaches 62 bits between these.
  for (const int bits : {58, 59, 60, 61, 62, 63, 64, 65}) {
    const Number large{cln::cl_RA((cln::cl_I(1) << bits) - 1)};
    const System system{3,
                        {{0, 1, {large}}, {1, 2, {Number(1)}}, {2, 0, {Number(3)}}},
                        {Number(5), Number(-2) * large, Number(2) * large - Number(5)}};
    expect_right(system, lifted(system));
  }
}

// What a prime can divide: a pivot, a denominator, and what makes a row whole.
TEST(NodeLifting, TakesAnotherPrimeWhereTheFirstWillNotDo) {
  const Number prime{cln::cl_RA(cln::cl_I(static_cast<unsigned long>(kMersenne)))};
  const Number one(1);
  const std::vector<std::vector<Joint>> cases = {
      {{0, 1, {one}}, {1, 2, {prime - one}}, {2, 3, {one}}, {3, 0, {one}}, {0, 2, {one}}},
      {{0, 1, {one / prime}}, {1, 2, {one}}, {2, 3, {one}}, {3, 0, {one}}, {0, 2, {one}}},
      {{0, 1, {prime}}, {1, 2, {prime}}, {2, 3, {prime}}, {3, 0, {prime}}, {0, 2, {one}}},
      {{0, 1, {prime}}, {1, 2, {prime}}, {2, 3, {prime}}, {3, 0, {prime}}, {0, 2, {prime}}},
  };
  for (const std::vector<Joint>& joints : cases) {
    const System system{4, joints, {Number(1), Number(0), Number(-3), Number(2)}};
    expect_right(system, lifted(system, {{kMersenne}, {}}));
  }
}

TEST(NodeFactor, SaysThatAPrimeDividesAPivot) {
  const PrimeField field(kMersenne);
  std::uint64_t work = 1000;
  NodeFactor factor(field);
  EXPECT_EQ(factor.factor({{{1, 1}}, {{0, 1}, {2, kMersenne - 1}}, {{1, kMersenne - 1}}}, work),
            NodeFactor::Outcome::done);
  EXPECT_EQ(
      NodeFactor(field).factor(
          {{{1, 1}, {2, kMersenne - 1}}, {{0, 1}, {2, 1}}, {{0, kMersenne - 1}, {1, 1}}}, work),
      NodeFactor::Outcome::bad_prime);
}

TEST(NodeLifting, LiftsAgainWhereTheDenominatorFoundIsWrong) {
  RandomSystems random(5);
  for (int round = 0; round < 20; ++round) {
    const System system = random.grid(4);
    // Sums that are always 0 say that every denominator is 1; one potential alone may lack factors.
    expect_right(system, lifted(system, {{}, {std::vector<unsigned>(system.nodes, 0)}}));
    std::vector<unsigned> one(system.nodes, 0);
    one[random.below(system.nodes)] = 1;
    expect_right(system, lifted(system, {{}, {one}}));
  }
}

TEST(WholeRows, HoldOnlyForTheSolution) {
  RandomSystems random(6);
  const System system = random.grid(4);
  auto solution = lifted(system);
  ASSERT_TRUE(solution);
  std::vector<bool> is_ground(system.nodes, false);
  const WholeRows rows(Neighbours(system.nodes, system.joints), is_ground, system.brought);
  EXPECT_TRUE(rows.hold(*solution));
  for (cln::cl_I& numerator : solution->numerators) {
    numerator = numerator + 1;
    EXPECT_FALSE(rows.hold(*solution));
    numerator = numerator - 1;
  }
  solution->denominator = solution->denominator + 1;
  EXPECT_FALSE(rows.hold(*solution));
}

TEST(NodeLifting, GivesUpWhereTheWorkIsBeyondTheBudget) {
  RandomSystems random(7);
  const System system = random.grid(12);
  bool solved = false;
  for (std::uint64_t work = 1; !solved; work *= 2) {
    const auto solution = lifted(system, {}, work);
    solved = solution.has_value();
    if (solved) expect_right(system, solution);
    EXPECT_TRUE(!solved || work > 10'000);
  }
}

TEST(NodeLifting, DemandsThatCurrentsSumToZeroInEachPiece) {
  System system{4, {{0, 1, {Number(1)}}, {2, 3, {Number(1)}}}, {1, -1, 2, -2}};
  expect_right(system, lifted(system));
  system.brought = {1, 1, -1, -1};
  EXPECT_THROW((void)lifted(system), InternalError);
}

}  // namespace
}  // namespace ohmfold

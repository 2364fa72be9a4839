// Published resistances by several methods that agree, and by symmetry alone where a textbook would
// use it.
#include <gtest/gtest.h>

#include <algorithm>

#include "circuit/set_case.h"
#include "ohmfold/rule.h"
#include "ohmfold/solve.h"
#include "published/networks.h"

namespace ohmfold::published {
namespace {

std::string unit_resistors(const std::vector<std::pair<int, int>>& edges) {
  std::string text;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    text += "resistor R" + std::to_string(i + 1) + " = 1 from p" + std::to_string(edges[i].first) +
            " to p" + std::to_string(edges[i].second) + "\n";
  }
  return text;
}

/// The resistance between p`a` and p`b`, and the reduction that shows it.
struct Found {
  Number resistance;
  Reduction shown;
};

Found resistance(const std::string& text, int a, int b, Method method) {
  const Problem problem = read(text + "find resistance between p" + std::to_string(a) + " and p" +
                               std::to_string(b) + "\n");
  SolveOptions options;
  options.method = method;
  const Trace trace = solve(problem, options);
  const CaseTrace& one = trace.cases.front();
  return {one.answers.front().value.value.value().number, shown(one.answers.front(), one)};
}

void expect_by_all(const std::string& text, int a, int b, const Number& published) {
  for (const Method method :
       {Method::automatic, Method::equal_potentials, Method::delta_star, Method::node_voltage}) {
    EXPECT_EQ(resistance(text, a, b, method).resistance.to_string(), published.to_string())
        << a << "-" << b << " by method " << static_cast<int>(method);
  }
}

/// Only by series, parallel, and points at equal potentials.
void expect_by_symmetry(const std::string& text, int a, int b, const Number& published) {
  const Found found = resistance(text, a, b, Method::equal_potentials);
  EXPECT_EQ(found.resistance.to_string(), published.to_string()) << a << "-" << b;
  EXPECT_EQ(found.shown.stop, Stop::reduced);
  for (std::size_t i = 0; i < found.shown.steps.size(); ++i) {
    const RuleName rule = found.shown.steps[i].rule;
    EXPECT_TRUE(rule == RuleName::series || rule == RuleName::parallel ||
                rule == RuleName::shorted || rule == RuleName::dead_end ||
                rule == RuleName::equal_potentials)
        << i;
  }
}

Number fraction(int p, int q) {
  return Number::quotient(p, q);
}

std::vector<std::pair<int, int>> complete(int n) {
  std::vector<std::pair<int, int>> edges;
  for (int i = 0; i < n; ++i) {
    for (int j = i + 1; j < n; ++j) edges.emplace_back(i, j);
  }
  return edges;
}

// Klein and Randic, J. Math. Chem. 12 (1993) 81 (value from memory): 2/n between any two points.
TEST(Methods, GiveTwoOverNOfACompleteGraph) {
  for (int n = 4; n <= 9; ++n) {
    expect_by_all(unit_resistors(complete(n)), 0, 1, fraction(2, n));
    expect_by_symmetry(unit_resistors(complete(n)), 0, n - 1, fraction(2, n));
  }
}

// Gervacio, Discrete Appl. Math. 203 (2016) 53 (formula from memory): across (m + n - 1)/(mn),
// inside the side of m points 2/n.
TEST(Methods, GiveTheResistancesOfCompleteBipartiteGraphs) {
  for (int m = 2; m <= 4; ++m) {
    for (int n = 3; n <= 5; ++n) {
      std::vector<std::pair<int, int>> edges;
      for (int i = 0; i < m; ++i) {
        for (int j = 0; j < n; ++j) edges.emplace_back(i, m + j);
      }
      const std::string text = unit_resistors(edges);
      expect_by_symmetry(text, 0, m, fraction(m + n - 1, m * n));
      expect_by_symmetry(text, 0, 1, fraction(2, n));
      expect_by_all(text, 0, m, fraction(m + n - 1, m * n));
    }
  }
}

std::vector<std::pair<int, int>> hypercube(int dimension) {
  std::vector<std::pair<int, int>> edges;
  for (int i = 0; i < (1 << dimension); ++i) {
    for (int bit = 0; bit < dimension; ++bit) {
      if ((i & (1 << bit)) == 0) edges.emplace_back(i, i | (1 << bit));
    }
  }
  return edges;
}

// The cube: 7/12, 3/4, 5/6, a puzzle of old; OEIS A212045/A212046 for dimensions 3 to 5.
TEST(Methods, GiveTheResistancesOfHypercubes) {
  const std::vector<std::vector<Number>> by_distance = {
      {fraction(7, 12), fraction(3, 4), fraction(5, 6)},
      {fraction(15, 32), fraction(7, 12), fraction(61, 96), fraction(2, 3)},
      {fraction(31, 80), fraction(15, 32), fraction(241, 480), fraction(25, 48), fraction(8, 15)}};
  for (int dimension = 3; dimension <= 5; ++dimension) {
    const std::string text = unit_resistors(hypercube(dimension));
    for (int distance = 1; distance <= dimension; ++distance) {
      const Number& published = by_distance[static_cast<std::size_t>(dimension - 3)]
                                           [static_cast<std::size_t>(distance - 1)];
      expect_by_all(text, 0, (1 << distance) - 1, published);
      if (dimension == 3) expect_by_symmetry(text, 0, (1 << distance) - 1, published);
    }
    const Number& longest = by_distance[static_cast<std::size_t>(dimension - 3)].back();
    expect_by_symmetry(text, 0, (1 << dimension) - 1, longest);
  }
}

// Bapat and Gupta, Resistance distance in wheels and fans (2010) (formula from memory): between hub
// and rim F(2n)^2 / (F(4n) - 2 F(2n)).
TEST(Methods, GiveTheResistancesOfWheels) {
  const auto fibonacci = [](int n) {
    int a = 0, b = 1;
    for (int i = 0; i < n; ++i) std::swap(a, b), b += a;
    return a;
  };
  for (int n = 3; n <= 8; ++n) {
    std::vector<std::pair<int, int>> edges;
    for (int i = 0; i < n; ++i) {
      edges.emplace_back(n, i);
      edges.emplace_back(i, (i + 1) % n);
    }
    const int f = fibonacci(2 * n);
    expect_by_all(unit_resistors(edges), n, 0, fraction(f * f, fibonacci(4 * n) - 2 * f));
  }
}

std::string grid(int side) {
  std::vector<std::pair<int, int>> edges;
  for (int i = 0; i < side; ++i) {
    for (int j = 0; j < side; ++j) {
      if (i + 1 < side) edges.emplace_back(side * i + j, side * (i + 1) + j);
      if (j + 1 < side) edges.emplace_back(side * i + j, side * i + j + 1);
    }
  }
  return unit_resistors(edges);
}

// OEIS A048211 and Wu, J. Phys. A 37 (2004) 6653 have corner-to-corner values of square grids; 1,
// 3/2, 13/7, 47/22 for sides of 2 to 5 points (from memory).
TEST(Methods, GiveTheResistancesOfSquareGrids) {
  const std::vector<Number> corner = {Number(1), fraction(3, 2), fraction(13, 7), fraction(47, 22)};
  for (int side = 2; side <= 5; ++side) {
    expect_by_all(grid(side), 0, side * side - 1, corner[static_cast<std::size_t>(side - 2)]);
  }
}

TEST(Methods, AgreeOnLargerGrids) {
  for (const int side : {7, 10}) {
    const Number first =
        resistance(grid(side), 0, side * side - 1, Method::node_voltage).resistance;
    expect_by_all(grid(side), 0, side * side - 1, first);
  }
}

struct SymmetricalCase {
  const char* id;
  std::size_t first, last;  // answers, by their place in the file
};

class Symmetrical : public testing::TestWithParam<SymmetricalCase> {};

// The published resistances of this network, by points at equal potentials alone.
TEST_P(Symmetrical, ReduceByEqualPotentialsAlone) {
  const PublishedNetwork& one = network(GetParam().id);
  for (std::size_t i = GetParam().first; i <= GetParam().last; ++i) {
    const PublishedAnswer& answer = one.answers.at(i);
    const Problem problem =
        read(circuit_text(one) + "find " + question_text(answer).value() + "\n");
    SolveOptions options;
    options.method = Method::equal_potentials;
    const Trace trace = solve(problem, options);
    const CaseTrace& solved = trace.cases.front();
    EXPECT_EQ(solved.answers.front().value.value.value().number.to_string(),
              answer.exact.to_string());
    const Reduction& by_steps = shown(solved.answers.front(), solved);
    EXPECT_EQ(by_steps.stop, Stop::reduced) << answer.of;
    ASSERT_TRUE(by_steps.choice.made) << answer.of;
    EXPECT_EQ(by_steps.choice.ways.front().then, Method::equal_potentials) << answer.of;
  }
}

std::string symmetrical_name(const testing::TestParamInfo<SymmetricalCase>& test) {
  std::string name = test.param.id;
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
}

// Every class of the cube and the tetrahedron, complete and complete bipartite graphs; opposite
// corners of the other solids and of the hypercubes; a bridge of equal resistors (sources in
// networks.json).
INSTANTIATE_TEST_SUITE_P(
    Solids, Symmetrical,
    testing::Values(SymmetricalCase{"G3-01", 0, 2}, SymmetricalCase{"G3-02", 0, 0},
                    SymmetricalCase{"G3-03", 1, 1}, SymmetricalCase{"G3-04", 2, 2},
                    SymmetricalCase{"G3-05", 4, 4}, SymmetricalCase{"G3-06-K4", 0, 0},
                    SymmetricalCase{"G3-06-K5", 0, 0}, SymmetricalCase{"G3-06-K6", 0, 0},
                    SymmetricalCase{"G3-08-K3_3", 0, 2}, SymmetricalCase{"G3-08-K3_4", 0, 2},
                    SymmetricalCase{"G3-09-Q4", 3, 3}, SymmetricalCase{"G3-09-Q5", 4, 4},
                    SymmetricalCase{"G3-15a", 0, 0}),
    symmetrical_name);

// G4-01 and G4-02 of networks.json: T. R. Kuphaldt, Lessons In Electric Circuits, vol. I (DC), ch.
// 10, turns the upper delta of 12, 18 and 6 ohm into a star of 6, 2 and 3 ohm.
TEST(Methods, TurnThePublishedDeltaIntoThePublishedStar) {
  const Problem problem = read(circuit_text(network("G4-01")));
  const Network bridge = set_case(problem, problem.cases.front());
  const Rule& delta_star = rule(RuleName::delta_star);
  const Place upper{{PartId{1}, PartId{2}, PartId{3}}, {}, {}};
  ASSERT_TRUE(delta_star.judge(bridge, upper).allowed);
  const Edit edit = delta_star.apply(bridge, upper);
  for (const auto& [corner, ohms] : {std::pair{"A", 6}, std::pair{"B", 2}, std::pair{"C", 3}}) {
    const auto arm = std::find_if(
        edit.adds.begin(), edit.adds.end(),
        [&, end = corner](const NewPart& part) { return problem.point(part.from) == end; });
    ASSERT_NE(arm, edit.adds.end());
    EXPECT_EQ(arm->resistance.lowest_terms(), Number(ohms)) << corner;
  }
}

}  // namespace
}  // namespace ohmfold::published

// Families of networks against closed formulas, and theorems on networks.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <utility>

#include "ohmfold/solve.h"
#include "published/networks.h"

namespace ohmfold::published {
namespace {

using Edge = std::pair<int, int>;
using Edges = std::vector<Edge>;

std::string point(int number) {
  return "n" + std::to_string(number);
}

/// The numbers that a circuit file asks for, as text, in the order of its questions.
std::vector<std::string> answers(const std::string& text) {
  const Trace trace = solve(read(text));
  std::vector<std::string> all;
  for (const CaseTrace& solved : trace.cases) {
    for (const Answer& answer : solved.answers) {
      all.push_back(answer.value.value ? answer.value.value->number.to_string() : "undetermined");
    }
  }
  return all;
}

/// The resistance between each of the pairs, where every edge is a resistor of 1 ohm.
std::vector<std::string> resistances(const Edges& edges, const Edges& pairs) {
  std::string text;
  for (std::size_t index = 0; index < edges.size(); ++index) {
    text += "resistor R" + std::to_string(index + 1) + " = 1 ohm from " +
            point(edges[index].first) + " to " + point(edges[index].second) + "\n";
  }
  for (const auto& [from, to] : pairs) {
    text += "find resistance between " + point(from) + " and " + point(to) + "\n";
  }
  return answers(text);
}

std::string resistance(const Edges& edges, Edge pair) {
  return resistances(edges, {pair}).front();
}

std::string fraction(const cln::cl_I& numerator, const cln::cl_I& denominator) {
  return Number::quotient(numerator, denominator).to_string();
}

/// F(1) = F(2) = 1. Requires index >= 0.
cln::cl_I fibonacci(int index) {
  cln::cl_I here = 0;
  cln::cl_I next = 1;
  for (int step = 0; step < index; ++step) {
    const cln::cl_I after = here + next;
    here = next;
    next = after;
  }
  return here;
}

/// The resistors of a published network, and the resistance between the ends of each.
struct EdgeResistances {
  std::size_t points = 0;
  std::vector<Number> own, between_ends;
};

EdgeResistances edge_resistances(const PublishedNetwork& network) {
  EdgeResistances found;
  std::string text = circuit_text(network);
  std::set<std::string> points;
  for (const PublishedPart& part : network.parts) {
    if (part.kind != "resistor") continue;
    points.insert({part.from, part.to});
    found.own.push_back(number_of(part.value));
    text +=
        "find resistance between " + point_name(part.from) + " and " + point_name(part.to) + "\n";
  }
  found.points = points.size();
  for (const std::string& answer : answers(text)) found.between_ends.push_back(number_of(answer));
  return found;
}

// Foster's first theorem: the sum over all resistors of (resistance between its ends) / (its own)
// is one less than the number of points. R. M. Foster, The average impedance of an electrical
// network, Reissner Anniversary Volume (1949) 333; proved anew in Z. Cinkir, arXiv 0907.3770.
TEST(FostersTheorem, HoldsForPublishedNetworks) {
  const std::vector<std::pair<std::string, int>> cases{
      {"G3-01", 7},      {"G3-02", 3}, {"G3-03", 5}, {"G3-04", 11}, {"G3-05", 19},
      {"G3-08-K3_3", 5}, {"G3-10", 9}, {"G4-01", 3}, {"G4-03", 3},  {"G1-54", 2}};
  for (const auto& [id, sum_expected] : cases) {
    const EdgeResistances found = edge_resistances(network(id));
    ASSERT_EQ(found.points, static_cast<std::size_t>(sum_expected) + 1) << id;
    ASSERT_EQ(found.between_ends.size(), found.own.size());
    Number sum;
    for (std::size_t edge = 0; edge < found.own.size(); ++edge) {
      sum += found.between_ends[edge] / found.own[edge];
    }
    EXPECT_EQ(sum.to_string(), std::to_string(sum_expected)) << id;
  }
}

// The five Platonic solids and the Petersen graph: all edges alike, so each has (points - 1)/edges.
// IBM Research, Ponder This, October 2007; Petersen from memory.
TEST(EdgesAllAlike, HaveTheSameResistance) {
  const std::vector<std::pair<std::string, std::string>> cases{
      {"G3-01", "7/12"},  {"G3-02", "1/2"},   {"G3-03", "5/12"},
      {"G3-04", "11/30"}, {"G3-05", "19/30"}, {"G3-10", "3/5"}};
  for (const auto& [id, expected] : cases) {
    for (const Number& found : edge_resistances(network(id)).between_ends) {
      EXPECT_EQ(found.to_string(), expected) << id;
    }
  }
}

Edges complete_graph(int points) {
  Edges edges;
  for (int a = 0; a < points; ++a) {
    for (int b = a + 1; b < points; ++b) edges.emplace_back(a, b);
  }
  return edges;
}

// D. J. Klein and M. Randic, Resistance distance, J. Math. Chem. 12 (1993) 81; value from memory.
TEST(CompleteGraph, HasTwoOverNBetweenAnyTwoPoints) {
  for (int n = 2; n <= 8; ++n) {
    for (const std::string& found : resistances(complete_graph(n), complete_graph(n))) {
      EXPECT_EQ(found, fraction(2, n));
    }
  }
}

// Elementary; in Klein and Randic (1993) from memory.
TEST(Cycle, HasKTimesTheRestOverN) {
  for (int n = 3; n <= 9; ++n) {
    Edges edges;
    for (int k = 0; k < n; ++k) edges.emplace_back(k, (k + 1) % n);
    for (int k = 1; k < n; ++k) EXPECT_EQ(resistance(edges, {0, k}), fraction(k * (n - k), n));
  }
}

// S. V. Gervacio, Discrete Appl. Math. 203 (2016) 53; formulas from memory.
TEST(CompleteBipartiteGraph, HasItsThreeValues) {
  for (int m = 2; m <= 4; ++m) {
    for (int n = 2; n <= 5; ++n) {
      Edges edges;
      for (int a = 0; a < m; ++a) {
        for (int b = 0; b < n; ++b) edges.emplace_back(a, m + b);
      }
      const std::vector<std::string> found = resistances(edges, {{0, m}, {0, 1}, {m, m + 1}});
      EXPECT_EQ(found[0], fraction(m + n - 1, m * n));
      EXPECT_EQ(found[1], fraction(2, n));
      EXPECT_EQ(found[2], fraction(2, m));
    }
  }
}

// Known for long; C. Bond, Problems and Solutions vol. 2 no. 3, gives the limit; ratios from
// memory.
TEST(Ladder, HasARatioOfFibonacciNumbers) {
  Edges edges;
  for (int n = 1; n <= 40; ++n) {
    edges.emplace_back(n, n + 1);
    edges.emplace_back(n + 1, 0);
    EXPECT_EQ(resistance(edges, {1, 0}), fraction(fibonacci(2 * n + 1), fibonacci(2 * n)));
  }
}

// R. B. Bapat and S. Gupta, Resistance distance in wheels and fans (2010); formulas from memory.
TEST(Wheel, HasItsFibonacciFormulaFromHubToRim) {
  for (int n = 3; n <= 9; ++n) {
    Edges edges;
    for (int k = 1; k <= n; ++k) {
      edges.emplace_back(0, k);
      edges.emplace_back(k, k % n + 1);
    }
    const cln::cl_I f2n = fibonacci(2 * n);
    EXPECT_EQ(resistance(edges, {0, n}), fraction(f2n * f2n, fibonacci(4 * n) - 2 * f2n));
  }
}

TEST(Fan, HasItsFibonacciFormulaFromHubToPath) {
  for (int n = 2; n <= 9; ++n) {
    Edges edges;
    for (int k = 1; k <= n; ++k) {
      edges.emplace_back(0, k);
      if (k < n) edges.emplace_back(k, k + 1);
    }
    for (int i = 1; i <= n; ++i) {
      EXPECT_EQ(resistance(edges, {0, i}),
                fraction(fibonacci(2 * (n - i) + 1) * fibonacci(2 * i - 1), fibonacci(2 * n)));
    }
  }
}

// OEIS A046878/A046879.
TEST(Hypercube, HasItsPublishedResistanceBetweenOppositeCorners) {
  const std::vector<std::string> published{"1", "1", "5/6", "2/3", "8/15", "13/30"};
  for (int n = 1; n <= 6; ++n) {
    Edges edges;
    for (int corner = 0; corner < 1 << n; ++corner) {
      for (int bit = 0; bit < n; ++bit) {
        if ((corner >> bit & 1) == 0) edges.emplace_back(corner, corner | 1 << bit);
      }
    }
    EXPECT_EQ(resistance(edges, {0, (1 << n) - 1}), published[static_cast<std::size_t>(n) - 1]);
  }
}

Edges grid(int columns, int rows) {
  Edges edges;
  for (int y = 0; y < rows; ++y) {
    for (int x = 0; x < columns; ++x) {
      const int here = y * columns + x;
      if (x + 1 < columns) edges.emplace_back(here, here + 1);
      if (y + 1 < rows) edges.emplace_back(here, here + columns);
    }
  }
  return edges;
}

// F. Y. Wu, Theory of resistor networks, J. Phys. A 37 (2004) 6653 (arXiv math-ph/0402038), worked
// example: printed 1.70786; fraction from memory.
TEST(Grid, HasWusResistanceBetweenACornerAndAnInnerPoint) {
  EXPECT_EQ(resistance(grid(5, 4), {0, 3 * 5 + 3}), "2356898/1380027");
}

// The infinite grid has 1/2 ohm between neighbours: J. Cserti, Am. J. Phys. 68 (2000) 896. By
// Rayleigh's law (P. G. Doyle and J. L. Snell, Random Walks and Electric Networks, 1984) a grid
// that grows comes down to it.
TEST(Grid, ComesDownToOneHalfBetweenNeighboursAsItGrows) {
  Number last(1);
  for (const int size : {3, 5, 7, 9}) {
    const int centre = size * size / 2;
    const Number found = number_of(resistance(grid(size, size), {centre, centre + 1}));
    EXPECT_LT(found, last);
    EXPECT_GT(found, Number::quotient(1, 2));
    last = found;
  }
}

// OEIS A337516, comment: the resistance of a bridge with arms x1 (A-B), x2 (A-C), x3 (B-C, the
// middle), x4 (B-D), x5 (C-D).
std::string bridge_formula(const std::vector<int>& x) {
  const int over = x[0] * x[1] * x[3] + x[0] * x[1] * x[4] + x[0] * x[3] * x[4] +
                   x[1] * x[3] * x[4] + x[2] * (x[1] + x[4]) * (x[0] + x[3]);
  const int under = (x[0] + x[1]) * (x[3] + x[4]) + x[2] * (x[0] + x[1] + x[3] + x[4]);
  return fraction(over, under);
}

TEST(Bridge, HasTheResistanceOfItsFormula) {
  const std::vector<std::string> ends{"A to B", "A to C", "B to C", "B to D", "C to D"};
  std::vector<int> values{1, 2, 3, 5, 8};
  do {
    std::string text;
    for (std::size_t arm = 0; arm < ends.size(); ++arm) {
      text += "resistor R" + std::to_string(arm + 1) + " = " + std::to_string(values[arm]) +
              " ohm from " + ends[arm] + "\n";
    }
    EXPECT_EQ(answers(text + "find resistance between A and D\n").front(), bridge_formula(values));
  } while (std::next_permutation(values.begin(), values.end()));
}

// R. J. Duffin, Topology of series-parallel networks, J. Math. Anal. Appl. 10 (1965) 303: it is the
// branch of the battery that makes the five resistors irreducible.
TEST(Bridge, IsReducibleBetweenTheEndsOfItsMiddle) {
  const Problem problem = read(
      "resistor R1 = 1 ohm from A to B\nresistor R2 = 1 ohm from A to C\n"
      "resistor R3 = 1 ohm from B to C\nresistor R4 = 1 ohm from B to D\n"
      "resistor R5 = 1 ohm from C to D\n"
      "find resistance between B and C\nfind resistance between A and D\n");
  const Trace trace = solve(problem);
  const CaseTrace& solved = trace.cases.front();
  EXPECT_EQ(shown(solved.answers.at(0), solved).stop, Stop::reduced);
  EXPECT_FALSE(shown(solved.answers.at(0), solved).choice.made);
  EXPECT_TRUE(shown(solved.answers.at(1), solved).choice.made);
}

// T. R. Kuphaldt, Lessons In Electric Circuits, vol. I (DC), ch. 10: currents and voltages of the
// sources alone add up, powers do not (R2 takes 8 W and 8 W alone, 32 W together).
TEST(Superposition, AddsCurrentsButNotPowers) {
  const std::vector<std::string> found =
      answers(circuit_text(network("G1-55c")) +
              "case \"first alone\": B2 = 0 V\ncase \"second alone\": B1 = 0 V\n"
              "case \"both\": B1 = 28 V, B2 = 7 V\nfind current through R2\nfind power in R2\n");
  EXPECT_EQ(found, (std::vector<std::string>{"2", "8", "2", "8", "4", "32"}));
}

// The same book, ch. 7, component failure analysis (the network of G1-54, R2 failing to a lower
// resistance): which way every voltage and current goes.
TEST(FailingPart, MovesEveryVoltageAndCurrentAsTheTableSays) {
  std::string text = circuit_text(network("G1-54")) +
                     "case \"sound\": R2 = 250 ohm\ncase \"failing\": R2 = 25 ohm\n";
  const std::vector<std::string> names{"R1", "R2", "R3", "R4"};
  for (const std::string& name : names) text += "find voltage across " + name + "\n";
  for (const std::string& name : names) text += "find current through " + name + "\n";
  text += "find current through B1\nfind resistance seen by B1\n";
  const std::vector<std::string> published{"down", "down", "up", "up", "down",
                                           "up",   "up",   "up", "up", "down"};
  const std::vector<std::string> found = answers(text);
  ASSERT_EQ(found.size(), 2 * published.size());
  for (std::size_t index = 0; index < published.size(); ++index) {
    const Number before = number_of(found[index]);
    const Number after = number_of(found[index + published.size()]);
    EXPECT_EQ(after < before ? "down" : after > before ? "up" : "same", published[index]) << index;
  }
}

}  // namespace
}  // namespace ohmfold::published

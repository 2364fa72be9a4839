// The resistance between two points as a count of trees (Kirchhoff), on random networks.
//
// R(a, b) is the weight of the spanning forests of two trees that part a from b, over the weight of
// the spanning trees, where a tree weighs the product of its conductances: G. Kirchhoff, Ann. Phys.
// Chem. 72 (1847) 497, in the form of W. Barrett, E. J. Evans, A. E. Francis, M. Kempton, J.
// Sinkovic, Discrete Appl. Math. (2020), arXiv 1901.00053. The trees are counted one by one.
#include <gtest/gtest.h>

#include <numeric>
#include <random>

#include "ohmfold/solve.h"
#include "published/networks.h"

namespace ohmfold::published {
namespace {

struct Edge {
  std::uint32_t from, to;
  int ohms;
};

struct Graph {
  std::uint32_t points = 0;
  std::vector<Edge> edges;
};

std::vector<std::uint32_t> each_alone(std::uint32_t points) {
  std::vector<std::uint32_t> tree(points);
  std::iota(tree.begin(), tree.end(), 0U);
  return tree;
}

/// Which tree each point belongs to, where the chosen edges form no loop; otherwise nothing.
std::vector<std::uint32_t> forest_of(const Graph& graph, std::uint32_t chosen) {
  std::vector<std::uint32_t> tree = each_alone(graph.points);
  for (std::size_t i = 0; i < graph.edges.size(); ++i) {
    if ((chosen >> i & 1U) == 0) continue;
    const std::uint32_t kept = tree[graph.edges[i].from];
    const std::uint32_t gone = tree[graph.edges[i].to];
    if (kept == gone) return {};
    for (std::uint32_t& each : tree) {
      if (each == gone) each = kept;
    }
  }
  return tree;
}

Number weight(const Graph& graph, std::uint32_t chosen) {
  Number product(1);
  for (std::size_t i = 0; i < graph.edges.size(); ++i) {
    if ((chosen >> i & 1U) != 0) product = product / Number(graph.edges[i].ohms);
  }
  return product;
}

struct Counted {
  Number trees, parting;  ///< spanning trees; forests of two trees with points 0 and 1 apart
};

Counted count(const Graph& graph) {
  Counted counted;
  for (std::uint32_t chosen = 0; chosen < 1U << graph.edges.size(); ++chosen) {
    const auto size = static_cast<std::uint32_t>(__builtin_popcount(chosen));
    if (size + 1 != graph.points && size + 2 != graph.points) continue;
    const std::vector<std::uint32_t> tree = forest_of(graph, chosen);
    if (tree.empty()) continue;
    if (size + 1 == graph.points) {
      counted.trees += weight(graph, chosen);
    } else if (tree[0] != tree[1]) {
      counted.parting += weight(graph, chosen);
    }
  }
  return counted;
}

std::string circuit(const Graph& graph) {
  std::string text;
  for (std::size_t i = 0; i < graph.edges.size(); ++i) {
    const Edge& edge = graph.edges[i];
    text += "resistor R" + std::to_string(i + 1) + " = " + std::to_string(edge.ohms) +
            " ohm from n" + std::to_string(edge.from) + " to n" + std::to_string(edge.to) + "\n";
  }
  return text + "find resistance between n0 and n1\n";
}

std::optional<Number> solved(const Graph& graph) {
  const Reading reading = solve(read(circuit(graph))).cases.front().answers.front().value;
  if (!reading.value) return std::nullopt;
  return reading.value->number;
}

int draw(std::mt19937& random, int least, int most) {
  return std::uniform_int_distribution<int>(least, most)(random);
}

/// Connected or not; the ends of its first part are the points 0 and 1 or others.
Graph random_graph(std::mt19937& random, int most_ohms) {
  Graph graph;
  graph.points = static_cast<std::uint32_t>(draw(random, 3, 6));
  const int last = static_cast<int>(graph.points) - 1;
  // Every point is named in the file by a part of its own to an earlier one.
  for (int point = 1; point <= last; ++point) {
    graph.edges.push_back({static_cast<std::uint32_t>(draw(random, 0, point - 1)),
                           static_cast<std::uint32_t>(point), draw(random, 1, most_ohms)});
  }
  const int more = draw(random, 1, 11 - last);
  for (int i = 0; i < more; ++i) {
    const int from = draw(random, 0, last);
    const int to = (from + draw(random, 1, last)) % (last + 1);
    graph.edges.push_back({static_cast<std::uint32_t>(from), static_cast<std::uint32_t>(to),
                           draw(random, 1, most_ohms)});
  }
  return graph;
}

TEST(KirchhoffsTrees, CountedOneByOneGiveTheResistanceOfEqualParts) {
  std::mt19937 random(1847);
  for (int round = 0; round < 150; ++round) {
    const Graph graph = random_graph(random, 1);
    const Counted counted = count(graph);
    const std::optional<Number> found = solved(graph);
    ASSERT_TRUE(found) << circuit(graph);
    EXPECT_EQ(*found, counted.parting / counted.trees) << circuit(graph);
  }
}

TEST(KirchhoffsTrees, WeighedByConductancesGiveTheResistanceOfAnyParts) {
  std::mt19937 random(1848);
  for (int round = 0; round < 150; ++round) {
    const Graph graph = random_graph(random, 12);
    const Counted counted = count(graph);
    const std::optional<Number> found = solved(graph);
    ASSERT_TRUE(found) << circuit(graph);
    EXPECT_EQ(*found, counted.parting / counted.trees) << circuit(graph);
  }
}

// The five-resistor bridge has 8 trees and 8 forests, the tetrahedron 16 and 8, K(3,3) 81 and 54
// (points of one side): counts from memory.
TEST(KirchhoffsTrees, AreAsManyAsPublishedInWellKnownGraphs) {
  const Graph bridge{4, {{0, 2, 1}, {0, 3, 1}, {2, 3, 1}, {2, 1, 1}, {3, 1, 1}}};
  EXPECT_EQ(count(bridge).trees, Number(8));
  EXPECT_EQ(count(bridge).parting, Number(8));
  const Graph tetrahedron{4, {{0, 1, 1}, {0, 2, 1}, {0, 3, 1}, {1, 2, 1}, {1, 3, 1}, {2, 3, 1}}};
  EXPECT_EQ(count(tetrahedron).trees, Number(16));
  EXPECT_EQ(count(tetrahedron).parting, Number(8));
  Graph sides{6, {}};
  for (const std::uint32_t left : {0U, 1U, 2U}) {
    for (const std::uint32_t right : {3U, 4U, 5U}) sides.edges.push_back({left, right, 1});
  }
  EXPECT_EQ(count(sides).trees, Number(81));
  EXPECT_EQ(count(sides).parting, Number(54));
}

}  // namespace
}  // namespace ohmfold::published

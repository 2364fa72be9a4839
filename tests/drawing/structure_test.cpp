// How graphs are taken apart: what is in series, what is in parallel, what is a core.
#include "drawing/structure.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

#include "support/circuit.h"

namespace ohmfold::drawing {
namespace {

/// The tree as one line: edges by their numbers, S and P with their children, C with its links.
std::string told(const std::vector<Shape>& shapes, std::uint32_t at = 0) {
  const Shape& shape = shapes[at];
  if (shape.kind == ShapeKind::edge) {
    return (shape.turned ? "-" : "") + std::to_string(shape.edge);
  }
  std::string text = shape.kind == ShapeKind::series     ? "S("
                     : shape.kind == ShapeKind::parallel ? "P("
                                                         : "C(";
  for (std::size_t i = 0; i < shape.children.size(); ++i) {
    text += (i > 0 ? " " : "") + told(shapes, shape.children[i]);
  }
  return text + ")";
}

/// A graph between vertices 0 and 1.
DrawnGraph graph(const std::vector<std::pair<std::uint32_t, std::uint32_t>>& edges) {
  DrawnGraph made;
  made.bottom = 1;
  for (const auto& [a, b] : edges) {
    made.edges.push_back({a, b, EdgeKind::part, PartId{0}});
  }
  return made;
}

std::string tree_of(const std::vector<std::pair<std::uint32_t, std::uint32_t>>& edges) {
  return told(structure(graph(edges)));
}

TEST(Structure, OfOneEdgeIsTheEdge) {
  EXPECT_EQ(tree_of({{0, 1}}), "0");
  EXPECT_EQ(tree_of({{1, 0}}), "-0");
}

TEST(Structure, GathersSeriesFromTopToBottom) {
  EXPECT_EQ(tree_of({{3, 1}, {2, 3}, {0, 2}}), "S(2 1 0)");
  EXPECT_EQ(tree_of({{1, 3}, {2, 3}, {2, 0}}), "S(-2 1 -0)");
}

TEST(Structure, GathersParallelInTheOrderOfTheFile) {
  EXPECT_EQ(tree_of({{0, 2}, {1, 0}, {2, 1}, {0, 1}}), "P(S(0 2) -1 3)");
}

TEST(Structure, NestsSeriesAndParallel) {
  EXPECT_EQ(tree_of({{0, 2}, {2, 3}, {2, 3}, {3, 1}, {0, 1}}), "P(S(0 P(1 2) 3) 4)");
}

TEST(Structure, LeavesABridgeAsACore) {
  EXPECT_EQ(tree_of({{0, 2}, {2, 1}, {0, 3}, {3, 1}, {2, 3}}), "C(0 1 2 3 4)");
}

TEST(Structure, TakesWhatIsInSeriesWithABridgeAway) {
  EXPECT_EQ(tree_of({{0, 4}, {4, 2}, {2, 1}, {4, 3}, {3, 1}, {2, 3}}), "S(0 C(1 2 3 4 5))");
}

TEST(Structure, PutsTwoBridgesSideBySide) {
  EXPECT_EQ(
      tree_of({{0, 2}, {2, 1}, {0, 3}, {3, 1}, {2, 3}, {0, 4}, {4, 1}, {0, 5}, {5, 1}, {4, 5}}),
      "P(C(0 1 2 3 4) C(5 6 7 8 9))");
}

TEST(Structure, FindsABridgeWithinTheArmOfAnother) {
  // The bridge between 2 and 1 stands in the place of one arm.
  const std::string told_tree =
      tree_of({{0, 2}, {0, 3}, {3, 1}, {2, 3}, {2, 4}, {4, 1}, {2, 5}, {5, 1}, {4, 5}});
  EXPECT_EQ(told_tree, "C(0 1 2 3 C(4 5 6 7 8))");
}

TEST(Structure, TurnsALinkOfACoreTowardsItsCorners) {
  const std::vector<Shape> shapes =
      structure(graph({{2, 0}, {2, 1}, {0, 3}, {3, 4}, {4, 1}, {2, 3}}));
  EXPECT_EQ(told(shapes), "C(0 1 2 5 S(3 4))");
  for (std::size_t i = 0; i < shapes[0].links.size(); ++i) {
    const Shape& child = shapes[shapes[0].children[i]];
    EXPECT_EQ(child.top, shapes[0].corners[shapes[0].links[i].from]);
    EXPECT_EQ(child.bottom, shapes[0].corners[shapes[0].links[i].to]);
  }
}

TEST(Structure, OfALongChainIsNotDeep) {
  std::vector<std::pair<std::uint32_t, std::uint32_t>> edges;
  constexpr std::uint32_t kParts = 100'000;
  for (std::uint32_t i = 0; i < kParts; ++i) {
    edges.emplace_back(i == 0 ? 0 : i + 1, i + 1 == kParts ? 1 : i + 2);
  }
  const std::vector<Shape> shapes = structure(graph(edges));
  EXPECT_EQ(shapes.size(), kParts + 1U);
  EXPECT_EQ(shapes.front().children.size(), kParts);
}

/// "a-b" for each edge, with "~" for a phantom and "=" for a plain line.
std::string edges_of(const std::string& text) {
  const Problem problem = test::problem_of(text);
  const DrawnGraph made = drawn_graph(set_case(problem, problem.cases.front()), PartId{0});
  std::string told_edges;
  for (const Edge& edge : made.edges) {
    const char* sign = edge.kind == EdgeKind::part ? "-" : edge.kind == EdgeKind::plain ? "=" : "~";
    told_edges += (told_edges.empty() ? "" : " ") + problem.points[made.point_of[edge.a].index] +
                  sign + problem.points[made.point_of[edge.b].index];
  }
  return told_edges;
}

TEST(DrawnGraph, TiesADeadEndBesideANeighbourFurtherDown) {
  EXPECT_EQ(edges_of("battery E = 6 V from G to T\nresistor R1 = 2 ohm from T to A\n"
                     "resistor R2 = 2 ohm from A to G\nresistor R3 = 3 ohm from A to B\n"),
            "T-A A-G A-B B~G");
}

TEST(DrawnGraph, TiesAChainOfDeadEndsAtItsLastEnd) {
  EXPECT_EQ(edges_of("battery E = 6 V from G to T\nresistor R1 = 2 ohm from T to G\n"
                     "resistor R2 = 2 ohm from T to A\nresistor R3 = 3 ohm from A to B\n"),
            "T-G T-A A-B B~G");
}

TEST(DrawnGraph, TiesAPieceByItselfToBothSidesOfTheFrame) {
  EXPECT_EQ(edges_of("battery E = 6 V from G to T\nresistor R1 = 2 ohm from T to G\n"
                     "resistor R2 = 2 ohm from A to B\n"),
            "T-G A-B T~A B~G");
}

TEST(DrawnGraph, ClosesAnOpenFrame) {
  EXPECT_EQ(edges_of("battery E = 6 V from G to T\nresistor R1 = 2 ohm from T to A\n"),
            "T-A T~G A~G");
}

TEST(DrawnGraph, GivesAPartOnOnePointALoop) {
  EXPECT_EQ(edges_of("battery E = 6 V from G to T\nresistor R1 = 2 ohm from T to G\n"
                     "resistor R2 = 2 ohm from T to T\n"),
            "T-G T=T T-T T~G");
}

}  // namespace
}  // namespace ohmfold::drawing

// Trees by explicit stacks: a ladder is as deep as it is long.
#include "shapes.h"

#include <algorithm>
#include <numeric>
#include <random>

namespace ohmfold::bench {
namespace {

constexpr std::uint32_t kNone = UINT32_MAX;

// A tree under construction, from the root down.
struct Node {
  bool is_leaf = true;
  bool series = false;
  std::uint32_t first = kNone, second = kNone;
};

std::uint32_t split(std::vector<Node>& nodes, std::uint32_t at, bool series) {
  const auto first = static_cast<std::uint32_t>(nodes.size());
  nodes.resize(nodes.size() + 2);
  nodes[at] = {false, series, first, first + 1};
  return first;
}

std::vector<Node> grow(Shape shape, std::uint32_t leaves, std::mt19937& random) {
  std::vector<Node> nodes(1);
  nodes.reserve(2 * std::size_t{leaves});
  std::vector<std::uint32_t> open{0};  // leaves that may still be split
  std::size_t next = 0;
  for (std::uint32_t count = 1; count < leaves; ++count) {
    std::uint32_t at = 0;
    bool series = (random() & 1U) != 0;
    if (shape == Shape::balanced) {
      at = open[next++];
    } else if (shape == Shape::random) {
      const std::size_t pick = random() % open.size();
      at = open[pick];
      open[pick] = open.back();
      open.pop_back();
    } else {
      at = open.back();
      series = count % 2 == 1;
    }
    const std::uint32_t first = split(nodes, at, series);
    open.push_back(first);
    open.push_back(first + 1);
  }
  return nodes;
}

}  // namespace

Tree make_tree(Shape shape, std::uint32_t leaves, std::uint32_t seed) {
  std::mt19937 random(seed);
  const std::vector<Node> nodes = grow(shape, leaves, random);
  Tree tree;
  tree.points = 2;
  std::vector<Tree::Ends> ends(nodes.size());
  std::vector<std::uint32_t> operand(nodes.size());
  ends[0] = {0, 1};
  // Children have larger numbers than their parents: down for the points, up for the joins.
  for (std::uint32_t i = 0; i < nodes.size(); ++i) {
    const Node& node = nodes[i];
    if (node.is_leaf) {
      operand[i] = static_cast<std::uint32_t>(tree.ohm.size());
      tree.ohm.push_back(static_cast<int>(random() % 10) + 1);
      tree.ends.push_back(ends[i]);
    } else if (node.series) {
      const std::uint32_t middle = tree.points++;
      ends[node.first] = {ends[i].from, middle};
      ends[node.second] = {middle, ends[i].to};
    } else {
      ends[node.first] = ends[node.second] = ends[i];
    }
  }
  for (auto i = static_cast<std::uint32_t>(nodes.size()); i-- > 0;) {
    const Node& node = nodes[i];
    if (node.is_leaf) continue;
    operand[i] = leaves + static_cast<std::uint32_t>(tree.joins.size());
    tree.joins.push_back({node.series, operand[node.first], operand[node.second]});
  }
  return tree;
}

namespace {

std::vector<std::uint32_t> shuffled(std::size_t count, std::uint32_t seed) {
  std::vector<std::uint32_t> order(count);
  std::iota(order.begin(), order.end(), 0U);
  std::shuffle(order.begin(), order.end(), std::mt19937(seed + 1));
  return order;
}

}  // namespace

Network network_of(const Tree& tree, std::uint32_t seed) {
  Network network(tree.points);
  network.reserve(tree.ohm.size() + 1);
  network.add_battery(PointId{1}, PointId{0}, Voltage{Number(12)}, Resistance{});
  for (const std::uint32_t leaf : shuffled(tree.ohm.size(), seed)) {
    network.add(ElementKind::resistor, PointId{tree.ends[leaf].from}, PointId{tree.ends[leaf].to},
                Ratio(Number(tree.ohm[leaf])));
  }
  return network;
}

std::string file_of(const Tree& tree, std::uint32_t seed) {
  std::string text = "battery E = 12 V from P1 to P0\n";
  for (const std::uint32_t leaf : shuffled(tree.ohm.size(), seed)) {
    text += "resistor R" + std::to_string(leaf + 1) + " = " + std::to_string(tree.ohm[leaf]) +
            " ohm from P" + std::to_string(tree.ends[leaf].from) + " to P" +
            std::to_string(tree.ends[leaf].to) + "\n";
  }
  return text;
}

}  // namespace ohmfold::bench

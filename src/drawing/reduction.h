// Series and parallel, as far as they go, on a graph of links: the tree that they build.
#pragma once

#include <cstdint>
#include <vector>

namespace ohmfold::drawing {

/// A link of the graph at hand; it stands for a node of the tree.
struct Link {
  std::uint32_t a = 0, b = 0;  ///< vertices
  std::uint32_t node = 0;      ///< its own ends are a and b, in this order or the other one
};

enum class NodeKind : std::uint8_t { edge, series, parallel, core, same };

/// A node of the tree while it is built; series and parallel have two children each, until
/// structure() gathers them.
struct Node {
  NodeKind kind = NodeKind::edge;
  std::uint32_t edge = 0;
  std::uint32_t a = 0, b = 0;
  std::vector<std::uint32_t> children;  ///< of series: in order from a to b; of same: one
  std::vector<std::uint32_t> corners;   ///< of a core: its vertices, a and b first
  std::vector<Link> links;              ///< of a core, by vertices
};

/// Replaces links in series and in parallel by new nodes until none is left; top and bottom stay.
/// Cost: near-linear in the links.
[[nodiscard]] std::vector<Link> reduce_links(const std::vector<Link>& links, std::uint32_t top,
                                             std::uint32_t bottom, std::vector<Node>& nodes);

}  // namespace ohmfold::drawing

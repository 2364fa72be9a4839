// Takes a graph apart, piece after piece, and lays the tree out from its top.
#include "drawing/structure.h"

#include <algorithm>
#include <unordered_map>
#include <utility>

#include "drawing/reduction.h"
#include "drawing/splitting.h"

namespace ohmfold::drawing {

namespace {

/// Builds the nodes: pieces wait on a stack, each with the node that is to stand for it.
class Building {
 public:
  explicit Building(const DrawnGraph& graph) {
    Piece whole{{}, graph.top, graph.bottom};
    for (std::uint32_t i = 0; i < graph.edges.size(); ++i) {
      const Edge& edge = graph.edges[i];
      nodes_.push_back({NodeKind::edge, i, edge.a, edge.b, {}, {}, {}});
      whole.links.push_back({edge.a, edge.b, i});
    }
    root_ = wait(std::move(whole));
    while (!waiting_.empty()) {
      const auto [piece, node] = std::move(waiting_.back());
      waiting_.pop_back();
      split(piece, node);
    }
  }

  [[nodiscard]] const std::vector<Node>& nodes() const { return nodes_; }
  [[nodiscard]] std::uint32_t root() const { return root_; }

 private:
  std::uint32_t wait(Piece piece) {
    const auto node = static_cast<std::uint32_t>(nodes_.size());
    nodes_.push_back({NodeKind::same, 0, piece.top, piece.bottom, {}, {}, {}});
    waiting_.emplace_back(std::move(piece), node);
    return node;
  }

  void split(const Piece& piece, std::uint32_t node) {
    Piece left{reduce_links(piece.links, piece.top, piece.bottom, nodes_), piece.top, piece.bottom};
    if (left.links.size() == 1) {
      nodes_[node].children = {left.links.front().node};
      return;
    }
    std::vector<Piece> chain = in_series(left);
    if (chain.size() > 1) return gather(NodeKind::series, std::move(chain), node);
    std::vector<Piece> beside = in_parallel(left);
    if (beside.size() > 1) return gather(NodeKind::parallel, std::move(beside), node);
    if (std::optional<Piece> inner = inner_piece(left)) {
      std::erase_if(left.links, [&](const Link& link) {
        return std::any_of(inner->links.begin(), inner->links.end(),
                           [&](const Link& other) { return other.node == link.node; });
      });
      const std::uint32_t a = inner->top;
      const std::uint32_t b = inner->bottom;
      left.links.push_back({a, b, wait(std::move(*inner))});
      waiting_.emplace_back(std::move(left), node);
      return;
    }
    make_core(left, node);
  }

  /// A piece of one link is that link.
  void gather(NodeKind kind, std::vector<Piece> pieces, std::uint32_t node) {
    std::vector<std::uint32_t> children;
    for (Piece& piece : pieces) {
      const bool single = piece.links.size() == 1;
      children.push_back(single ? piece.links.front().node : wait(std::move(piece)));
    }
    nodes_[node].kind = kind;
    nodes_[node].children = std::move(children);
  }

  void make_core(Piece& piece, std::uint32_t node) {
    std::vector<std::uint32_t> corners;
    for (const Link& link : piece.links) {
      for (const std::uint32_t vertex : {link.a, link.b}) {
        if (vertex != piece.top && vertex != piece.bottom) corners.push_back(vertex);
      }
    }
    std::sort(corners.begin(), corners.end());
    corners.erase(std::unique(corners.begin(), corners.end()), corners.end());
    corners.insert(corners.begin(), {piece.top, piece.bottom});
    nodes_[node].kind = NodeKind::core;
    nodes_[node].corners = std::move(corners);
    nodes_[node].links = std::move(piece.links);
  }

  std::vector<Node> nodes_;
  std::vector<std::pair<Piece, std::uint32_t>> waiting_;
  std::uint32_t root_ = 0;
};

/// A node, and which of its ends is the upper one.
struct Hung {
  std::uint32_t node = 0;
  std::uint32_t top = 0;
};

/// Turns nodes into shapes: nested series and parallel become one, and everything hangs from its
/// top.
class Hanging {
 public:
  explicit Hanging(const Building& built) : nodes_(built.nodes()) {
    open_.push_back(settled({built.root(), nodes_[built.root()].a}));
    shapes_.emplace_back();
    for (std::size_t i = 0; i < open_.size(); ++i) hang(i);
    order();
  }

  [[nodiscard]] std::vector<Shape> shapes() && { return std::move(shapes_); }

 private:
  [[nodiscard]] Hung settled(Hung hung) const {
    while (nodes_[hung.node].kind == NodeKind::same) {
      hung.node = nodes_[hung.node].children.front();
    }
    return hung;
  }

  [[nodiscard]] std::uint32_t bottom_of(const Hung& hung) const {
    const Node& node = nodes_[hung.node];
    return node.a == hung.top ? node.b : node.a;
  }

  /// The children of a node from its top to its bottom, or all of them from its top.
  [[nodiscard]] std::vector<Hung> children(const Hung& hung) const {
    const Node& node = nodes_[hung.node];
    std::vector<Hung> found;
    std::uint32_t at = hung.top;
    const bool turned = node.kind == NodeKind::series && node.a != hung.top;
    for (std::size_t i = 0; i < node.children.size(); ++i) {
      const std::size_t place = turned ? node.children.size() - 1 - i : i;
      found.push_back(settled({node.children[place], at}));
      if (node.kind == NodeKind::series) at = bottom_of(found.back());
    }
    return found;
  }

  /// All that a node of series or parallel consists of, through nodes of its own kind.
  [[nodiscard]] std::vector<Hung> gathered(const Hung& start) const {
    const NodeKind kind = nodes_[start.node].kind;
    std::vector<Hung> found;
    std::vector<Hung> stack{start};
    while (!stack.empty()) {
      const Hung at = stack.back();
      stack.pop_back();
      if (nodes_[at.node].kind != kind) {
        found.push_back(at);
        continue;
      }
      const std::vector<Hung> within = children(at);
      stack.insert(stack.end(), within.rbegin(), within.rend());
    }
    return found;
  }

  void hang_below(std::size_t shape, const std::vector<Hung>& children) {
    for (const Hung& child : children) {
      shapes_[shape].children.push_back(static_cast<std::uint32_t>(open_.size()));
      open_.push_back(settled(child));
      shapes_.emplace_back();
    }
  }

  void hang(std::size_t number) {
    const Hung hung = open_[number];
    const Node& node = nodes_[hung.node];
    shapes_[number].top = hung.top;
    shapes_[number].bottom = bottom_of(hung);
    switch (node.kind) {
      case NodeKind::edge:
        shapes_[number].kind = ShapeKind::edge;
        shapes_[number].edge = node.edge;
        shapes_[number].turned = node.a != hung.top;
        return;
      case NodeKind::series:
      case NodeKind::parallel:
        shapes_[number].kind =
            node.kind == NodeKind::series ? ShapeKind::series : ShapeKind::parallel;
        return hang_below(number, gathered(hung));
      case NodeKind::core:
        return hang_core(number, node, hung.top);
      case NodeKind::same:
        return;  // settled
    }
  }

  void hang_core(std::size_t number, const Node& node, std::uint32_t top) {
    Shape& shape = shapes_[number];
    shape.kind = ShapeKind::core;
    shape.corners = node.corners;
    if (shape.corners.front() != top) std::swap(shape.corners[0], shape.corners[1]);
    std::unordered_map<std::uint32_t, std::uint32_t> corner;
    for (std::uint32_t i = 0; i < shape.corners.size(); ++i) corner[shape.corners[i]] = i;
    std::vector<Hung> below;
    for (const Link& link : node.links) {
      shape.links.push_back({corner.at(link.a), corner.at(link.b)});
      below.push_back({link.node, link.a});
    }
    hang_below(number, below);
  }

  /// Parallel shapes in the order of the first edges within them.
  void order() {
    std::vector<std::uint32_t> first(shapes_.size(), UINT32_MAX);
    for (std::size_t i = shapes_.size(); i-- > 0;) {
      Shape& shape = shapes_[i];
      if (shape.kind == ShapeKind::edge) first[i] = shape.edge;
      for (const std::uint32_t child : shape.children) first[i] = std::min(first[i], first[child]);
      if (shape.kind != ShapeKind::parallel) continue;
      std::stable_sort(shape.children.begin(), shape.children.end(),
                       [&](std::uint32_t a, std::uint32_t b) { return first[a] < first[b]; });
    }
  }

  const std::vector<Node>& nodes_;
  std::vector<Hung> open_;
  std::vector<Shape> shapes_;
};

}  // namespace

std::vector<Shape> structure(const DrawnGraph& graph) {
  return Hanging(Building(graph)).shapes();
}

}  // namespace ohmfold::drawing

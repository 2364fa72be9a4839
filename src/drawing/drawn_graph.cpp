// Turns a network into a graph with a frame; ties to the frame what hangs loose.
#include "drawing/drawn_graph.h"

#include <algorithm>
#include <unordered_map>

#include "circuit/blocks.h"

namespace ohmfold::drawing {

namespace {

constexpr std::uint32_t kNone = UINT32_MAX;

PartId chosen_root(const Network& network, PartId wanted) {
  if (wanted.index < network.part_count() && network.is_alive(wanted)) return wanted;
  PartId first;
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    const PartId part{i};
    if (!network.is_alive(part)) continue;
    if (is_source(network.kind(part))) return part;
    if (!first.exists()) first = part;
  }
  return first;
}

/// Does current leave the part at its second point?
bool feeds_second(ElementKind kind) {
  return kind == ElementKind::battery || kind == ElementKind::current_source;
}

/// Vertices for points, and further ones where a part has both ends on one point.
class Vertices {
 public:
  explicit Vertices(DrawnGraph& graph, std::size_t points) : graph_(graph), of_(points, kNone) {}

  std::uint32_t of(PointId point) {
    if (of_[point.index] == kNone) of_[point.index] = another(point);
    return of_[point.index];
  }
  std::uint32_t another(PointId point) {
    graph_.point_of.push_back(point);
    return static_cast<std::uint32_t>(graph_.point_of.size() - 1);
  }
  /// The two ends of a part; of a part on one point the second end gets a vertex of its own.
  std::pair<std::uint32_t, std::uint32_t> ends(const Network& network, PartId part) {
    const std::uint32_t first = of(network.from(part));
    if (network.from(part) != network.to(part)) return {first, of(network.to(part))};
    const std::uint32_t second = another(network.to(part));
    graph_.edges.push_back({first, second, EdgeKind::plain, {}});
    return {first, second};
  }

 private:
  DrawnGraph& graph_;
  std::vector<std::uint32_t> of_;
};

/// Adds the phantoms, block after block from the frame outwards.
class Ties {
 public:
  explicit Ties(DrawnGraph& graph)
      : graph_(graph),
        blocks_at_(graph.point_of.size()),
        distance_(graph.point_of.size(), kNone),
        next_to_(graph.point_of.size(), kNone),
        links_(graph.point_of.size()) {
    find_blocks();
  }

  void tie() {
    if (edges_of_[main_].size() == 1) add_phantom(graph_.top, graph_.bottom);
    tied_[main_] = true;
    measure(main_, graph_.top);
    // The frame is a neighbour of last resort for what hangs from its two points.
    if (next_to_[graph_.top] == kNone) next_to_[graph_.top] = graph_.bottom;
    if (next_to_[graph_.bottom] == kNone) next_to_[graph_.bottom] = graph_.top;
    tie_outwards(main_);
    for (std::uint32_t block = 0; block < edges_of_.size(); ++block) {
      if (tied_[block]) continue;
      const std::uint32_t first = edge(edges_of_[block].front()).a;
      tied_[block] = true;
      const std::uint32_t last = measure(block, first);
      add_phantom(graph_.top, first);
      add_phantom(last, graph_.bottom);
      tie_outwards(block);
    }
  }

 private:
  /// By number; the root comes after all others.
  [[nodiscard]] Edge edge(std::uint32_t number) const {
    if (number < edge_count_) return graph_.edges[number];
    return {graph_.top, graph_.bottom, EdgeKind::part, graph_.root};
  }

  void add_phantom(std::uint32_t a, std::uint32_t b) {
    graph_.edges.push_back({a, b, EdgeKind::phantom, {}});
  }

  void find_blocks() {
    edge_count_ = static_cast<std::uint32_t>(graph_.edges.size());
    Network wires(graph_.point_of.size());
    std::vector<PartId> all;
    for (std::uint32_t i = 0; i <= edge_count_; ++i) {
      const Edge one = edge(i);
      all.push_back(wires.add(ElementKind::wire, PointId{one.a}, PointId{one.b}));
    }
    const std::vector<std::uint32_t> number = blocks(wires, all);
    edges_of_.resize(*std::max_element(number.begin(), number.end()) + 1);
    for (std::uint32_t i = 0; i <= edge_count_; ++i) {
      edges_of_[number[i]].push_back(i);
      for (const std::uint32_t vertex : {edge(i).a, edge(i).b}) {
        std::vector<std::uint32_t>& at = blocks_at_[vertex];
        if (at.empty() || at.back() != number[i]) at.push_back(number[i]);
      }
    }
    main_ = number[edge_count_];
    tied_.resize(edges_of_.size(), false);
  }

  /// Distances within a block from one of its vertices, and for each vertex a neighbour, further
  /// away where there is one. Gives the vertex that lies farthest.
  std::uint32_t measure(std::uint32_t block, std::uint32_t start) {
    std::vector<std::uint32_t> order{start};
    for (const std::uint32_t number : edges_of_[block]) {
      if (number == edge_count_) continue;  // the way through the root is no way down
      links_[edge(number).a].push_back(edge(number).b);
      links_[edge(number).b].push_back(edge(number).a);
    }
    const std::uint32_t before = distance_[start];
    distance_[start] = 0;
    for (std::size_t i = 0; i < order.size(); ++i) {
      const std::uint32_t at = order[i];
      for (const std::uint32_t other : links_[at]) {
        if (distance_[other] == kNone) {
          distance_[other] = distance_[at] + 1;
          order.push_back(other);
        }
      }
    }
    for (const std::uint32_t at : order) {
      for (const std::uint32_t other : links_[at]) {
        const bool down = distance_[other] > distance_[at];
        if (down || next_to_[at] == kNone) next_to_[at] = other;
      }
    }
    for (const std::uint32_t at : order) links_[at].clear();
    const std::uint32_t last = order.back();
    // The start belongs to the block that this one hangs from: its distance there counts.
    if (before != kNone) distance_[start] = before;
    vertices_of_.assign(order.begin(), order.end());
    return last;
  }

  void tie_outwards(std::uint32_t block) {
    std::vector<std::uint32_t> open = vertices(block);
    for (std::size_t i = 0; i < open.size(); ++i) {
      const std::uint32_t at = open[i];
      for (const std::uint32_t hanging : blocks_at_[at]) {
        if (tied_[hanging]) continue;
        tied_[hanging] = true;
        tie_block(hanging, at);
        open.insert(open.end(), vertices_of_.begin() + 1, vertices_of_.end());
      }
    }
  }

  /// Ties a block that hangs from one vertex. What hangs from a loose end goes on from there.
  void tie_block(std::uint32_t block, std::uint32_t at) {
    const std::uint32_t beside = next_to_[at];
    const std::uint32_t last = measure(block, at);
    const auto loose = loose_.find(at);
    if (loose == loose_.end()) {
      next_to_[at] = beside;
      loose_[last] = graph_.edges.size();
      add_phantom(last, beside);
      return;
    }
    const std::size_t phantom = loose->second;
    loose_.erase(loose);
    graph_.edges[phantom].a = last;
    loose_[last] = phantom;
  }

  [[nodiscard]] std::vector<std::uint32_t> vertices(std::uint32_t block) const {
    std::vector<std::uint32_t> found;
    for (const std::uint32_t number : edges_of_[block]) {
      found.push_back(edge(number).a);
      found.push_back(edge(number).b);
    }
    std::sort(found.begin(), found.end());
    found.erase(std::unique(found.begin(), found.end()), found.end());
    return found;
  }

  DrawnGraph& graph_;
  std::uint32_t edge_count_ = 0;
  std::vector<std::vector<std::uint32_t>> edges_of_;   // by block
  std::vector<std::vector<std::uint32_t>> blocks_at_;  // by vertex
  std::vector<std::uint32_t> distance_;                // by vertex
  std::vector<std::uint32_t> next_to_;                 // by vertex: beside which edge to hang
  std::vector<std::vector<std::uint32_t>> links_;      // by vertex, empty between calls of measure
  std::vector<std::uint32_t> vertices_of_;             // of the block measured last
  std::vector<bool> tied_;                             // by block
  std::unordered_map<std::uint32_t, std::size_t> loose_;  // vertices from which a phantom leads on
  std::uint32_t main_ = 0;
};

}  // namespace

DrawnGraph drawn_graph(const Network& network, PartId wanted) {
  DrawnGraph graph;
  graph.root = chosen_root(network, wanted);
  if (!graph.root.exists()) return graph;
  Vertices vertices(graph, network.point_count());
  auto [first, second] = vertices.ends(network, graph.root);
  graph.first_on_top = !feeds_second(network.kind(graph.root));
  if (!graph.first_on_top) std::swap(first, second);
  graph.top = first;
  graph.bottom = second;
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    const PartId part{i};
    if (!network.is_alive(part) || part == graph.root) continue;
    // A port that is not the root marks two points and is nothing to draw.
    if (network.kind(part) == ElementKind::port) continue;
    const auto [a, b] = vertices.ends(network, part);
    // What a case takes out leaves its place empty, so that all else stands as in other cases.
    const bool gone = network.kind(part) == ElementKind::taken_out;
    graph.edges.push_back({a, b, gone ? EdgeKind::phantom : EdgeKind::part, part});
  }
  Ties(graph).tie();
  return graph;
}

}  // namespace ohmfold::drawing

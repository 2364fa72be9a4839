// A network as its one source sees it: a graph with weights, and the symmetries of that graph.
#pragma once

#include <optional>
#include <vector>

#include "ohmfold/network.h"

namespace ohmfold {

/// Points numbered among themselves, and what conducts between them.
struct SeenGraph {
  struct Edge {
    std::uint32_t to;
    std::uint32_t weight;  ///< index into `conductances`
    friend auto operator<=>(const Edge&, const Edge&) = default;
  };

  std::vector<PointId> points;            ///< in order
  std::vector<std::vector<Edge>> edges;   ///< by point, sorted; one for each neighbour
  std::vector<Number> conductances;       ///< each once
  std::uint32_t terminal = 0, other = 0;  ///< where the source is joined
  std::size_t edge_count = 0;

  /// The number of a point, where a resistor or the source is joined there.
  [[nodiscard]] std::optional<std::uint32_t> number_of(PointId point) const;
};

/// The graph of a network that consists of resistors and one source between two different points;
/// nothing for any other. Cost: near linear where resistances are few different ones.
[[nodiscard]] std::optional<SeenGraph> seen_graph(const Network& network);

/// Where each point goes: the same graph again.
using Symmetry = std::vector<std::uint32_t>;

/// Looks for symmetries within a budget, and remembers those that it found.
///
/// Method: points are told apart by their weights and neighbours until no more can be (colour
/// refinement, in both copies of the graph at once), then one is set by choice, and so on
/// (individualisation and refinement: McKay, Congressus Numerantium 30 (1981) 45, from memory). A
/// point stays where it can, so that symmetries come out as exchanges of few points.
class SymmetrySearch {
 public:
  explicit SymmetrySearch(const SeenGraph& graph);

  /// A symmetry that keeps both terminals and moves `from` to `to`.
  [[nodiscard]] std::optional<Symmetry> keeping(std::uint32_t from, std::uint32_t to);
  /// A symmetry that exchanges the terminals and keeps `point`.
  [[nodiscard]] std::optional<Symmetry> turning(std::uint32_t point);
  /// Points that refinement cannot tell apart, terminals set: by point, equal numbers. Others are
  /// no candidates for keeping().
  [[nodiscard]] const std::vector<std::uint32_t>& cells() const { return cells_; }

 private:
  // Colours of the points in both copies of the graph, one after the other.
  using Colours = std::vector<std::uint32_t>;
  using Wishes = std::vector<std::pair<std::uint32_t, std::uint32_t>>;
  // A point of the first copy that is to be set, and where in the second it can go.
  struct Choice {
    Colours colours;
    std::uint32_t point = 0;
    std::vector<std::uint32_t> candidates;  // those still to try, the best last
    bool is_discrete = false;               // all points are told apart: nothing to set
  };

  [[nodiscard]] bool can_exchange(std::uint32_t a, std::uint32_t b) const;
  [[nodiscard]] std::optional<Symmetry> search(const Wishes& wishes);
  [[nodiscard]] bool refine(Colours& colours);
  [[nodiscard]] std::size_t work_of_refining() const { return 4 * (graph_.edge_count + count_); }
  void choose(Choice& now) const;
  [[nodiscard]] Symmetry read(const Colours& colours) const;
  [[nodiscard]] bool is_symmetry(const Symmetry& symmetry) const;

  const SeenGraph& graph_;
  std::uint32_t count_;
  std::size_t work_left_;
  std::vector<std::uint32_t> cells_;
  std::vector<Symmetry> known_;   // that keep the terminals
  std::vector<Symmetry> turned_;  // that exchange them
};

}  // namespace ohmfold

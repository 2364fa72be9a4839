// A circuit as a graph whose edges stand for paths of its parts, thinned out as far as no bridge
// that is embedded in it gets lost.
#pragma once

#include <cstdint>
#include <utility>
#include <vector>

#include "ohmfold/network.h"

namespace ohmfold {

/// The parts of graph() that live are *edges*: each is a part of the circuit, with its id, or was
/// made and stands for a path of earlier edges. No two of these paths share a part or an inner
/// point, so paths of edges that meet in their ends only are such paths of parts too.
class PathGraph {
 public:
  /// What conducts in the circuit, cleared of all that no closed path through a source runs
  /// through. Sources and ports are edges; points that ideal wires join are one point. Requires a
  /// network as a case sets it. Cost: linear.
  explicit PathGraph(const Network& start);

  [[nodiscard]] const Network& graph() const { return graph_; }
  /// The living edges, by id.
  [[nodiscard]] const std::vector<PartId>& edges() const { return edges_; }
  [[nodiscard]] bool holds_source(PartId edge) const { return marks_[edge.index].holds_source; }
  /// How many parts of the circuit the edge stands for.
  [[nodiscard]] std::size_t length(PartId edge) const { return marks_[edge.index].length; }

  /// Takes away what is joined to nothing at one end, keeps one edge between two points, and makes
  /// one edge of two that meet at a point by themselves, until no more can be done. Nothing is left
  /// exactly where the graph is series-parallel; otherwise at least three edges meet at each point
  /// and no two join the same two points. Of edges between the same two points one that holds a
  /// source is kept, else the one that stands for the fewest parts. Cost: linear in the edges.
  void thin_out();

  /// Keeps these edges, takes away all others, and puts in one edge for `detour`, where that has
  /// edges: a path of those taken away, from `from` to `to`.
  void keep(const std::vector<PartId>& kept, const std::vector<PartId>& detour = {},
            PointId from = {}, PointId to = {});

  /// The parts of the circuit along a path of edges that begins at `from`, appended to `parts`.
  void expand(const std::vector<PartId>& path, PointId from, std::vector<PartId>& parts) const;

 private:
  struct Marks {
    std::size_t length = 1;
    bool holds_source = false;
    std::uint32_t begin = 0, end = 0;  ///< of its path in pool_, where it was made
  };

  void clear_up();
  void take_away(const std::vector<PartId>& edges);
  void note_edges();
  [[nodiscard]] bool is_better(PartId one, PartId other) const;
  [[nodiscard]] PartId best_twin(PartId edge) const;
  PartId keep_best_twin(PartId edge, std::vector<PointId>& changed);
  void combine_at(PointId point, std::vector<PointId>& changed);
  PartId replace(const std::vector<PartId>& removed, const std::vector<PartId>& path, PointId from,
                 PointId to);

  Network graph_;
  std::vector<PartId> edges_;
  std::vector<Marks> marks_;  // by edge
  std::vector<PartId> pool_;  // the paths of made edges, one after the other
};

}  // namespace ohmfold

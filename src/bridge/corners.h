// Four corners and six paths around one edge of a graph, or what stands in the way of them.
#pragma once

#include <cstdint>
#include <vector>

#include "ohmfold/network.h"

namespace ohmfold {

/// What joins the two ends of an edge besides the edge: two paths that meet in these ends only, and
/// a path that links them without touching the ends. With the edge these make four corners (the
/// edge's ends and the link's) and six paths.
struct Corners {
  PartId edge;
  std::vector<PartId> first;    ///< from the edge's first end to its second; never empty
  std::vector<PartId> second;   ///< empty: one point lies on all paths between the ends
  std::vector<PartId> link;     ///< empty: only through the ends can one go from first to second
  PointId on_first, on_second;  ///< where the link begins and ends

  [[nodiscard]] bool are_complete() const { return !link.empty(); }
};

/// Looks around edges of one graph. Keeps its working memory from one look to the next.
class CornerSearch {
 public:
  /// Requires a graph that outlives the search and is not changed meanwhile.
  explicit CornerSearch(const Network& graph);

  /// Requires a living edge that lies on a closed path and has no twin. Method: two augmenting
  /// walks, each point passed once (Menger's theorem), then a walk from path to path; all breadth
  /// first. Cost: linear in the edges.
  [[nodiscard]] Corners around(PartId edge);

 private:
  // A point as a walk meets it. On a point of the first path the second walk may find itself held:
  // it can only go back along that path from there.
  using Place = std::uint32_t;
  static Place free_at(PointId point) { return 2 * point.index; }
  static Place held_at(PointId point) { return 2 * point.index + 1; }
  static PointId point_of(Place place) { return PointId{place / 2}; }

  struct Arrival {
    std::uint32_t round = 0;  // of the walk that came here
    Place from = 0;
    PartId by;  // none where the walk began
  };

  void begin_walk();
  bool reach(Place place, Place from = 0, PartId by = {});
  [[nodiscard]] std::vector<PartId> trail(PointId to) const;

  [[nodiscard]] std::vector<PartId> some_path(PartId edge);
  [[nodiscard]] bool is_inner(PointId point) const { return before_[point.index].exists(); }
  void mark_path(const Corners& corners);
  void unmark(const std::vector<PartId>& edges);
  [[nodiscard]] std::vector<PartId> second_way(PartId edge);
  bool go_on(Place place, PartId edge);
  void part_ways(Corners& corners, const std::vector<PartId>& way);
  [[nodiscard]] std::vector<PartId> follow_chosen(PartId edge, PartId first) const;

  enum class Side : std::uint8_t { neither, first, second };
  void set_sides(const Corners& corners, Side first, Side second);
  void find_link(Corners& corners);

  const Network& graph_;
  std::vector<Arrival> arrivals_;  // by place
  std::vector<Place> open_;        // places reached, in order
  std::uint32_t round_ = 0;
  std::vector<PartId> before_;   // by point: for inner points of the first path, its edge to there
  std::vector<Side> sides_;      // by point: within which of the two paths
  std::vector<bool> is_chosen_;  // by edge
};

}  // namespace ohmfold

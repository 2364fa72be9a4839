// Spanning forests of a network, the loops that the other parts close, and what lies on loops.
#pragma once

#include <cstdint>
#include <vector>

#include "ohmfold/network.h"

namespace ohmfold {

/// A spanning forest over some parts of a network; every point is in it, if need be by itself.
struct SpanningForest {
  std::vector<PartId> up;      ///< by point: the part that leads towards the root, or none
  std::vector<PointId> order;  ///< all points, each after the one above it
  std::vector<std::uint32_t> component;  ///< by point: equal where points hang together
  std::vector<std::uint32_t> depth;      ///< by point: how many parts lie between it and its root
  std::vector<PartId> chords;            ///< the parts outside the forest, in the order given

  [[nodiscard]] bool joined(PointId a, PointId b) const {
    return component[a.index] == component[b.index];
  }
  /// The next point towards the root. Requires a point that is no root.
  [[nodiscard]] PointId above(const Network& network, PointId point) const {
    return network.across(up[point.index], point);
  }
};

/// Breadth first from the first point of each component. `parts` may be any parts with their ends
/// in the network, each once; others are as if not there. Cost: linear in points and parts.
[[nodiscard]] SpanningForest span_forest(const Network& network, const std::vector<PartId>& parts);

/// The loop that `chord` closes with the forest: the chord first, then the parts from its second
/// point back to its first. Requires that the forest joins its ends. Cost: the loop's length.
[[nodiscard]] std::vector<PartId> fundamental_loop(const Network& network,
                                                   const SpanningForest& forest, PartId chord);

/// By PartId, for all parts of the network: is it one of those that the forest was made from, and
/// does it lie on a closed path of them? Cost: near linear.
[[nodiscard]] std::vector<bool> on_loops(const Network& network, const SpanningForest& forest);

}  // namespace ohmfold

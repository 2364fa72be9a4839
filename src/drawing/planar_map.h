// A graph without crossings: in which order the edges lie around each corner.
#pragma once

#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

namespace ohmfold::drawing {

using CornerPair = std::pair<std::uint32_t, std::uint32_t>;

/// An embedding in the plane. After the edges it was asked for comes the outer edge, from corner 0
/// to corner 1, and then edges that are not there, added so that no corner is a cut.
struct PlanarMap {
  std::vector<CornerPair> edges;
  /// By corner: its edges in the order in which they lie around it, the same way round everywhere.
  std::vector<std::vector<std::uint32_t>> around;
  std::size_t outer = 0;  ///< number of the outer edge
};

/// Nothing where the edges with one from corner 0 to corner 1 are not planar. Requires at least two
/// corners and no loops. Boyer and Myrvold 2004, as in the Boost Graph Library. Cost: near-linear;
/// there, long faces cost up to the square of their length.
[[nodiscard]] std::optional<PlanarMap> embed(std::uint32_t corners,
                                             const std::vector<CornerPair>& edges);

/// Which edges to keep so that they are planar with an edge from corner 0 to corner 1: earlier ones
/// first, and no other could be added. Of very large graphs fewer are kept, so that time is
/// bounded.
[[nodiscard]] std::vector<bool> planar_subset(std::uint32_t corners,
                                              const std::vector<CornerPair>& edges);

}  // namespace ohmfold::drawing

// What is to be placed, as a graph in which every edge lies on a closed path with the root.
//
// A textbook figure has a frame: the source at one side, everything else between its two points. So
// that one method can place all of a network, what hangs loose is tied to the frame with edges that
// are not drawn: a dead end lies beside a neighbour of the point that it hangs from, a piece by
// itself beside the whole.
#pragma once

#include <cstdint>
#include <vector>

#include "ohmfold/network.h"

namespace ohmfold::drawing {

enum class EdgeKind : std::uint8_t {
  part,
  plain,   ///< a line between two places of one point: closes the loop of a part on one point
  phantom  ///< not drawn
};

struct Edge {
  std::uint32_t a = 0, b = 0;  ///< vertices: for a part those of its first and second point
  EdgeKind kind = EdgeKind::part;
  PartId part;
};

struct DrawnGraph {
  std::vector<PointId> point_of;      ///< by vertex; a point may have several
  std::vector<Edge> edges;            ///< without the root
  PartId root;                        ///< none where no part is alive
  std::uint32_t top = 0, bottom = 0;  ///< the root's vertices: current runs down outside it
  bool first_on_top = false;          ///< is the root's first point at the top?
};

/// All living parts, with edges added so that with the root the graph is two-connected; phantoms
/// never spoil series and parallel. `wanted`: the root that is asked for; where it is none or not
/// alive, the first source, else the first part is taken. Cost: near-linear.
[[nodiscard]] DrawnGraph drawn_graph(const Network& network, PartId wanted);

}  // namespace ohmfold::drawing

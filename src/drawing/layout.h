// Places a network as a textbook draws it: the source at the left, current downwards, parts in
// parallel side by side, bridges as diamonds.
#pragma once

#include <optional>
#include <vector>

#include "drawing/placement.h"
#include "ohmfold/network.h"
#include "ohmfold/problem.h"

namespace ohmfold::drawing {

struct LayoutOptions {
  /// The source or port that the network is seen from; it lies at the left. None: the first part.
  PartId root = {};
  /// By PointId: 0 for the highest potential, counting up as it falls; equal ones are equal. May be
  /// empty. Only decides what series and parallel leave open.
  std::vector<int> heights = {};
  /// May lines run at other angles than right ones (diamonds, cubes)? A terminal cannot draw them.
  bool slanted = true;
  /// Where the file wants points to be; y counts upwards, in cells. Points of the file may have
  /// been merged: Network::representative tells.
  std::vector<PlaceHint> hints = {};
};

/// A placement of all living parts. Equal input gives equal output. Cost: near-linear in the parts
/// where the network is series-parallel or planar.
[[nodiscard]] Placement lay_out(const Network& network, const LayoutOptions& options);

}  // namespace ohmfold::drawing

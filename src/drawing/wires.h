// The wires of one point as a graph of spots: which lead on to which, and which lead nowhere.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "drawing/geometry.h"

namespace ohmfold::drawing {

/// Does the spot lie on the segment, ends included?
[[nodiscard]] bool lies_on(Spot spot, const Segment& segment);

/// The path without corners in which it goes straight on. Requires two different ends.
[[nodiscard]] Path without_straight_corners(const Path& path);

/// Wires are cut where an end of another one, or one of the given spots, lies on them. Crossings in
/// the middle of both are none of these: there nothing is joined.
class WireGraph {
 public:
  /// `ends`: where parts end, or something else that stays. Cost: near-linear, but for slanted
  /// wires times spots.
  WireGraph(const std::vector<Segment>& wires, const std::vector<Spot>& ends);

  /// All spots, in their order.
  [[nodiscard]] const std::vector<Spot>& spots() const { return spots_; }
  /// How many lines meet at the spot of this index: wires, and parts that end there.
  [[nodiscard]] std::size_t lines_at(std::uint32_t spot) const {
    return near_[spot].size() + parts_[spot];
  }

  /// From one spot to another along the wires, with few corners; nothing where they do not hang
  /// together. Requires two of spots().
  [[nodiscard]] std::optional<Path> path(Spot from, Spot to) const;

  /// The wires without those that lead to no end. Pieces in line with one another are one again.
  [[nodiscard]] std::vector<Segment> pruned() const;

 private:
  void cut(const Segment& wire);
  [[nodiscard]] std::uint32_t index_of(Spot spot) const;
  [[nodiscard]] std::vector<Segment> joined(const std::vector<bool>& gone) const;

  std::vector<Spot> spots_;
  std::vector<Spot> by_row_;  ///< the same in the order of y, x
  std::vector<std::vector<std::uint32_t>> near_;
  std::vector<std::uint32_t> parts_;  ///< how many parts end at each spot
};

}  // namespace ohmfold::drawing

// What is left of a network as a network of its own, small enough to try ways on.
#pragma once

#include "ohmfold/network.h"

namespace ohmfold {

/// The living parts and their points, numbered anew in the same order, so that the same rewriting
/// makes the same things there and here.
class Core {
 public:
  /// Requires resistors and sources whose values are known. A battery becomes a port: what is left
  /// looks the same from both.
  explicit Core(const Network& whole);

  [[nodiscard]] const Network& network() const { return network_; }
  /// A place in the core, also between things made there since, as a place in the whole.
  [[nodiscard]] Place in_whole(const Place& place) const;
  [[nodiscard]] PointId in_whole(PointId point) const;

 private:
  [[nodiscard]] PartId in_whole(PartId part) const;

  Network network_;
  std::vector<PartId> parts_;    // by part of the core
  std::vector<PointId> points_;  // by point of the core
  std::uint32_t whole_parts_, whole_points_;
};

}  // namespace ohmfold

// What of a network conducts, and which currents and voltages the ideal model leaves open.
#pragma once

#include <vector>

#include "circuit/spanning.h"
#include "ohmfold/network.h"

namespace ohmfold::check {

/// The structure that all laws of a network as the case sets it need.
struct Wiring {
  std::vector<PartId> conducting;  ///< all living parts but gaps, sources of current and ports
  std::vector<PartId> gaps;
  std::vector<PartId> drives;  ///< sources of current
  SpanningForest forest;       ///< of the conducting parts
  std::vector<PartId> ideal;   ///< those that conduct without resistance: wires and ideal batteries
  /// By PartId: any current may circulate, since the part lies on a closed path of ideal parts.
  std::vector<bool> is_open;
  /// By component of the forest: does a battery lie in it, or a source of current end on it?
  std::vector<bool> is_powered;

  explicit Wiring(const Network& network);

  /// Must no current be stated? Where no battery lies, an open one may be stated as zero.
  [[nodiscard]] bool forbids_current(const Network& network, PartId part) const {
    return is_open[part.index] && is_powered[forest.component[network.from(part).index]];
  }
};

/// Does it conduct without resistance? A battery does where it has no internal resistance.
[[nodiscard]] bool is_ideal(const Network& network, PartId part);

}  // namespace ohmfold::check

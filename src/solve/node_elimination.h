// Writing the node equations of what is left down, and eliminating one unknown after the other.
#pragma once

#include <vector>

#include "ohmfold/network.h"
#include "ohmfold/node_elimination.h"

namespace ohmfold {

/// The elimination for the living parts `left` of a network, with the potential of `ground` at 0 V.
/// Nothing at all (no unknowns, no equations) where the ground is none of their ends, where they
/// are in several pieces, or where a port is among them. Requires that no loop of ideal batteries
/// contradicts itself. Cost: linear, but for a few unknowns.
[[nodiscard]] NodeElimination write_elimination(const Network& network,
                                                const std::vector<PartId>& left, PointId ground);

}  // namespace ohmfold

// Blocks of a network: the pieces in which any two parts lie on a common closed path.
#pragma once

#include <cstdint>
#include <vector>

#include "ohmfold/network.h"

namespace ohmfold {

/// The block of each listed part, as a number counting from 0; parts of one block lie on closed
/// paths together, and a part that lies on no closed path (or has both ends on one point) is a
/// block of its own. Requires living parts, each listed once; parts that are not listed are as if
/// not there. Method: Hopcroft and Tarjan, Comm. ACM 16 (1973) 372 (algorithm 447), with a stack of
/// its own. Cost: linear in the listed parts.
[[nodiscard]] std::vector<std::uint32_t> blocks(const Network& network,
                                                const std::vector<PartId>& parts);

/// For each listed part: does its block hold a source? Only there can a current flow, since a
/// current needs a closed path through a source. Requirements and cost as for blocks().
[[nodiscard]] std::vector<bool> fed_by_source(const Network& network,
                                              const std::vector<PartId>& parts);

}  // namespace ohmfold

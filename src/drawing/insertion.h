// Where uprights that fit into no planar drawing stand best.
#pragma once

#include <cstdint>
#include <vector>

#include "drawing/core.h"

namespace ohmfold::drawing {

/// A column for each edge, counted from 0, after those of the planar subset that `taken` names have
/// got theirs. The others come one by one, each into a column of its own where it is crossed least.
/// By corner: its rank from top to bottom. Cost: edges for each one that is not taken.
[[nodiscard]] std::vector<std::uint32_t> insert_columns(const Core& core,
                                                        const std::vector<bool>& taken,
                                                        const std::vector<std::uint32_t>& rank,
                                                        const std::vector<int>& columns);

}  // namespace ohmfold::drawing

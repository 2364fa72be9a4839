// Cores: which of the ways to place one is the trade's.
#pragma once

#include <optional>

#include "drawing/core.h"

namespace ohmfold::drawing {

/// Four corners and five edges. Single parts as a diamond with the bridging part across, where
/// lines may be slanted; otherwise two columns with the bridging part between their middles.
/// Nothing where the core is another one, or what bridges is wider than a part.
[[nodiscard]] std::optional<CorePlan> place_bridge(const Core& core, bool slanted);

/// Any core: a bridge or a cube as everybody draws it, else by its planar embedding, else with
/// crossings.
[[nodiscard]] CorePlan plan_core(const Core& core, bool slanted);

}  // namespace ohmfold::drawing

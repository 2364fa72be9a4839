// A placement in which points lie where the file wants them.
#pragma once

#include <optional>

#include "drawing/layout.h"

namespace ohmfold::drawing {

/// Each point with a hint lies there, y upwards; the others near their neighbours or where
/// `automatic` (the placement without hints) has them. Lines run at right angles, cross only where
/// they must. Nothing where the hints leave no room: two points at one place, or so far apart that
/// nobody would draw it.
[[nodiscard]] std::optional<Placement> lay_out_by_hints(const Network& network,
                                                        const LayoutOptions& options,
                                                        const Placement& automatic);

}  // namespace ohmfold::drawing

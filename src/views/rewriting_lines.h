// The working of steps beyond series and parallel: arms, sides, and the ratio of a balanced bridge.
#pragma once

#include <vector>

#include "views/chapter.h"

namespace ohmfold::views {

/// A line for each arm of a star, side of a delta or part of a mesh; the first ones of many.
[[nodiscard]] std::vector<Equation> rewriting_lines(const Scene& scene, const Step& step);

/// The two equal ratios of each balanced bridge; nothing for points that a symmetry makes equal.
[[nodiscard]] std::vector<Equation> balance_lines(const Scene& scene, const Step& step);

}  // namespace ohmfold::views

// The working of a step that makes one battery of several.
#pragma once

#include <vector>

#include "views/chapter.h"

namespace ohmfold::views {

/// "E12 = E1 − E2 = 12 V − 4 V = 8 V", and the sum of the internal resistances where there are any.
[[nodiscard]] std::vector<Equation> battery_lines(const Scene& scene, const Step& step);

}  // namespace ohmfold::views

// Certificates as JSON.
#pragma once

#include "ohmfold/bridge.h"
#include "views/chapter.h"
#include "views/json_values.h"

namespace ohmfold::views {

/// {"corners": […], "paths": [{"between": [P, Q], "parts": […]}, …]}; the pair of points asked
/// about is called "between A and B".
[[nodiscard]] Json bridge_json(const Scene& scene, const Certificate& bridge);

}  // namespace ohmfold::views

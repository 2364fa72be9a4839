// Quantities and readings as JSON: exact values and decimals are strings, so that none is lost.
#pragma once

#include <nlohmann/json.hpp>

#include "ohmfold/trace.h"

namespace ohmfold::views {

/// Keys stay in the order in which they are written.
using Json = nlohmann::ordered_json;

/// {"exact": "18/5", "unit": "ohm", "rounded": "3.60"}
[[nodiscard]] Json json_value(const Problem& problem, const Quantity& quantity, int figures);

/// The same, or {"exact": null, "why": "…"} where there is no value.
[[nodiscard]] Json json_value(const Problem& problem, const Reading& reading, int figures);

}  // namespace ohmfold::views

// How unknown values were found, as JSON (docs/trace.md).
#pragma once

#include "ohmfold/unknown.h"
#include "views/json_values.h"

namespace ohmfold::views {

[[nodiscard]] Json json_unknown(const Problem& problem, const UnknownSolution& solution,
                                int figures);

/// A rational as json_value() writes it; p + q √d as {"exact": null, "irrational": {"rational":
/// "p", "factor": "q", "radicand": "d"}, "unit": "ohm", "rounded": "6.37"}.
[[nodiscard]] Json json_surd(const Problem& problem, const Surd& value, Unit unit, int figures);

}  // namespace ohmfold::views

// The elimination of node equations as JSON.
#pragma once

#include "ohmfold/problem.h"
#include "views/json_values.h"

namespace ohmfold::views {

/// The member `elimination` of a case (docs/trace.md).
[[nodiscard]] Json json_elimination(const Problem& problem, const NodeElimination& elimination,
                                    int figures);

}  // namespace ohmfold::views

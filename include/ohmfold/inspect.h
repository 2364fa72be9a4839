// Whether a circuit is series-parallel as seen by its source, with the proof where it is not.
#pragma once

#include <optional>
#include <vector>

#include "ohmfold/problem.h"
#include "ohmfold/trace.h"

namespace ohmfold {

/// What one of several batteries sees, with every other one replaced by its internal resistance.
struct SeenBy {
  PartId battery;
  Reduction reduction;                ///< from a port in the battery's place
  std::optional<Certificate> bridge;  ///< where that is not series-parallel
};

/// How each case reduces, without any current or voltage.
struct Inspection {
  /// Of each case only contradiction, kind, main, bridge, standstill and the checks of the steps.
  Trace trace;
  /// By case: for several batteries, what each sees; the first ones, where many.
  std::vector<std::vector<SeenBy>> seen_by;
};

/// Reduces each case by series and parallel and proves where these come to an end. Throws
/// InternalError where a step or a proof does not hold. Cost: near linear in the parts.
[[nodiscard]] Inspection inspect(const Problem& problem);

}  // namespace ohmfold

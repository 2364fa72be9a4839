// The sums behind some checks, written out with the values of the trace.
#pragma once

#include <optional>
#include <span>

#include "views/chapter.h"

namespace ohmfold::views {

/// "3 A = 2 A + 1 A": in = out at a point where three or more currents meet.
[[nodiscard]] std::optional<Equation> current_sum(const Scene& scene, const CaseTrace& trace,
                                                  PointId point);

/// "18 V − 12 V − 6 V = 0 V": the rises and drops on a walk round a loop with three or more.
[[nodiscard]] std::optional<Equation> loop_sum(const Scene& scene, const CaseTrace& trace,
                                               std::span<const PartId> loop);

/// "90 W = 36 W + 54 W": what batteries deliver is what the other parts take up.
[[nodiscard]] std::optional<Equation> power_sum(const Scene& scene, const CaseTrace& trace);

}  // namespace ohmfold::views

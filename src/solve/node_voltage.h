// Node-voltage analysis of what no rule reduces.
#pragma once

#include "ohmfold/trace.h"
#include "solve/flow.h"

namespace ohmfold {

/// Most work that the exact node equations of one network may take, some seconds: of few nodes (see
/// NodeEquations::solve), and of many (see NodeLifting::solve; a grid of 50 by 50 points is within
/// it).
inline constexpr std::uint64_t kMostNodeWork = 1'000'000'000;
inline constexpr std::uint64_t kMostLiftingWork = 500'000'000;

/// Finds currents and voltages of the parts that are left in a reduction and puts them into `flow`;
/// those of ideal batteries in a loop of ideal batteries are marked as not determined. A port
/// counts as an ideal battery of 1 V from its second point to its first. Voltages of sources of
/// current are not found: they follow from the potentials of the original points. False, with
/// nothing found, where the work would be beyond these. Requires that no loop of ideal batteries
/// contradicts itself.
[[nodiscard]] bool solve_by_node_voltage(const Reduction& reduction, Flow<ExactField>& flow);

}  // namespace ohmfold

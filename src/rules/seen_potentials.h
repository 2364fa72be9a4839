// The potentials of a network as its one source sees it, exactly.
#pragma once

#include <optional>
#include <vector>

#include "rules/seen_graph.h"

namespace ohmfold {

/// By point, where 1 A enters at graph.other and leaves at graph.terminal, which is at zero; points
/// that no resistor joins to the terminals have none. Nothing for more than `most_points`. Cost:
/// the third power of the points.
[[nodiscard]] std::optional<std::vector<std::optional<Number>>> seen_potentials(
    const SeenGraph& graph, std::size_t most_points);

}  // namespace ohmfold

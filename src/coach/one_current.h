// Series in the wider sense: parts that one current runs through, whatever lies between them.
#pragma once

#include <vector>

#include "ohmfold/rule.h"

namespace ohmfold {

/// Do the resistors carry one current? So they do where they are in series as the rule judges, and
/// also where each two of them are the only two links between what lies on their two sides, sources
/// included: whatever leaves through one comes back through the other (a cut of two branches, by
/// the current law). Cost: linear in the network for each part but the first.
[[nodiscard]] Verdict judge_one_current(const Network& network, const std::vector<PartId>& parts);

/// Puts the sum in the place of the first part, and wires in the places of the others: seen from
/// whatever else is joined, nothing changes but the potentials of points between them. Requires
/// that judge_one_current allows it.
[[nodiscard]] Edit sum_for_one_current(const Network& network, const std::vector<PartId>& parts);

}  // namespace ohmfold

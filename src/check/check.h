// Every check of a case, by somebody who shares no code with those who solved it.
#pragma once

#include <string>
#include <vector>

#include "ohmfold/problem.h"
#include "ohmfold/trace.h"

namespace ohmfold {

/// Checks a case whose values are all stated (CaseTrace::complete): every step of the main
/// reduction and of the further ones (step.h), the laws over the branches and nodes (laws.h), node
/// voltages and resistances (node_voltage.h), and that the ground is at 0 V. Nothing for a case
/// that contradicts itself. Cost: linear, but for node voltages of what is not series-parallel.
[[nodiscard]] std::vector<Check> check_case(const Problem& problem, const CaseTrace& results);

/// Throws InternalError where one of them fails. `where`: of what they are, for its text.
void demand_that_all_hold(const std::vector<Check>& checks, const std::string& where);

}  // namespace ohmfold

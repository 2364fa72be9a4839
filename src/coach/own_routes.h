// Ways from a person's own numbers to a value: what a line may have been worked out from.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "coach/case_book.h"
#include "coach/value_judge.h"

namespace ohmfold {

/// Every way to the target by one law from numbers that the person has claimed, or that are given,
/// or that follow from those by a few laws more: Ohm's, the laws of series and parallel parts in
/// the person's own reduction, Kirchhoff's at the points of the circuit, of power; and what a
/// solution of the person's own network with their own values gives. Bounded: a few hundred laws at
/// most are tried, and networks of more than some hundred parts are not solved.
[[nodiscard]] std::vector<Route> own_routes(const CaseBook& book, const Target& target);

/// What the last step of the claim gives on the person's own values of its operands.
[[nodiscard]] std::optional<Route> combined_route(const CaseBook& book, Joining how,
                                                  const std::vector<PartId>& operands);

}  // namespace ohmfold

// Where the solved circuit, if built, would burn or shock.
#pragma once

#include <vector>

#include "ohmfold/trace.h"

namespace ohmfold {

/// At most one caution of each kind, about the worst part: more than 1/4 W in a resistor (the
/// rating of an ordinary small one: Kuphaldt, Lessons In Electric Circuits, vol. I, ch. 2), more
/// than 60 V between two points (the stricter figure for extra-low direct voltage: IEC
/// 60335-1:2010, 3.4.2), more than 10 A from a battery (common practice, no source), a battery
/// whose terminals are one point. Values with symbols are looked at with the values put in that the
/// file gives; where some are missing, there is nothing to caution against.
[[nodiscard]] std::vector<Caution> cautions_of(const Problem& problem, const CaseTrace& result);

}  // namespace ohmfold

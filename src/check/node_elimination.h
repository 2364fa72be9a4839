// The written-out elimination of node equations: does each equation follow as it says, and hold?
#pragma once

#include <optional>

#include "ohmfold/trace.h"

namespace ohmfold {

/// Works every current law out again from the parts that are left, every other equation from those
/// that it names, and puts the stated potentials into all of them. Also that fixed potentials
/// differ by what is said, that what should be gone is gone, and that every unknown is found. One
/// entry for all equations; nothing where none are written. Cost: a few terms for each equation and
/// part left.
[[nodiscard]] std::optional<Check> check_elimination(const CaseTrace& results);

}  // namespace ohmfold

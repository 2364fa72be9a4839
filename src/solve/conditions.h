// Where a quantity with symbols is zero, and where it has which sign.
#pragma once

#include <optional>

#include "ohmfold/trace.h"

namespace ohmfold {

/// The condition that decides the sign of a number, or nothing where its sign does not depend on
/// symbols. Cost: that of finding the zeros of a polynomial in one symbol; several symbols are left
/// as they stand.
[[nodiscard]] std::optional<SignCondition> sign_condition(const Number& number);

}  // namespace ohmfold

// Arithmetic with numbers of a person's own: value, range and the claims that they rest on.
#pragma once

#include <optional>

#include "coach/value_judge.h"

namespace ohmfold {

[[nodiscard]] Route exactly(const Number& number);
[[nodiscard]] Route route_of(const OwnValue& own);
/// The size; of a range round zero the whole of it folded up.
[[nodiscard]] Route size_of(Route route);
[[nodiscard]] Route operator+(const Route& a, const Route& b);
[[nodiscard]] Route operator-(const Route& a, const Route& b);
[[nodiscard]] Route operator*(const Route& a, const Route& b);
/// Nothing where the divisor can be zero.
[[nodiscard]] std::optional<Route> quotient(const Route& a, const Route& b);

}  // namespace ohmfold

// A way on by points at equal potentials.
#pragma once

#include "solve/delta_way.h"

namespace ohmfold {

/// What to do with points at the same potential.
enum class EqualUse : std::uint8_t {
  leave_out,  ///< parts between them; where there are none, join them
  join,       ///< the points; where none can be, leave out parts of balanced bridges
};

/// Makes use of equal potentials, again and again, until one part is left or none are found. The
/// plan is empty where none are found at all. Requires what `go_on` does.
[[nodiscard]] Trial by_equal_potentials_alone(const Reducer& stuck, EqualUse use);

}  // namespace ohmfold

// The next value of the way back, towards what is asked.
#pragma once

#include "coach/case_book.h"
#include "coach/own_routes.h"
#include "ohmfold/coach.h"

namespace ohmfold {

/// What to find next: the first value that the person has not claimed yet on the way through their
/// own reduction to the answer, or the answer itself.
[[nodiscard]] Hint next_value(const CaseBook& book, const Answer& answer);

}  // namespace ohmfold

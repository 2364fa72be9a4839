// Marks as JSON.
#pragma once

#include "ohmfold/coach.h"
#include "views/json_values.h"

namespace ohmfold::views {

[[nodiscard]] Json marks_json(const Marks& marks);

}  // namespace ohmfold::views

// The order of an inspection: for each case the verdict, and what supports it.
#pragma once

#include "ohmfold/inspect.h"
#include "views/document.h"

namespace ohmfold::views {

/// `figures` as in TextOptions.
[[nodiscard]] Document inspection_outline(const Inspection& inspection, int figures);

}  // namespace ohmfold::views

// The worked solution as a document: what stands in it and in which order.
#pragma once

#include "ohmfold/trace.h"
#include "views/document.h"

namespace ohmfold::views {

/// Built once from the trace; every writer renders the same document. `figures` 0: as the problem
/// says. Cost: linear in the trace, though long lists are shown in part only.
[[nodiscard]] Document outline(const Trace& trace, int figures);

}  // namespace ohmfold::views

// The exact elimination of node equations as it is written on paper.
#pragma once

#include "views/chapter.h"

namespace ohmfold::views {

/// Can it be written out: is there an elimination, and is every number short enough?
[[nodiscard]] bool is_written_out(const Scene& scene, const NodeElimination& elimination);

/// Equations without fractions, what is added to what, and the potentials put back in. Requires
/// is_written_out.
void add_elimination(const Scene& scene, const NodeElimination& elimination, Document& document);

}  // namespace ohmfold::views

// The working of one step: its formula, with values put in, and a check of its size.
#pragma once

#include <optional>
#include <vector>

#include "views/chapter.h"

namespace ohmfold::views {

/// "R1 + R2" or "R12 ∥ R34", of a step that combines parts; nothing of any other.
[[nodiscard]] std::optional<Expression> combination(const Scene& scene, const Step& step);

/// The lines that find the value of the part that a step makes; none where it makes none.
[[nodiscard]] std::vector<Equation> step_lines(const Scene& scene, const Step& step);

/// The whole network as one expression of the parts of the file, "(R1 + R2) ∥ (R3 + R4)", where it
/// came down to one part and has at most kMostTerms parts.
[[nodiscard]] std::optional<Expression> structure(const Scene& scene);

}  // namespace ohmfold::views

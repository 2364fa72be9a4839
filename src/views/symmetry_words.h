// Why points are at the same potential, in words: a ratio, or a symmetry and what it moves.
#pragma once

#include <span>

#include "views/wording.h"

namespace ohmfold::views {

/// Whole sentences for the facts of a step of equal potentials.
[[nodiscard]] Words potential_words(const Wording& wording, std::span<const Fact> why);

}  // namespace ohmfold::views

// Questions in words and symbols.
#pragma once

#include "ohmfold/problem.h"
#include "views/formula.h"
#include "views/symbols.h"
#include "views/words.h"

namespace ohmfold::views {

/// "the current through E", "the voltage from A to B", …
[[nodiscard]] Words question_words(const Question& question, const Problem& problem);

/// I_E, V_AB, …; for a resistance "R between A and B" has R_AB.
[[nodiscard]] Expression question_symbol(const Question& question, const Symbols& symbols);

}  // namespace ohmfold::views

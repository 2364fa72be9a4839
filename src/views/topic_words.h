// What a claim is about, in words that do not depend on the names that a person gives.
#pragma once

#include "ohmfold/class_report.h"
#include "views/words.h"

namespace ohmfold::views {

/// "R1 and R2 combined", "current through R3", without the case.
[[nodiscard]] Words topic_words(const Problem& problem, const Topic& topic);

}  // namespace ohmfold::views

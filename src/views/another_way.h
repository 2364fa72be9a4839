// One result found once more, by the rule of a divider.
#pragma once

#include <optional>

#include "views/chapter.h"

namespace ohmfold::views {

struct AnotherWay {
  Words rule;
  Equation line;
};

/// For the first step that combines two resistors of the file: the voltage of the first of them by
/// the voltage divider, or its current by the current divider. Nothing where no step does, where
/// symbols are in it, where it is too long to write, or where superposition found the values.
[[nodiscard]] std::optional<AnotherWay> another_way(const Scene& scene, const CaseTrace& trace);

}  // namespace ohmfold::views

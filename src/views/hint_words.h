// Hints in words: what to mend, or what to do next.
#pragma once

#include "views/judged_work.h"

namespace ohmfold::views {

/// A hint as one to three sentences. Only HintLevel::tell states a value.
[[nodiscard]] Words hint_words(const JudgedWork& judged, const Hint& hint, HintLevel level);

/// Of a line with a mistake. Requires a claim of the work.
[[nodiscard]] Words mending_hint(const JudgedLine& line, HintLevel level);

/// Of parts to be combined, or another step of rewriting. The rule of the hint says which.
[[nodiscard]] Words step_hint(const CaseWords& words, const Hint& hint, HintLevel level);

/// Of a value of the way back.
[[nodiscard]] Words quantity_hint(const CaseWords& words, const Hint& hint, HintLevel level);

/// One wording for each level.
struct Levels {
  Words nudge, point, tell;

  [[nodiscard]] const Words& at(HintLevel level) const {
    switch (level) {
      case HintLevel::nudge:
        return nudge;
      case HintLevel::point:
        return point;
      case HintLevel::tell:
        break;
    }
    return tell;
  }
};

}  // namespace ohmfold::views

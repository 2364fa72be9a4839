// Words and working for a Thevenin equivalent.
#pragma once

#include "views/chapter.h"

namespace ohmfold::views {

/// Voltage, resistance and short-circuit current, and the battery that they make.
[[nodiscard]] Words thevenin_sentence(const Scene& scene, const Answer& answer);

/// The three lines of working, after the reduction that shows the resistance.
void add_thevenin(const Scene& scene, const CaseTrace& trace, const Answer& answer,
                  Document& document);

/// The answer in a table: its value, or the two of a Thevenin equivalent.
[[nodiscard]] Words short_answer(const Scene& scene, const Answer& answer);

}  // namespace ohmfold::views

// The closed sets of a judgement as other programs read them.
#pragma once

#include <string_view>

#include "ohmfold/coach.h"

namespace ohmfold::views {

[[nodiscard]] std::string_view step_verdict_word(StepVerdict verdict);
[[nodiscard]] std::string_view hindrance_word(Hindrance hindrance);
[[nodiscard]] std::string_view value_verdict_word(ValueVerdict verdict);
[[nodiscard]] std::string_view unit_verdict_word(UnitVerdict verdict);
[[nodiscard]] std::string_view figures_verdict_word(FiguresVerdict verdict);
[[nodiscard]] std::string_view mark_word(Mark mark);
[[nodiscard]] std::string_view claimed_word(Claimed claimed);

}  // namespace ohmfold::views

// What there is to say about one line of a work.
#pragma once

#include "views/judged_work.h"

namespace ohmfold::views {

/// "right", "rounded-early", …: the verdict as other programs read it.
[[nodiscard]] std::string_view verdict_word(LineVerdict verdict);

/// "✓ right", "≈ rounded early", …: a sign and a word.
[[nodiscard]] std::string_view verdict_mark(LineVerdict verdict);

/// One to three sentences; no right value is given away but where rounding early changed a figure.
/// Empty where there is nothing to say.
[[nodiscard]] Words reply_words(const JudgedLine& line);

/// Why a line cannot be judged, as one or two sentences. Requires a hindrance.
[[nodiscard]] Words hindrance_words(const JudgedLine& line);

/// Why the step of the line may be made, as a sentence; empty where there is nothing to say.
[[nodiscard]] Words step_reason(const JudgedLine& line);

/// Which third part or point is in the way of the step, as one or two sentences.
[[nodiscard]] Words refusal_words(const JudgedLine& line);

/// What is to be said of the value, as one or two sentences; empty where none is stated.
[[nodiscard]] Words value_reply(const JudgedLine& line);

/// What is to be said of too few or too many figures, as a sentence; empty where they are fine.
[[nodiscard]] Words figures_reply(const JudgedLine& line);

}  // namespace ohmfold::views

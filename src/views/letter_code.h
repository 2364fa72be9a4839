// Values of resistors as they are marked on parts.
#pragma once

#include <optional>
#include <string>

#include "ohmfold/handout.h"
#include "ohmfold/value.h"
#include "views/words.h"

namespace ohmfold::views {

/// "4K7", "470R", "R47", "2M2": the letter code of IEC 60062 for a resistance in ohm, which
/// parse_letter_code reads back as the same number. Nothing where it has none of at most four
/// figures.
[[nodiscard]] std::optional<std::string> letter_code(const Number& ohms);

/// The resistance of a part of the file, in letters where that is wanted and possible.
[[nodiscard]] Words resistance_words(const Number& ohms, int figures, Notation notation);

}  // namespace ohmfold::views

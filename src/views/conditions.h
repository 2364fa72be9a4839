// What symbols stand for, where a quantity with symbols is zero, and values put in.
#pragma once

#include <optional>

#include "ohmfold/trace.h"
#include "views/chapter.h"
#include "views/words.h"

namespace ohmfold::views {

/// The quantity with the values that the file gives for its symbols; nothing where it gives none
/// for one of them, or where there is nothing to put in.
[[nodiscard]] std::optional<Quantity> with_values(const Problem& problem, const Quantity& quantity);
/// The same for a reading, which is itself where it has no symbols.
[[nodiscard]] std::optional<Reading> with_values(const Problem& problem, const Reading& reading);

/// "r = 4 Ω and s = 2 Ω": all values that the file gives.
[[nodiscard]] Words given_symbols(const Problem& problem);

/// "zero exactly where r = 2 Ω, negative below and positive above".
[[nodiscard]] Words condition_words(const Problem& problem, const SignCondition& condition);

/// "they agree exactly where u = 3 V", and as a sentence of a contradiction.
[[nodiscard]] Words agreement_phrase(const Problem& problem, const SignCondition& agree);
[[nodiscard]] Words agreement_words(const Problem& problem, const SignCondition& agree);

/// Why a case with symbols was not solved, and what to do.
[[nodiscard]] Words beyond_budget_words(const std::string& why);
/// That the values were put in at the start.
[[nodiscard]] Words put_in_first_words();

/// What each symbol stands for, below the list of parts.
void add_symbols(const Problem& problem, Document& document);

/// The currents that are zero for some values of the symbols, as far as no answer says so.
void add_conditions(const Scene& scene, const CaseTrace& trace, Document& document);

}  // namespace ohmfold::views

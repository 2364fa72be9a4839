// Words about unknown values: what was found of them, and why not more.
#pragma once

#include "ohmfold/unknown.h"
#include "views/chapter.h"

namespace ohmfold::views {

/// "6 Ω"; "(7/2 + √33 / 2) Ω ≈ 6.37 Ω".
[[nodiscard]] Words surd_words(const Surd& value, Unit unit, int figures);

/// The value of an answer, or "not determined".
[[nodiscard]] Words answer_value(const Scene& scene, const Answer& answer);

/// "R1 and R2"
[[nodiscard]] Words unknown_names(const Problem& problem, const std::vector<PartId>& unknowns);

/// "the given current through E"
[[nodiscard]] Words given_words(const Problem& problem, const UnknownEquation& equation);

/// Why no value was found, as a phrase without a full stop. Requires another outcome than found.
[[nodiscard]] Words why_not_found(const Problem& problem, const UnknownSolution& solution,
                                  int figures);

/// Why this solution of the equations falls away: "a resistance cannot be negative". Empty for one
/// that fits.
[[nodiscard]] Words why_rejected(const Problem& problem, const UnknownSolution& solution,
                                 const UnknownRoot& root);

/// Why a case has no solution, of whatever kind, as a phrase.
[[nodiscard]] Words contradiction_words(const Wording& words, const Problem& problem,
                                        const CaseTrace& trace);

}  // namespace ohmfold::views

// How to go on where series and parallel stop: ways are tried out, counted, and one is taken.
#pragma once

#include "ohmfold/solve.h"
#include "solve/reducer.h"

namespace ohmfold {

/// Takes `reducer`, which series and parallel have left with one source and more than one part
/// (Stop::bridge), further (with Method::series_parallel, also with several sources: not at all):
/// by the way that is wished for, or by the one with the fewest lines of working, then the simplest
/// fractions, then in the order of Method. A wish that cannot be done is recorded with its reason,
/// and the shortest way taken.
///
/// Ways that rewrite are tried out on a copy of what is left. Equal potentials are looked for up to
/// some hundred points; delta and star are tried up to kMostTried parts, and up to kMostRewritten
/// where they are asked for. Cost: bounded, some tenths of a second at most, and that of the
/// fractions.
[[nodiscard]] Choice go_on(Reducer& reducer, const SolveOptions& options);

/// More parts than this are not rewritten by delta and star unless asked for: a person would set up
/// equations.
inline constexpr std::size_t kMostTried = 16;
/// … and more than this not at all.
inline constexpr std::size_t kMostRewritten = 220;

}  // namespace ohmfold

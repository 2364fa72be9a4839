// What the file asked for.
#pragma once

#include "ohmfold/solve.h"
#include "ohmfold/trace.h"
#include "solve/results.h"

namespace ohmfold {

/// The resistance that a reduction shows to its port, or, where it does not stop at a bridge, to
/// its one source; no_path where nothing joins the terminals, too_long where node-voltage analysis
/// would take too much work.
[[nodiscard]] Reading seen_resistance(const Reduction& reduction);

/// The questions of a problem; where it asks none, all of them: the resistance seen by each
/// battery, and the current, voltage and power of each part. Only the first where `complete` is
/// false, with the current of each battery.
[[nodiscard]] std::vector<Question> questions_of(const Problem& problem, bool complete);

/// Answers the questions of a case that is otherwise done, and reduces further networks where a
/// question about a resistance needs them. `points` is nothing where the case is not complete.
void answer(const Problem& problem, const Case& setting, const SolveOptions& options,
            const PointPotentials* points, CaseTrace& result);

}  // namespace ohmfold

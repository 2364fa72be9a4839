// From the flow of what is left to the results for every part and point of the file, each with its
// law.
#pragma once

#include "ohmfold/trace.h"
#include "solve/flow.h"
#include "solve/potentials.h"

namespace ohmfold {

/// Potentials of the points, each against the reference of its own connected piece.
struct PointPotentials {
  PotentialWalk walk;
  std::vector<Number> value;  ///< by PointId

  /// The potential of `a` less that of `b`, where parts join them.
  [[nodiscard]] Reading between(PointId a, PointId b) const {
    if (!walk.joined(a, b)) return Undetermined::floating;
    return Voltage{value[a.index] - value[b.index]};
  }
};

/// Fills in the returns, branches and nodes of a case whose `main` reduction is done.
/// `flow` holds currents and voltages of main.left. Cost: linear in the parts, times that of
/// arithmetic with numbers as long as the results.
PointPotentials fill_in_results(const Problem& problem, Flow<ExactField>& flow, CaseTrace& result);

/// The same where `flow` holds currents and voltages of every part of the file already, as sums of
/// what each source does alone.
PointPotentials fill_in_superposed(const Problem& problem, Flow<ExactField>& flow,
                                   CaseTrace& result);

/// The same for a case without any source: nothing flows, all joined points are at one potential,
/// and there is no way back to tell.
PointPotentials fill_in_nothing(const Problem& problem, CaseTrace& result);

}  // namespace ohmfold

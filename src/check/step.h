// One step of rewriting, checked by somebody who knows no rule: before and after must look the same
// from the points that both keep.
//
// A step takes parts, may make one, and may merge points; the rest of the network is untouched, so
// only these matter. Terminals are the points of the taken parts where other living parts (sources
// and ports among them) are joined. The step is right where
//   1. points become one only along ideal wires that are taken, or because they are at the same
//      potential (5);
//   2. no port is taken, no battery that lies on a closed path of taken parts, and no source that
//      drives a current;
//   3. a part is made: the taken parts have two terminals, hold no source, and the conductance
//      between the terminals, all other points eliminated, is that of the part made; where several
//      parts are made, the same for each two of any number of terminals (step_replacement.h); or
//   4. no part is made: what is taken conducts nothing between terminals, or carries no current
//      since it is the only link: the pieces of the taken and the components of the rest form no
//      closed path, and then the current law over each cut between them says zero; or since both
//      its ends are at the same potential (5).
//   5. Equal potentials are those of the network before the step, driven by its one source through
//      resistors alone, and only of a step that says it is valid as seen by the source
//      (step_potentials.h).
// Batteries of one chain that become one are another matter: see battery_step.h.
// What touches the rest in one point at most carries no current in or out by the same law, and none
// inside by (2).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "check/arithmetic.h"
#include "ohmfold/network.h"
#include "ohmfold/trace.h"

namespace ohmfold {

namespace check {

struct StepFinding {
  bool holds = true;
  std::string detail;  ///< where it does not: item, remainder, what it was compared with
  /// Where it holds: only if the two points of each pair are at the same potential.
  std::vector<std::pair<PointId, PointId>> equal = {};
};

/// Checks one step exactly. `before` is the network that it was made in; `made` the part that it
/// puts in, with its ends and resistance, or nothing; several parts are in `step.adds`. Any step
/// may be asked about, also a senseless one. Cost: linear in the parts taken for chains and
/// bundles; where links are taken, also that of exploring all but the largest piece that is left;
/// where potentials are compared, that of solving the network.
[[nodiscard]] StepFinding check_step(const Network& before, const Step& step,
                                     const std::optional<NewPart>& made);

/// The same without comparing conductances and potentials: all that does not depend on resistances.
[[nodiscard]] StepFinding check_structure(const Network& before, const Step& step,
                                          const std::optional<NewPart>& made);

}  // namespace check

/// Checks all steps of a reduction on a network of its own, up to the first that fails, and that
/// the last one leads to the network recorded as the end. One entry for each step up to
/// `most_single` steps, otherwise one for all. By size, resistances are compared exactly up to
/// 100,000 bits in the whole log. Cost: linear in the bits of the resistances for series-parallel
/// networks.
[[nodiscard]] std::vector<Check> check_steps(
    const Reduction& reduction, std::size_t most_single = 200,
    check::Arithmetic arithmetic = check::Arithmetic::by_size);

}  // namespace ohmfold

// Names of all parts of a reduction: those of the file, and those that a rule has made.
#pragma once

#include <string>
#include <vector>

#include "ohmfold/problem.h"
#include "ohmfold/trace.h"

namespace ohmfold::views {

/// A made part's name tells its history: R1 and R2 make R12, R2 and R34 make R234, R2 and R10 make
/// R2_10, L1 and R3 make R_L1_3. A name that is taken or longer than twelve characters, or a
/// history of more than six parts (three, where not all are numbered), gives way to Ra, Rb, …, Rz,
/// Raa, …. Batteries E1 and E2 make E12, others Ea, Eb, …. A battery that only its internal
/// resistance stands for is r_E.
class PartNames {
 public:
  /// Cost: linear in the parts and steps. The reduction must belong to the problem.
  PartNames(const Problem& problem, const Reduction& reduction);

  /// Requires a part of the reduction. The port of a reduction has the empty name.
  [[nodiscard]] const std::string& of(PartId part) const { return names_.at(part.index); }

 private:
  std::vector<std::string> names_;
};

}  // namespace ohmfold::views

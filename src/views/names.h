// Names of all parts of a reduction: those of the file, and those that a rule has made.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "ohmfold/problem.h"
#include "ohmfold/trace.h"

namespace ohmfold::views {

/// A made part's name tells its history: R1 and R2 make R12, R2 and R34 make R234, R2 and R10 make
/// R2_10, L1 and R3 make R_L1_3. A name that is taken or longer than twelve characters, or a
/// history of more than six parts (three, where not all are numbered), gives way to Ra, Rb, …, Rz,
/// Raa, …. The arm of a star made from a delta is named after its corner, R_A; the sides of a delta
/// or mesh are Ra, Rb, …. Batteries E1 and E2 make E12, others Ea, Eb, …. A battery that only its
/// internal resistance stands for is r_E. Points that a step makes are N1, N2, … without the names
/// that the file has.
class PartNames {
 public:
  /// Cost: linear in the parts and steps. The reduction must belong to the problem, which must
  /// outlive this.
  PartNames(const Problem& problem, const Reduction& reduction);

  /// The names of a network that has its own: by PartId, and by PointId with the points of the file
  /// first. The problem must outlive this.
  PartNames(const Problem& problem, std::vector<std::string> parts,
            const std::vector<std::string>& points);

  /// Requires a part of the reduction. The port of a reduction has the empty name.
  [[nodiscard]] const std::string& of(PartId part) const { return names_.at(part.index); }
  /// Requires a point of the reduction or of the file.
  [[nodiscard]] const std::string& of(PointId point) const;
  [[nodiscard]] std::vector<std::string> of(std::span<const PointId> points) const;

 private:
  const Problem& problem_;
  std::vector<std::string> names_;
  std::vector<std::string> new_points_;
};

}  // namespace ohmfold::views

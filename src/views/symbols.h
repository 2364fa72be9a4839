// The symbols of quantities: I_R1, V_R1, P_R1, V_A, V_AB; a part's own name is its value.
#pragma once

#include "ohmfold/problem.h"
#include "views/formula.h"
#include "views/names.h"

namespace ohmfold::views {

/// Keeps references to both: they must outlive it.
class Symbols {
 public:
  Symbols(const Problem& problem, const PartNames& names);

  [[nodiscard]] Expression value(PartId part) const { return {Symbol{name(part), ""}}; }
  [[nodiscard]] Expression internal(PartId part) const { return {Symbol{"r", name(part)}}; }
  [[nodiscard]] Expression current(PartId part) const { return {Symbol{"I", name(part)}}; }
  [[nodiscard]] Expression voltage(PartId part) const { return {Symbol{"V", name(part)}}; }
  [[nodiscard]] Expression power(PartId part) const { return {Symbol{"P", name(part)}}; }
  /// V_A; V_(A) where a part has the same name.
  [[nodiscard]] Expression potential(PointId point) const;
  /// V_AB; V_(A,B) where a part is named AB or a name is longer than one letter. R_AB with `letter`
  /// "R".
  [[nodiscard]] Expression between(PointId from, PointId to, const char* letter = "V") const;
  [[nodiscard]] static Expression equivalent() { return {Symbol{"R", "eq"}}; }

 private:
  [[nodiscard]] std::string name(PartId part) const;
  [[nodiscard]] bool is_part(const std::string& name) const;

  const Problem& problem_;
  const PartNames& names_;
};

}  // namespace ohmfold::views

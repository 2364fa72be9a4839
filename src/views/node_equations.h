// The equations of node-voltage analysis for what no rule reduces, as a person would set them up.
#pragma once

#include <vector>

#include "views/chapter.h"

namespace ohmfold::views {

/// The equations in symbols and with values put in; both empty where there would be too many.
struct NodeEquations {
  std::vector<Equation> batteries;  ///< V_T − V_G = E, for each ideal battery
  std::vector<Equation> symbols;    ///< the current law at each other point
  std::vector<Equation> values;     ///< the same with resistances and voltages put in
};

/// The currents that leave each point (or each group of points that ideal batteries join) sum to
/// zero; `ground` and what ideal batteries join to it need no equation.
[[nodiscard]] NodeEquations node_equations(const Scene& scene, const CaseTrace& trace,
                                           PointId ground);

}  // namespace ohmfold::views

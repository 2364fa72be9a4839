// Each recorded equation with where it comes from.
#include "views/json_elimination.h"

#include <string>

namespace ohmfold::views {

namespace {

std::string label(const PotentialEquation& equation) {
  return std::to_string(equation.number) + std::string(equation.times, '\'');
}

const char* origin_word(EquationOrigin origin) {
  switch (origin) {
    case EquationOrigin::current_law:
      return "current-law";
    case EquationOrigin::combined:
      return "combined";
    case EquationOrigin::solved:
      return "solved";
  }
  return "";
}

Json names(const Problem& problem, const std::vector<PointId>& points) {
  Json list = Json::array();
  for (const PointId point : points) list.push_back(problem.point(point));
  return list;
}

Json equation_json(const Problem& problem, const PotentialEquation& equation, int figures) {
  Json result;
  result["origin"] = origin_word(equation.origin);
  if (equation.number != 0) result["label"] = label(equation);
  if (equation.unknown.exists()) result["unknown"] = problem.point(equation.unknown);
  if (equation.origin == EquationOrigin::current_law) {
    result["points"] = names(problem, equation.points);
    result["factor"] = json_value(problem, Quantity(equation.factor, Unit::ohm), figures);
  }
  if (!equation.from.empty()) {
    Json shares = Json::array();
    for (const EquationShare& share : equation.from) {
      shares.push_back({{"equation", share.equation}, {"factor", share.factor.to_string()}});
    }
    result["from"] = std::move(shares);
  }
  result["divisor"] = equation.divisor.to_string();
  Json terms = Json::array();
  for (const PotentialTerm& term : equation.terms) {
    terms.push_back(
        {{"point", problem.point(term.point)}, {"coefficient", term.coefficient.to_string()}});
  }
  result["terms"] = std::move(terms);
  result["constant"] = json_value(problem, Quantity(equation.constant), figures);
  return result;
}

}  // namespace

Json json_elimination(const Problem& problem, const NodeElimination& elimination, int figures) {
  Json result;
  result["ground"] = problem.point(elimination.ground);
  result["unknowns"] = names(problem, elimination.unknowns);
  Json fixed = Json::array();
  for (const FixedPotential& one : elimination.fixed) {
    fixed.push_back({{"point", problem.point(one.point)},
                     {"base", problem.point(one.base)},
                     {"rise", json_value(problem, Quantity(one.rise), figures)}});
  }
  result["fixed"] = std::move(fixed);
  Json equations = Json::array();
  for (const PotentialEquation& equation : elimination.equations) {
    equations.push_back(equation_json(problem, equation, figures));
  }
  result["equations"] = std::move(equations);
  return result;
}

}  // namespace ohmfold::views

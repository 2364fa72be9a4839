// How unknown values were found, as JSON.
#include "views/json_unknown.h"

#include "ohmfold/decimal.h"
#include "ohmfold/symbolic.h"
#include "views/amounts.h"

namespace ohmfold::views {

namespace {

std::string_view outcome_word(UnknownOutcome outcome) {
  switch (outcome) {
    case UnknownOutcome::found:
      return "found";
    case UnknownOutcome::no_value:
      return "no-value";
    case UnknownOutcome::any_value:
      return "any-value";
    case UnknownOutcome::too_entangled:
      return "too-entangled";
    case UnknownOutcome::too_long:
      return "too-long";
    case UnknownOutcome::case_contradicts:
      return "case-contradicts";
    case UnknownOutcome::given_undetermined:
      return "given-undetermined";
    case UnknownOutcome::ideal_loop:
      return "ideal-loop";
  }
  throw InternalError("an outcome without a word");
}

std::string_view fate_word(RootFate fate) {
  switch (fate) {
    case RootFate::fits:
      return "fits";
    case RootFate::not_positive:
      return "not-positive";
    case RootFate::turned_round:
      return "turned-round";
    case RootFate::other_given:
      return "other-given";
    case RootFate::does_not_exist:
      return "does-not-exist";
  }
  throw InternalError("a fate without a word");
}

/// With symbols the coefficients can be as long as they like.
Json number_text(const Number& number) {
  return digit_estimate(number) > kMostWrittenDigits ? Json(nullptr) : Json(number.to_string());
}

Json equation_item(const Problem& problem, const UnknownSolution& solution,
                   const UnknownEquation& equation, int figures) {
  const Given& given = problem.givens.at(equation.given);
  Json item;
  item["given"] = to_string(given.question, problem);
  if (given.held_in) item["case"] = solution.forms.at(equation.form_in).name;
  item["value"] =
      json_value(problem, Quantity(given.value, unit_of(given.question, problem)), figures);
  if (!equation.form.value) return item;
  item["form"] = number_text(equation.form.value->number);
  item["zero"] = number_text(equation.collected);
  return item;
}

Json root_item(const Problem& problem, const UnknownSolution& solution, const UnknownRoot& root,
               int figures) {
  Json item;
  item["values"] = Json::array();
  for (std::size_t k = 0; k < root.values.size(); ++k) {
    item["values"].push_back(json_surd(problem, root.values[k],
                                       unit_of(ValueOf{solution.unknowns[k]}, problem), figures));
  }
  item["fate"] = fate_word(root.fate);
  return item;
}

}  // namespace

Json json_surd(const Problem& problem, const Surd& value, Unit unit, int figures) {
  if (value.is_rational()) return json_value(problem, Quantity(value.rational(), unit), figures);
  Json item;
  item["exact"] = nullptr;
  item["irrational"]["rational"] = number_text(value.rational());
  item["irrational"]["factor"] = number_text(value.factor());
  item["irrational"]["radicand"] = number_text(value.radicand());
  item["unit"] = symbol(unit, Letters::ascii);
  item["rounded"] = round_to_figures(rounding_like(value, figures), figures);
  return item;
}

Json json_unknown(const Problem& problem, const UnknownSolution& solution, int figures) {
  Json result;
  result["outcome"] = outcome_word(solution.outcome);
  result["unknowns"] = Json::array();
  for (const PartId part : solution.unknowns) {
    result["unknowns"].push_back(problem.part(part).name);
  }
  result["equations"] = Json::array();
  for (const UnknownEquation& equation : solution.equations) {
    result["equations"].push_back(equation_item(problem, solution, equation, figures));
  }
  result["eliminations"] = Json::array();
  for (const Elimination& step : solution.eliminations) {
    Json item;
    item["unknown"] = problem.part(step.unknown).name;
    item["equation"] = step.equation + 1;
    item["zero"] = number_text(step.collected);
    item["value"] = number_text(step.value);
    result["eliminations"].push_back(std::move(item));
  }
  result["last"] = nullptr;
  if (solution.last) {
    result["last"]["unknown"] = problem.part(solution.last->unknown).name;
    result["last"]["equation"] = solution.last->equation + 1;
    result["last"]["zero"] = number_text(solution.last->collected);
  }
  result["solutions"] = Json::array();
  for (const UnknownRoot& root : solution.roots) {
    result["solutions"].push_back(root_item(problem, solution, root, figures));
  }
  return result;
}

}  // namespace ohmfold::views

// Words about unknown values.
#include "views/unknown_words.h"

#include <algorithm>

#include "views/amounts.h"
#include "views/polynomials.h"
#include "views/questions.h"

namespace ohmfold::views {

namespace {

Run part_run(const Problem& problem, PartId part) {
  return PartName{problem.part(part).name};
}

/// "2 A", as the file gives it.
Words amount_given(const Problem& problem, const UnknownEquation& equation, int figures) {
  const Given& given = problem.givens.at(equation.given);
  return say(Amount{{given.value, unit_of(given.question, problem)}, Form::given, figures});
}

/// "the current through E"
Words quantity_of(const Problem& problem, const UnknownEquation& equation) {
  return question_words(problem.givens.at(equation.given).question, problem);
}

/// "the current through E be 8 A"
Words would_be(const Problem& problem, const UnknownEquation& equation, int figures) {
  return say(quantity_of(problem, equation), " be ", amount_given(problem, equation, figures));
}

/// One unknown, and its equation holds for no positive value of it.
Words why_no_root(const Problem& problem, const UnknownSolution& solution, int figures) {
  const PartId unknown = solution.unknowns.front();
  const Run name = part_run(problem, unknown);
  const std::size_t at = solution.last ? solution.last->equation : solution.failed;
  const UnknownEquation& equation = solution.equations.at(at);
  const Words would = would_be(problem, equation, figures);
  const auto is_wire = [](const UnknownRoot& root) {
    return !root.values.empty() && root.values.front().is_zero();
  };
  if (solution.gap_would_do) return say("only with a gap in place of ", name, " would ", would);
  if (std::any_of(solution.roots.begin(), solution.roots.end(), is_wire)) {
    return say("only with a wire in place of ", name, " would ", would);
  }
  if (!solution.last) {
    const Quantity& form = *equation.form.value;
    return say(quantity_of(problem, equation), " is ", Amount{form, Form::given, figures},
               " whatever ", name, " is, and ", amount_given(problem, equation, figures),
               " is given");
  }
  if (solution.roots.empty()) {
    return say("with no value of ", name, " can ", would);
  }
  const UnknownRoot& root = solution.roots.back();
  const Unit unit = unit_of(ValueOf{unknown}, problem);
  const Words value = surd_words(root.values.front(), unit, figures);
  return say("only with ", name, " = ", value, " would ", would, ", but ",
             why_rejected(problem, solution, root));
}

}  // namespace

Words surd_words(const Surd& value, Unit unit, int figures) {
  const Quantity near(rounding_like(value, figures), unit);
  if (value.is_rational()) {
    const Words exact = say(Amount{near, Form::exact, figures});
    const Beside beside = decimal_beside(near, figures);
    if (beside == Beside::nothing) return exact;
    return say(exact, beside == Beside::equal ? " =\u00A0" : " ≈\u00A0",
               Amount{near, Form::decimal, figures});
  }
  const Expression exact = surd_expression(value);
  const Words about = say("≈\u00A0", Amount{near, Form::decimal, figures});
  if (has_unwritten_amount(exact) || is_too_long_to_show(value.radicand())) {
    return say("(an irrational number) ", about);
  }
  return say("(", formula_text(exact, Letters::unicode), ")\u00A0", symbol(unit, Letters::unicode),
             " ", about);
}

Words answer_value(const Scene& scene, const Answer& answer) {
  if (!answer.irrational) return scene.value(answer.value);
  return surd_words(*answer.irrational, unit_of(answer.question, scene.problem), scene.figures);
}

Words unknown_names(const Problem& problem, const std::vector<PartId>& unknowns) {
  std::vector<Words> names;
  names.reserve(unknowns.size());
  for (const PartId part : unknowns) names.push_back(say(part_run(problem, part)));
  return listed(names);
}

Words given_words(const Problem& problem, const UnknownEquation& equation) {
  const Words words = quantity_of(problem, equation);
  const Given& given = problem.givens.at(equation.given);
  if (!given.held_in) return words;
  return say(words, " in case \"", given.held_in->label, "\"");
}

Words why_rejected(const Problem& problem, const UnknownSolution& solution,
                   const UnknownRoot& root) {
  switch (root.fate) {
    case RootFate::fits:
      return {};
    case RootFate::not_positive:
      return say("the resistance of ", part_run(problem, root.blamed), " has to be positive");
    case RootFate::turned_round:
      return say("battery ", part_run(problem, root.blamed), " would be the other way round");
    case RootFate::other_given:
      return say(given_words(problem, solution.equations.at(root.equation)), " is given otherwise");
    case RootFate::does_not_exist:
      return say("no other value goes with it");
  }
  return {};
}

Words why_not_found(const Problem& problem, const UnknownSolution& solution, int figures) {
  const Words names = unknown_names(problem, solution.unknowns);
  switch (solution.outcome) {
    case UnknownOutcome::found:
      return {};
    case UnknownOutcome::no_value:
      if (solution.equations.size() == 1) return why_no_root(problem, solution, figures);
      return say("no positive ", solution.unknowns.size() == 1 ? "value of " : "values of ", names,
                 solution.unknowns.size() == 1 ? " fits" : " fit", " all that is given");
    case UnknownOutcome::any_value:
      return say("what is given holds whatever ", unknown_names(problem, solution.free),
                 solution.free.size() == 1 ? " is" : " are", ", so ",
                 solution.free.size() == 1 ? "it is" : "they are", " not determined");
    case UnknownOutcome::too_entangled:
      return say("the equations for ", names,
                 " cannot be solved for one after the other in closed form; give something else, "
                 "such as a current or a voltage in place of a power");
    case UnknownOutcome::too_long:
      return say("the equations for ", names, " are too long to be written and solved exactly");
    case UnknownOutcome::case_contradicts:
      return say("a case in which something is given contradicts itself");
    case UnknownOutcome::given_undetermined: {
      const UnknownEquation& equation = solution.equations.at(solution.failed);
      return say(given_words(problem, equation),
                 " is given, but the circuit does not determine it: ",
                 why_undetermined(equation.form.why));
    }
    case UnknownOutcome::ideal_loop:
      return say(
          "a loop of ideal parts alone runs through an unknown battery; give one of its "
          "batteries an internal resistance");
  }
  return {};
}

Words contradiction_words(const Wording& words, const Problem& problem, const CaseTrace& trace) {
  if (trace.contradiction->kind != ContradictionKind::unknown_not_found) {
    return words.contradiction(*trace.contradiction);
  }
  return why_not_found(problem, *trace.unknown, problem.figures);
}

}  // namespace ohmfold::views

// From givens to equations, from their solutions to values that hold in the circuit itself.
#include "solve/search.h"

#include <algorithm>
#include <utility>

#include "circuit/set_case.h"
#include "ohmfold/error.h"
#include "ohmfold/symbolic.h"
#include "solve/equations.h"
#include "solve/solve_case.h"

namespace ohmfold {
namespace {

std::size_t degree(const Number& polynomial, const std::string& symbol) {
  return coefficients(polynomial, symbol).size() - 1;
}

class Search {
 public:
  Search(const Problem& problem, const std::vector<GivenIn>& givens, const SolveOptions& options)
      : problem_(problem), givens_(givens), options_(options) {
    result_.unknowns = unknowns_of(problem);
    for (const PartId part : result_.unknowns) symbols_.push_back(problem.part(part).name);
  }

  UnknownSolution run() {
    try {
      const WorkLimit limit(kMostSymbolWork);
      if (find_forms() && state_equations()) solve();
    } catch (const BeyondBudget&) {
      result_.outcome = UnknownOutcome::too_long;
      result_.roots.clear();
    }
    return std::move(result_);
  }

 private:
  /// Solves each case in which something is given, with symbols, for all that is given in it.
  bool find_forms() {
    for (const GivenIn& given : givens_) {
      if (std::find(cases_.begin(), cases_.end(), given.held_in) != cases_.end()) continue;
      cases_.push_back(given.held_in);
      CaseTrace form =
          solve_case(asking_of(given.held_in), *given.held_in, options_, Scrutiny::none);
      const std::optional<Contradiction>& found = form.contradiction;
      if (found) {
        result_.outcome = found->remainder.number.is_symbolic() ? UnknownOutcome::ideal_loop
                                                                : UnknownOutcome::case_contradicts;
      }
      result_.forms.push_back(std::move(form));
      if (result_.forms.back().contradiction) return false;
    }
    return true;
  }

  /// The problem with what is given in the case for questions, in the order of the givens.
  [[nodiscard]] Problem asking_of(const Case* setting) const {
    Problem asking = problem_;
    asking.questions.clear();
    for (const GivenIn& given : givens_) {
      if (given.held_in != setting) continue;
      asking.questions.push_back(problem_.givens[given.given].question);
    }
    return asking;
  }

  bool state_equations() {
    std::vector<std::size_t> next(cases_.size(), 0);  // by case: the answer that comes next
    for (const GivenIn& given : givens_) {
      const auto at = static_cast<std::size_t>(
          std::find(cases_.begin(), cases_.end(), given.held_in) - cases_.begin());
      UnknownEquation equation;
      equation.given = given.given;
      equation.form_in = at;
      equation.form = result_.forms[at].answers.at(next[at]++).value;
      const bool known = equation.form.value.has_value();
      if (known) {
        const Number& value = problem_.givens[given.given].value;
        equation.collected = collected(equation.form.value->number - value);
      } else {
        result_.outcome = equation.form.why == Undetermined::too_long
                              ? UnknownOutcome::too_long
                              : UnknownOutcome::given_undetermined;
        result_.failed = result_.equations.size();
      }
      result_.equations.push_back(std::move(equation));
      if (!known) return false;
    }
    return true;
  }

  void solve() {
    std::vector<Number> equations;
    for (const UnknownEquation& each : result_.equations) equations.push_back(each.collected);
    const EquationSolution solution = solve_equations(std::move(equations), symbols_);
    record(solution);
    switch (solution.end) {
      case EquationSolution::End::solved:
        judge(solution.roots);
        return;
      case EquationSolution::End::contradictory:
        result_.outcome = UnknownOutcome::no_value;
        result_.failed = solution.failed;
        look_at_gap(solution.failed);
        return;
      case EquationSolution::End::free:
        for (const std::size_t k : solution.free) result_.free.push_back(result_.unknowns[k]);
        result_.outcome = UnknownOutcome::any_value;
        return;
      case EquationSolution::End::too_entangled:
        result_.outcome = UnknownOutcome::too_entangled;
        return;
    }
  }

  void record(const EquationSolution& solution) {
    for (const SolvedFor& step : solution.eliminations) {
      result_.eliminations.push_back(
          {result_.unknowns[step.unknown], step.equation, step.collected, step.value});
    }
    if (!solution.last) return;
    result_.last = LastEquation{result_.unknowns[solution.last->unknown], solution.last->equation,
                                solution.last->collected};
  }

  void judge(const std::vector<EquationSolution::Root>& roots) {
    for (const EquationSolution::Root& root : roots) {
      UnknownRoot judged;
      judged.values = root.values;
      judge_one(root, judged);
      result_.roots.push_back(std::move(judged));
    }
    turn_batteries();
    const bool any =
        std::any_of(result_.roots.begin(), result_.roots.end(),
                    [](const UnknownRoot& root) { return root.fate == RootFate::fits; });
    result_.outcome = any ? UnknownOutcome::found : UnknownOutcome::no_value;
    if (!any && result_.last) look_at_gap(result_.last->equation);
  }

  void judge_one(const EquationSolution::Root& root, UnknownRoot& judged) {
    if (root.values.empty()) {
      judged.fate = RootFate::does_not_exist;
      return;
    }
    for (std::size_t k = 0; k < root.values.size(); ++k) {
      const Part& part = problem_.part(result_.unknowns[k]);
      if (part.kind == PartKind::battery || root.values[k].sign() == Sign::positive) continue;
      judged.fate = RootFate::not_positive;
      judged.blamed = result_.unknowns[k];
      return;
    }
    const std::optional<std::size_t> broken = root.broken ? root.broken : first_broken(root.values);
    if (!broken) return;
    judged.fate = RootFate::other_given;
    judged.equation = *broken;
  }

  /// A battery is meant as it is written, unless only the other way round fits.
  void turn_batteries() {
    const auto negative = [&](const UnknownRoot& root) {
      for (std::size_t k = 0; k < root.values.size(); ++k) {
        if (root.values[k].sign() == Sign::negative) return result_.unknowns[k];
      }
      return PartId{};
    };
    std::vector<UnknownRoot*> turned;
    bool upright = false;
    for (UnknownRoot& root : result_.roots) {
      if (root.fate != RootFate::fits) continue;
      const bool is_turned = negative(root).exists();
      if (is_turned) turned.push_back(&root);
      upright = upright || !is_turned;
    }
    if (!upright) return;
    for (UnknownRoot* root : turned) {
      root->fate = RootFate::turned_round;
      root->blamed = negative(*root);
    }
  }

  /// Would the given hold with a gap in place of the only unknown, a resistance? It does where the
  /// equation loses its highest power.
  void look_at_gap(std::size_t equation) {
    if (symbols_.size() != 1) return;
    if (problem_.part(result_.unknowns.front()).kind == PartKind::battery) return;
    const UnknownEquation& one = result_.equations[equation];
    const Number& form = one.form.value->number;
    const std::size_t full = std::max(degree(numerator_of(form), symbols_.front()),
                                      degree(denominator_of(form), symbols_.front()));
    result_.gap_would_do = degree(one.collected, symbols_.front()) < full;
  }

  /// The first equation whose given does not hold in the circuit with these values.
  [[nodiscard]] std::optional<std::size_t> first_broken(const std::vector<Surd>& values) const {
    const bool rational = std::all_of(values.begin(), values.end(),
                                      [](const Surd& value) { return value.is_rational(); });
    const std::optional<std::size_t> broken =
        rational ? broken_in_circuit(values) : broken_in_forms(values);
    ensure(!broken || values.size() > 1 || result_.equations.size() > 1,
           "a value that was found does not hold in the circuit");
    return broken;
  }

  [[nodiscard]] std::optional<std::size_t> broken_in_circuit(
      const std::vector<Surd>& values) const {
    std::vector<Number> numbers;
    numbers.reserve(values.size());
    for (const Surd& value : values) numbers.push_back(value.rational());
    const std::vector<Number> answers = answers_with(numbers);
    for (std::size_t i = 0; i < answers.size(); ++i) {
      if (answers[i] != given_value(i)) return i;
    }
    return std::nullopt;
  }

  /// What the circuit with these values has for each equation. A quantity without a value counts
  /// as zero more than what is given, so that it never agrees.
  [[nodiscard]] std::vector<Number> answers_with(const std::vector<Number>& values) const {
    std::vector<Number> answers(result_.equations.size());
    for (std::size_t c = 0; c < cases_.size(); ++c) {
      const Case setting = with_values(*cases_[c], result_.unknowns, values);
      const Problem problem = with_values(asking_of(cases_[c]), result_.unknowns, values);
      const CaseTrace solved = solve_case(problem, setting, options_, Scrutiny::full);
      std::size_t next = 0;
      for (std::size_t i = 0; i < answers.size(); ++i) {
        if (result_.equations[i].form_in != c) continue;
        const bool known = !solved.contradiction && solved.answers.at(next).value.value;
        answers[i] = known ? solved.answers[next].value.value->number : given_value(i) + 1;
        ++next;
      }
    }
    return answers;
  }

  /// For irrational values: in the forms, and for a single unknown by numbers on both sides of it,
  /// between which the given quantity has to pass through its value.
  [[nodiscard]] std::optional<std::size_t> broken_in_forms(const std::vector<Surd>& values) const {
    std::vector<SurdValue> put_in;
    for (std::size_t k = 0; k < values.size(); ++k) put_in.emplace_back(symbols_[k], values[k]);
    for (std::size_t i = 0; i < result_.equations.size(); ++i) {
      const auto found = value_at(result_.equations[i].form.value->number, put_in);
      if (!found || !(*found == Surd(given_value(i)))) return i;
    }
    if (values.size() == 1 && result_.equations.size() == 1) ensure_passed(values.front());
    return std::nullopt;
  }

  void ensure_passed(const Surd& root) const {
    Number width = abs(root.factor()) / Number(1'000);
    auto [low, high] = bounds(root, width);
    while (low.sign() != high.sign()) {
      width = width / Number(1'000);
      std::tie(low, high) = bounds(root, width);
    }
    const Number before = answers_with({low}).front() - given_value(0);
    const Number after = answers_with({high}).front() - given_value(0);
    ensure((before * after).is_negative(), "an irrational value does not hold in the circuit");
  }

  [[nodiscard]] const Number& given_value(std::size_t equation) const {
    return problem_.givens[result_.equations[equation].given].value;
  }

  const Problem& problem_;
  const std::vector<GivenIn>& givens_;
  const SolveOptions& options_;
  std::vector<std::string> symbols_;
  std::vector<const Case*> cases_;  // in which something is given; by index into forms
  UnknownSolution result_;
};

}  // namespace

UnknownSolution find_unknowns(const Problem& problem, const std::vector<GivenIn>& givens,
                              const SolveOptions& options) {
  return Search(problem, givens, options).run();
}

Problem with_values(Problem problem, const std::vector<PartId>& unknowns,
                    const std::vector<Number>& values) {
  for (std::size_t k = 0; k < unknowns.size(); ++k) {
    problem.parts[unknowns[k].index].value = values[k];
  }
  return problem;
}

Case with_values(const Case& setting, const std::vector<PartId>& unknowns,
                 const std::vector<Number>& values) {
  Case result = setting;
  for (std::size_t k = 0; k < unknowns.size(); ++k) {
    const bool is_set = std::any_of(setting.settings.begin(), setting.settings.end(),
                                    [&](const Setting& s) { return s.part == unknowns[k]; });
    if (!is_set) result.settings.push_back({unknowns[k], SettingKind::value, values[k], true});
  }
  return result;
}

}  // namespace ohmfold

// Cases with unknowns: a search for their values, then each case with what was found.
#include "solve/unknowns.h"

#include <algorithm>
#include <memory>
#include <utility>

#include "circuit/set_case.h"
#include "ohmfold/decimal.h"
#include "ohmfold/error.h"
#include "ohmfold/symbolic.h"
#include "ohmfold/unknown.h"
#include "solve/search.h"
#include "solve/solve_case.h"

namespace ohmfold {
namespace {

using Found = std::shared_ptr<const UnknownSolution>;

bool all_rational(const std::vector<Surd>& values) {
  return std::all_of(values.begin(), values.end(),
                     [](const Surd& value) { return value.is_rational(); });
}

class CaseMaker {
 public:
  CaseMaker(const Problem& problem, const SolveOptions& options)
      : problem_(problem), options_(options), with_values_(problem) {
    with_values_.cases.clear();
  }

  Trace run() {
    if (problem_.givens.front().held_in) {
      find_for_all();
    } else {
      for (const Case& setting : problem_.cases) find_for(setting);
    }
    trace_.problem = std::make_shared<const Problem>(std::move(with_values_));
    return std::move(trace_);
  }

 private:
  /// The givens name their cases: the values found are those of every case.
  void find_for_all() {
    std::vector<GivenIn> givens;
    for (std::size_t i = 0; i < problem_.givens.size(); ++i) {
      const Case& held_in = *problem_.givens[i].held_in;
      // One address for each case, so that a case is solved once.
      const auto same = std::find_if(givens.begin(), givens.end(), [&](const GivenIn& other) {
        return other.held_in->label == held_in.label;
      });
      givens.push_back({i, same == givens.end() ? &held_in : same->held_in});
    }
    const Found found =
        std::make_shared<const UnknownSolution>(find_unknowns(problem_, givens, options_));
    add_cases(problem_.cases, found);
  }

  void find_for(const Case& setting) {
    std::vector<GivenIn> givens;
    for (std::size_t i = 0; i < problem_.givens.size(); ++i) givens.push_back({i, &setting});
    UnknownSolution found = find_unknowns(problem_, givens, options_);
    if (found.outcome == UnknownOutcome::case_contradicts) {
      add(setting, std::move(found.forms.back()));
      return;
    }
    add_cases({setting}, std::make_shared<const UnknownSolution>(std::move(found)));
  }

  void add_cases(const std::vector<Case>& cases, const Found& found) {
    if (found->outcome != UnknownOutcome::found) {
      for (const Case& setting : cases) {
        found->outcome == UnknownOutcome::any_value ? add_answers(setting, found, {})
                                                    : add_failure(setting, found);
      }
      return;
    }
    std::vector<std::size_t> fitting;
    for (std::size_t i = 0; i < found->roots.size(); ++i) {
      if (found->roots[i].fate == RootFate::fits) fitting.push_back(i);
    }
    for (std::size_t k = 0; k < fitting.size(); ++k) {
      for (Case setting : cases) {
        setting.solution = fitting.size() == 1 ? 0 : k + 1;
        all_rational(found->roots[fitting[k]].values) ? add_solved(setting, found, fitting[k])
                                                      : add_answers(setting, found, fitting[k]);
      }
    }
  }

  void add_solved(const Case& setting, const Found& found, std::size_t root) {
    std::vector<Number> values;
    for (const Surd& value : found->roots[root].values) values.push_back(value.rational());
    const Case complete = with_values(setting, found->unknowns, values);
    const Problem problem = with_values(problem_, found->unknowns, values);
    CaseTrace solved = solve_case(problem, complete, options_, Scrutiny::full);
    name_after(setting, found, root, solved);
    add(complete, std::move(solved));
  }

  /// Only the answers, from the circuit with symbols: at an irrational root, or, where an unknown
  /// is not determined, those that do not depend on it.
  void add_answers(const Case& setting, const Found& found, std::optional<std::size_t> root) {
    CaseTrace result = bare(setting, found);
    try {
      const WorkLimit limit(kMostSymbolWork);
      CaseTrace form = solve_case(problem_, setting, options_, Scrutiny::none);
      result.contradiction = std::move(form.contradiction);
      result.kind = form.kind;
      for (Answer& answer : form.answers) {
        answer.shown_by.reset();
        root ? put_in_root(*found, *root, answer) : put_in_what_is_known(*found, answer);
        result.answers.push_back(std::move(answer));
      }
    } catch (const BeyondBudget&) {
      result.answers.clear();
      result.complete = false;
    }
    result.only_answers = true;
    if (root) name_after(setting, found, *root, result);
    add(setting, std::move(result));
  }

  void put_in_root(const UnknownSolution& found, std::size_t root, Answer& answer) const {
    if (!answer.value.value) return;
    std::vector<SurdValue> values;
    for (std::size_t k = 0; k < found.unknowns.size(); ++k) {
      values.emplace_back(problem_.part(found.unknowns[k]).name, found.roots[root].values[k]);
    }
    Quantity& quantity = *answer.value.value;
    const std::optional<Surd> value = value_at(quantity.number, values);
    ensure(value.has_value(), "a quantity grows beyond all bounds at a positive value");
    if (value->is_rational()) {
      quantity.number = value->rational();
    } else {
      answer.value = Undetermined::irrational;
      answer.irrational = value;
    }
  }

  void put_in_what_is_known(const UnknownSolution& found, Answer& answer) const {
    if (!answer.value.value) return;
    std::vector<SymbolValue> values;
    for (const Elimination& step : found.eliminations) {
      values.emplace_back(problem_.part(step.unknown).name, step.value);
    }
    const std::optional<Number> value = substitute(answer.value.value->number, values);
    if (!value || value->is_symbolic()) {
      answer.value = Undetermined::any_value;
    } else {
      answer.value.value->number = *value;
    }
  }

  void add_failure(const Case& setting, const Found& found) {
    CaseTrace result = bare(setting, found);
    result.contradiction.emplace().kind = ContradictionKind::unknown_not_found;
    add(setting, std::move(result));
  }

  [[nodiscard]] CaseTrace bare(const Case& setting, const Found& found) const {
    CaseTrace result;
    result.name = setting.label;
    result.main.start = set_case(problem_, setting);
    result.unknown = found;
    return result;
  }

  /// Where several solutions fit, the case is called after its own.
  void name_after(const Case& setting, const Found& found, std::size_t root, CaseTrace& result) {
    result.unknown = found;
    result.root = root;
    if (setting.solution == 0) return;
    if (!result.name.empty()) result.name += ", ";
    const Part& part = problem_.part(found->unknowns.front());
    const Surd& value = found->roots[root].values.front();
    const Quantity quantity(rounding_like(value, problem_.figures),
                            unit_of(ValueOf{found->unknowns.front()}, problem_));
    constexpr std::size_t kLongest = 12;
    const std::string exact = exact_text(quantity, Letters::unicode);
    const bool is_short = value.is_rational() && exact.size() <= kLongest;
    result.name +=
        part.name + (is_short ? " = " + exact
                              : " ≈ " + rounded_text(quantity, problem_.figures, Letters::unicode));
  }

  void add(Case setting, CaseTrace result) {
    with_values_.cases.push_back(std::move(setting));
    trace_.cases.push_back(std::move(result));
  }

  const Problem& problem_;
  const SolveOptions& options_;
  Problem with_values_;
  Trace trace_;
};

}  // namespace

Trace solve_with_unknowns(const Problem& problem, const SolveOptions& options) {
  return CaseMaker(problem, options).run();
}

}  // namespace ohmfold

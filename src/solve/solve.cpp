// A case from its settings to its checked trace.
#include "ohmfold/solve.h"

#include "check/check.h"
#include "check/step.h"
#include "circuit/set_case.h"
#include "ohmfold/symbolic.h"
#include "solve/answers.h"
#include "solve/cautions.h"
#include "solve/conditions.h"
#include "solve/contradiction.h"
#include "solve/drive.h"
#include "solve/large.h"
#include "solve/node_elimination.h"
#include "solve/node_voltage.h"
#include "solve/proof.h"
#include "solve/reduce.h"
#include "solve/remarks.h"
#include "solve/results.h"
#include "solve/solve_case.h"
#include "solve/superposition.h"
#include "solve/unknowns.h"

namespace ohmfold {
namespace {

class CaseSolver {
 public:
  CaseSolver(const Problem& problem, const Case& setting, const SolveOptions& options,
             Scrutiny scrutiny)
      : problem_(problem), setting_(setting), options_(options), scrutiny_(scrutiny) {
    result_.name = setting.label;
  }

  CaseTrace run() {
    Network start = set_case(problem_, setting_);
    result_.contradiction = find_contradiction(start);
    if (result_.contradiction) {
      result_.main.start = std::move(start);
      return std::move(result_);
    }
    const bool driven = start.has_source();
    result_.main = reduce(driven ? std::move(start) : without_source(std::move(start)), options_);
    result_.kind = driven ? kind_of(result_.main) : Kind::no_source;
    if (scrutiny_ == Scrutiny::full) prove(result_);
    if (options_.reduce_only) {
      result_.checks = check_steps(result_.main);
    } else if (!suffices()) {
      leave_unanswered();
    } else if (!driven) {
      solve_undriven();
    } else if (!superposed()) {
      solve_driven();
    }
    demand_that_all_hold(result_.checks, "in case \"" + result_.name + "\"");
    return std::move(result_);
  }

 private:
  // Without a source, the first resistance that is asked for is the point of the case.
  Network without_source(Network start) const {
    std::vector<Question> questions = problem_.questions;
    for (const Given& given : problem_.givens) questions.push_back(given.question);
    for (const Question& question : questions) {
      if (const auto* asked = std::get_if<ResistanceBetween>(&question)) {
        return resistors_between(problem_, setting_, asked->from, asked->to);
      }
    }
    return start;
  }

  // May only series and parallel be used, and is more than one part left after them?
  [[nodiscard]] bool suffices() const {
    const Stop stop = result_.main.stop;
    const bool reduces = stop != Stop::bridge && stop != Stop::several_sources;
    return reduces || options_.method != Method::series_parallel;
  }

  void leave_unanswered() {
    result_.complete = false;
    if (result_.main.stop == Stop::bridge) result_.equivalent = Undetermined::beyond_method;
    for (const Question& question : questions_of(problem_, false)) {
      result_.answers.push_back({question, Undetermined::beyond_method, {}});
    }
    result_.checks = check_steps(result_.main);
  }

  void solve_undriven() {
    if (result_.main.source.exists()) result_.equivalent = seen_resistance(result_.main);
    const PointPotentials points = fill_in_nothing(problem_, result_);
    answer(problem_, setting_, options_, &points, result_);
    if (scrutiny_ == Scrutiny::none) return;
    result_.checks = check_case(problem_, result_);
  }

  // Several sources, each alone and then the sum, where that is wished for and can be done.
  bool superposed() {
    if (options_.method == Method::node_voltage || result_.main.stop != Stop::several_sources)
      return false;
    auto shares = find_shares(problem_, setting_, options_, result_.main);
    if (!shares) return false;
    result_.shares = std::move(*shares);
    Flow<ExactField> flow = sum_of_shares(result_.main.start, result_.shares);
    conclude(fill_in_superposed(problem_, flow, result_));
    return true;
  }

  void conclude(const PointPotentials& points) {
    answer(problem_, setting_, options_, &points, result_);
    if (scrutiny_ == Scrutiny::none) return;
    find_conditions();
    result_.cautions = cautions_of(problem_, result_);
    result_.remarks = remarks_of(result_);
    result_.checks = check_case(problem_, result_);
  }

  void solve_driven() {
    Flow<ExactField> flow(ExactField{}, result_.main.end.part_count());
    const bool found = drive(flow);
    find_equivalent(found, flow);
    result_.complete =
        found && all_values_fit(result_.main, flow, problem_.parts.size(), options_.most_bits);
    const bool symbols = scrutiny_ == Scrutiny::none || has_symbolic_values(problem_);
    if (!result_.complete && symbols) {
      throw BeyondBudget("the values with symbols become too long to be written for every part");
    }
    if (result_.complete) {
      write_node_equations();
      conclude(fill_in_results(problem_, flow, result_));
    } else {
      answer(problem_, setting_, options_, nullptr, result_);
      if (scrutiny_ == Scrutiny::none) return;
      result_.checks = found ? check_large(result_, flow) : check_steps(result_.main);
    }
  }

  bool drive(Flow<ExactField>& flow) const {
    if (result_.main.stop == Stop::bridge || result_.main.stop == Stop::several_sources) {
      return solve_by_node_voltage(result_.main, flow);
    }
    drive_left(result_.main, flow);
    return true;
  }

  void write_node_equations() {
    const Reduction& main = result_.main;
    if (main.stop != Stop::bridge && main.stop != Stop::several_sources) return;
    result_.elimination = write_elimination(main.end, main.left, ground_of(problem_));
  }

  void find_equivalent(bool found, const Flow<ExactField>& flow) {
    const Reduction& main = result_.main;
    if (main.stop == Stop::several_sources || main.stop == Stop::no_source) return;
    if (main.stop != Stop::bridge) {
      result_.equivalent = seen_resistance(main);
    } else if (!found) {
      result_.equivalent = Undetermined::too_long;
    } else {
      const Current current{flow.current[main.source.index]};
      // A battery of 0 V tells nothing of what it feeds, a source of current has no voltage of its
      // own.
      const bool tells = !current.is_zero() && main.end.kind(main.source) == ElementKind::battery;
      result_.equivalent =
          tells ? Reading(Voltage{flow.voltage[main.source.index]} / current) : fed_resistance();
    }
  }

  // What the one source that is left feeds, by a port in its place.
  [[nodiscard]] Reading fed_resistance() const {
    Network network = result_.main.end;
    Edit edit;
    edit.removes = {result_.main.source};
    network.commit(edit);
    network.add(ElementKind::port, network.to(result_.main.source),
                network.from(result_.main.source));
    return seen_resistance(reduce(std::move(network), options_));
  }

  void find_conditions() {
    if (!result_.standstill || result_.main.stop == Stop::several_sources) return;
    for (const auto& [part, from, to] : result_.standstill->left) {
      if (part.index >= result_.branches.size()) continue;
      const Reading& current = result_.branches[part.index].current;
      if (!current.value) continue;
      auto condition = sign_condition(current.value->number);
      if (condition) result_.conditions.push_back({part, std::move(*condition)});
    }
  }

  const Problem& problem_;
  const Case& setting_;
  const SolveOptions& options_;
  const Scrutiny scrutiny_;
  CaseTrace result_;
};

}  // namespace

namespace {

// The case, or why its symbols make it too long to work with: the one place where that is caught.
CaseTrace solve_within(const Problem& problem, const Case& setting, const SolveOptions& options) {
  const WorkLimit limit(options.most_symbolic_work);
  try {
    return CaseSolver(problem, setting, options, Scrutiny::full).run();
  } catch (const BeyondBudget& limited) {
    CaseTrace beyond;
    beyond.name = setting.label;
    beyond.main.start = Network(problem.points.size());
    beyond.beyond_budget = limited.what();
    return beyond;
  }
}

Trace solve_all(Problem problem, const SolveOptions& options) {
  Trace trace;
  trace.problem = std::make_shared<const Problem>(std::move(problem));
  for (const Case& setting : trace.problem->cases) {
    trace.cases.push_back(solve_within(*trace.problem, setting, options));
  }
  return trace;
}

bool all_have_values(const Problem& problem) {
  return std::all_of(problem.symbols.begin(), problem.symbols.end(),
                     [](const SymbolMeaning& symbol) { return symbol.value.has_value(); });
}

}  // namespace

CaseTrace solve_case(const Problem& problem, const Case& setting, const SolveOptions& options,
                     Scrutiny scrutiny) {
  return CaseSolver(problem, setting, options, scrutiny).run();
}

Trace solve(const Problem& problem, const SolveOptions& options) {
  if (!problem.givens.empty() && !options.reduce_only)
    return solve_with_unknowns(with_values_put_in(problem), options);
  Trace trace = solve_all(problem, options);
  if (!trace.is_beyond_budget() || !all_have_values(problem)) return trace;
  trace = solve_all(with_values_put_in(problem), options);
  trace.values_put_in_first = true;
  return trace;
}

Reduction reduce_case(const Problem& problem, const Case& setting, const SolveOptions& options) {
  return reduce(set_case(problem, setting), options);
}

}  // namespace ohmfold

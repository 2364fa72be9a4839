// Putting the checks of a case together.
#include "check/check.h"

#include <iterator>
#include <utility>

#include "check/battery_step.h"
#include "check/laws.h"
#include "check/node_elimination.h"
#include "check/node_voltage.h"
#include "check/report.h"
#include "check/step.h"
#include "ohmfold/error.h"

namespace ohmfold {
namespace {

void append(std::vector<Check>& checks, std::vector<Check> more) {
  checks.insert(checks.end(), std::make_move_iterator(more.begin()),
                std::make_move_iterator(more.end()));
}

void append(std::vector<Check>& checks, std::optional<Check> one) {
  if (one) checks.push_back(std::move(*one));
}

// The parts of the start that the source stands for: itself, or the batteries that became one. The
// first gave its place to it.
struct Behind {
  PartId first;
  std::vector<bool> stands;  // by part

  explicit Behind(const Reduction& reduction)
      : first(reduction.source), stands(reduction.end.part_count(), false) {
    stands[first.index] = true;
    for (std::size_t i = reduction.steps.size(); i-- > 0;) {
      const Step step = reduction.steps[i];
      if (!check::is_battery_step(step) || !stands[step.makes.index]) continue;
      if (step.makes == first) first = step.takes.front();
      for (const PartId part : step.takes) stands[part.index] = true;
    }
  }
};

// The network as its source sees it: a port in the source's place, every other battery replaced by
// its internal resistance and every other source of current by a gap. The internal resistances of
// batteries that became one belong to the source. Where the source is a port, the network itself.
Network fed_network(const Reduction& reduction) {
  const Network& start = reduction.start;
  const Behind behind(reduction);
  Network network(start.point_count());
  for (std::uint32_t i = 0; i < start.part_count(); ++i) {
    const PartId part{i};
    const PointId from = start.from(part);
    const PointId to = start.to(part);
    const bool is_battery = start.kind(part) == ElementKind::battery;
    if (part == behind.first) {
      network.add(ElementKind::port, from, to);
    } else if (behind.stands[i] || (is_battery && start.battery(part).internal.is_zero())) {
      network.add(ElementKind::wire, from, to);
    } else if (start.kind(part) == ElementKind::current_source) {
      network.add(ElementKind::switched_off, from, to);
    } else if (!is_battery) {
      network.add(start.kind(part), from, to, start.resistance(part));
    } else {
      network.add(ElementKind::resistor, from, to, Ratio(start.battery(part).internal.number));
    }
  }
  return network;
}

void check_ground(const Problem& problem, const CaseTrace& results, std::vector<Check>& checks) {
  if (!problem.ground) return;
  Check check{CheckLaw::voltage, true, 0, *problem.ground, {}, 1, 0, {}};
  for (const NodeResult& node : results.nodes) {
    if (node.point != *problem.ground) continue;
    if (node.potential.value && node.potential.value->number.is_zero()) continue;
    check::fail(check, check::name_of(node.point) + " is the ground, but not at 0 V");
    checks.push_back(check);
  }
}

void check_short_circuits(const CaseTrace& results, std::vector<Check>& checks) {
  for (const Answer& answer : results.answers) {
    const auto* asked = std::get_if<TheveninBetween>(&answer.question);
    if (asked == nullptr || !answer.thevenin) continue;
    append(checks, check_short_circuit(results.main.start, asked->from, asked->to,
                                       answer.thevenin->short_circuit_current));
  }
}

void check_resistances(const CaseTrace& results, std::vector<Check>& checks) {
  if (results.equivalent && results.main.source.exists()) {
    append(checks, check_resistance(fed_network(results.main), *results.equivalent));
  }
  for (const Answer& answer : results.answers) {
    if (!answer.shown_by || *answer.shown_by >= results.further.size()) continue;
    const Reduction& shown = results.further[*answer.shown_by];
    if (!shown.source.exists()) continue;
    const Reading& reading = answer.thevenin ? answer.thevenin->resistance : answer.value;
    append(checks, check_resistance(fed_network(shown), reading));
  }
}

}  // namespace

std::vector<Check> check_case(const Problem& problem, const CaseTrace& results) {
  std::vector<Check> checks;
  if (results.contradiction) return checks;
  append(checks, check_steps(results.main));
  for (const Reduction& further : results.further) append(checks, check_steps(further, 0));
  if (!results.branches.empty()) {
    append(checks, check_laws(results.main.start, results));
    check_ground(problem, results, checks);
    append(checks, check_node_voltages(results.main.start, results));
    append(checks, check_elimination(results));
    check_short_circuits(results, checks);
  }
  check_resistances(results, checks);
  return checks;
}

void demand_that_all_hold(const std::vector<Check>& checks, const std::string& where) {
  for (const Check& check : checks) {
    ensure(check.holds, "a check failed " + where + ": " + check.detail);
  }
}

}  // namespace ohmfold

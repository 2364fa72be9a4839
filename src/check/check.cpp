// Putting the checks of a case together.
#include "check/check.h"

#include <iterator>
#include <utility>

#include "check/laws.h"
#include "check/node_elimination.h"
#include "check/node_voltage.h"
#include "check/report.h"
#include "check/step.h"

namespace ohmfold {
namespace {

void append(std::vector<Check>& checks, std::vector<Check> more) {
  checks.insert(checks.end(), std::make_move_iterator(more.begin()),
                std::make_move_iterator(more.end()));
}

void append(std::vector<Check>& checks, std::optional<Check> one) {
  if (one) checks.push_back(std::move(*one));
}

// The network as its battery sees it: a port in the battery's place, every other battery replaced
// by its internal resistance. Where the source is a port, the network itself.
Network fed_network(const Network& start, PartId source) {
  Network network(start.point_count());
  for (std::uint32_t i = 0; i < start.part_count(); ++i) {
    const PartId part{i};
    const PointId from = start.from(part);
    const PointId to = start.to(part);
    if (start.kind(part) != ElementKind::battery) {
      network.add(start.kind(part), from, to, start.resistance(part));
    } else if (part == source) {
      network.add(ElementKind::port, from, to);
    } else if (start.battery(part).internal.is_zero()) {
      network.add(ElementKind::wire, from, to);
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

void check_resistances(const CaseTrace& results, std::vector<Check>& checks) {
  if (results.equivalent && results.main.source.exists()) {
    append(checks, check_resistance(fed_network(results.main.start, results.main.source),
                                    *results.equivalent));
  }
  for (const Answer& answer : results.answers) {
    if (!answer.shown_by || *answer.shown_by >= results.further.size()) continue;
    const Reduction& shown = results.further[*answer.shown_by];
    if (!shown.source.exists()) continue;
    append(checks, check_resistance(fed_network(shown.start, shown.source), answer.value));
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
  }
  check_resistances(results, checks);
  return checks;
}

}  // namespace ohmfold

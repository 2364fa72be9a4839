// The table of all rules.
#include "ohmfold/rule.h"

#include <algorithm>

#include "ohmfold/error.h"
#include "rules/rules.h"

namespace ohmfold {

Frontier whole(const Network& network) {
  Frontier frontier;
  frontier.parts.reserve(network.alive_count());
  frontier.points.reserve(network.point_count());
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    if (network.is_alive(PartId{i})) frontier.parts.push_back(PartId{i});
  }
  for (std::uint32_t i = 0; i < network.point_count(); ++i) {
    if (network.degree(PointId{i}) > 0) frontier.points.push_back(PointId{i});
  }
  return frontier;
}

const std::vector<Rule>& all_rules() {
  static const std::vector<Rule> table = {
      gap_rule(),        ideal_wire_rule(),       shorted_rule(),          dead_end_rule(),
      series_rule(),     parallel_rule(),         equal_potentials_rule(), delta_star_rule(),
      star_delta_rule(), node_elimination_rule(), battery_chain_rule()};
  return table;
}

const Rule& rule(RuleName name) {
  const auto& table = all_rules();
  const auto at =
      std::find_if(table.begin(), table.end(), [&](const Rule& r) { return r.name == name; });
  ensure(at != table.end(), "a rule that is not in the table");
  return *at;
}

}  // namespace ohmfold

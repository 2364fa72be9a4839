// Short ways to write networks, steps and results in the tests of the checks.
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "check/node_equations.h"
#include "check/rationals.h"
#include "ohmfold/trace.h"

namespace ohmfold {

inline PointId point(int index) {
  return PointId{static_cast<std::uint32_t>(index)};
}
inline PartId part(int index) {
  return PartId{static_cast<std::uint32_t>(index)};
}
inline Ratio ohm(int numerator, int denominator = 1) {
  return {numerator, denominator};
}

/// A network written part by part; ids count from 0.
class Builder {
 public:
  explicit Builder(int points) : network_(static_cast<std::size_t>(points)) {}

  Builder& resistor(int from, int to, int numerator, int denominator = 1) {
    network_.add(ElementKind::resistor, point(from), point(to), ohm(numerator, denominator));
    return *this;
  }
  Builder& battery(int negative, int positive, int volt, int internal = 0) {
    network_.add_battery(point(negative), point(positive), {volt}, {internal});
    return *this;
  }
  Builder& other(ElementKind kind, int from, int to) {
    network_.add(kind, point(from), point(to));
    return *this;
  }
  Builder& wire(int from, int to) { return other(ElementKind::wire, from, to); }

  [[nodiscard]] Network build() const { return network_; }

 private:
  Network network_;
};

/// A step with the lists that it points into.
struct WrittenStep {
  std::vector<PartId> takes;
  std::vector<PointId> merges;
  std::optional<NewPart> made;

  [[nodiscard]] Step step() const {
    Step step;
    step.number = 1;
    step.takes = takes;
    step.merges = merges;
    return step;
  }
};

inline WrittenStep taking(const std::vector<int>& parts) {
  WrittenStep step;
  for (const int one : parts) step.takes.push_back(part(one));
  return step;
}
inline WrittenStep making(const std::vector<int>& parts, int from, int to, const Ratio& value) {
  WrittenStep step = taking(parts);
  step.made = NewPart{point(from), point(to), value};
  return step;
}
inline WrittenStep merging(const std::vector<int>& parts, const std::vector<int>& points) {
  WrittenStep step = taking(parts);
  for (const int one : points) step.merges.push_back(point(one));
  return step;
}

/// The results of a network, found by eliminating its node equations exactly, with point 0 as
/// ground.
inline CaseTrace results_of(const Network& network) {
  const check::Rationals field;
  const check::Wiring wiring(network);
  const std::vector<Number> potential =
      check::node_potentials(field, network, wiring, std::nullopt, 1000).value();
  const std::vector<Number> current = check::branch_currents(field, network, wiring, potential);
  CaseTrace results;
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    const PartId id{i};
    BranchResult branch{id, Current{current[i]}, Undetermined::floating, Undetermined::floating};
    if (wiring.is_open[i]) branch.current = Undetermined::ideal_loop;
    const PointId from = network.from(id);
    const PointId to = network.to(id);
    if (wiring.forest.joined(from, to)) {
      Number drop = potential[from.index] - potential[to.index];
      if (network.kind(id) == ElementKind::battery) drop = -drop;
      branch.voltage = Voltage{drop};
      branch.power = Power{drop * current[i]};
      if (wiring.is_open[i]) branch.power = Undetermined::ideal_loop;
    }
    results.branches.push_back(branch);
  }
  for (std::uint32_t i = 0; i < network.point_count(); ++i) {
    NodeResult node{PointId{i}, Undetermined::floating};
    if (wiring.forest.joined(point(0), PointId{i})) {
      node.potential = Voltage{potential[i] - potential[0]};
    }
    results.nodes.push_back(node);
  }
  return results;
}

/// Does every check hold? There must be one.
inline bool all_hold(const std::vector<Check>& checks) {
  for (const Check& check : checks) {
    if (!check.holds) return false;
  }
  return !checks.empty();
}

/// The law of the first check that fails.
inline std::optional<CheckLaw> failing_law(const std::vector<Check>& checks) {
  for (const Check& check : checks) {
    if (!check.holds) return check.law;
  }
  return std::nullopt;
}

}  // namespace ohmfold

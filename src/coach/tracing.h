// The search for ways from a person's own numbers to a value: one law after the other, backwards.
#pragma once

#include <optional>
#include <vector>

#include "coach/case_book.h"
#include "coach/own_solution.h"
#include "coach/route_arithmetic.h"

namespace ohmfold {

/// A way, where there is one.
using Found = std::optional<Route>;

/// One search. The laws are in files by what they give: trace_currents.cpp, trace_voltages.cpp,
/// trace_power.cpp.
class Tracing {
 public:
  explicit Tracing(const CaseBook& book) : book_(book), start_(book.networks.original()) {}

  /// All ways to the target itself; what it claims of itself is no way.
  std::vector<Route> all(const Target& target);

 private:
  [[nodiscard]] Found known(const Target& target) const;
  Found value(const Target& target, int depth);
  // The first way to it; while gathering, all ways are kept.
  Found derive(const Target& target, int depth);
  // Keeps a way; true where the search may end with it.
  bool keep(Found route, Found& first);

  Found current_of(PartId part, int depth);
  Found voltage_of(PartId part, int depth);
  Found power_of(PartId part, int depth) { return value({Claimed::power, part, {}, {}}, depth); }
  [[nodiscard]] Found resistance_of(PartId part) const;
  static Found times(const Found& a, const Found& b);
  static Found over(const Found& a, const Found& b);
  static Found less(const Found& a, const Found& b);
  // With the sign that the true value has: what is worked out along a tree is a size.
  [[nodiscard]] Found directed(Found size, const Target& target) const;

  Found current(const Target& target, int depth);
  bool current_within(const Target& target, int depth, Found& first);
  Found current_of_operands(PartId part, int depth);
  // E / (R + r) with the person's resistance of the whole network.
  Found source_current(PartId source, int depth);
  // The sum of currents or voltages of parts, but for one.
  Found sum_of(const std::vector<PartId>& parts, PartId without, int depth, bool currents);
  // Kirchhoff's current law at one end of a part, in the circuit of the file.
  Found by_current_law(PartId part, bool at_first, int depth);

  Found voltage(const Target& target, int depth);
  Found terminal_voltage(PartId battery, int depth);
  bool voltage_within(const Target& target, int depth, Found& first);
  Found voltage_of_operands(PartId part, int depth);
  // A difference of potentials: of the two potentials, or along a short path of parts.
  Found between(PointId from, PointId to, int depth);
  struct Walk {
    PointId from, to;
    int depth;
  };
  // Depth first along parts whose voltage is known or follows, a few parts at most.
  void walk(const Walk& asked, Found& first);

  Found power(const Target& target, int depth);
  Found power_of_others(PartId source, int depth);
  Found made_value(const Target& target);
  Found whole(int depth);

  [[nodiscard]] PartId source_of_network() const;
  [[nodiscard]] bool is_source_of_network(PartId part) const { return part == source_of_network(); }
  [[nodiscard]] bool is_battery(PartId part) const;
  // The one resistor that is left beside the source, or none.
  [[nodiscard]] PartId only_part() const;
  [[nodiscard]] bool is_only_part(PartId part) const;
  [[nodiscard]] const std::vector<PartId>& living() const;
  Found by_solution(const Target& target);

  const CaseBook& book_;
  const Network& start_;
  std::vector<Target> open_;  // being worked out: a way must not run through itself
  bool gather_ = false;
  std::vector<Route>* collect_ = nullptr;
  int laws_ = 0;
  mutable std::optional<std::vector<PartId>> living_;
  std::optional<std::optional<OwnSolution>> solution_;
};

}  // namespace ohmfold

// Points joined by ideal batteries are one node of the equations, each point at its own offset.
#include "solve/node_voltage.h"

#include <algorithm>
#include <unordered_map>

#include "ohmfold/error.h"
#include "solve/elimination.h"
#include "solve/ideal_currents.h"
#include "solve/lifting.h"

namespace ohmfold {
namespace {

// From so many nodes on, lifting is the faster way (docs/performance.md).
constexpr std::uint32_t kLiftFrom = 25;

// A part that is left, as the node equations see it: it raises the potential from its first point
// to its second by `emf` less what its resistance takes.
struct Drive {
  Number emf;
  Number resistance;  // 0: ideal
};

class NodeVoltage {
 public:
  NodeVoltage(const Reduction& reduction, Flow<ExactField>& flow)
      : network_(reduction.end), left_(reduction.left), flow_(flow) {}

  bool run() {
    std::vector<PartId> ideal;
    for (const PartId part : left_) {
      if (!drives_current(part) && drive(part).resistance.is_zero()) ideal.push_back(part);
    }
    const IdealForest forest = ideal_forest(network_, ideal);
    number_nodes(forest);
    if (!solve_nodes()) return false;
    for (const PartId part : left_) find_flow(part);
    find_ideal_currents(network_, forest, ExactField{}, flow_);
    divide_by_denominator();
    return true;
  }

 private:
  [[nodiscard]] bool drives_current(PartId part) const {
    return network_.kind(part) == ElementKind::current_source;
  }

  // Requires a part that does not drive a given current.
  [[nodiscard]] Drive drive(PartId part) const {
    switch (network_.kind(part)) {
      case ElementKind::battery: {
        const BatteryData& data = network_.battery(part);
        return {data.emf.number, data.internal.number};
      }
      case ElementKind::port:
        return {Number(-1), Number(0)};
      default:
        return {Number(0), network_.resistance(part).lowest_terms()};
    }
  }

  // A node for each tree of ideal parts, and one for each point without any.
  void number_nodes(const IdealForest& forest) {
    for (const auto& branch : forest.branches) {
      const std::uint32_t node = node_of(branch.above);
      const Number emf = drive(branch.part).emf;
      const bool rises = network_.from(branch.part) == branch.above;
      const Number above = offset_[branch.above.index];
      node_[branch.below.index] = node;
      offset_[branch.below.index] = rises ? above + emf : above - emf;
    }
    for (const PartId part : left_) {
      node_of(network_.from(part));
      node_of(network_.to(part));
    }
  }

  std::uint32_t node_of(PointId point) {
    const auto [at, is_new] = node_.try_emplace(point.index, nodes_);
    if (is_new) ++nodes_;
    return at->second;
  }

  bool solve_nodes() {
    if (nodes_ < kLiftFrom || has_symbols()) {
      NodeEquations equations(nodes_);
      join_all(equations);
      const std::vector<Number> brought = brought_currents();
      for (std::uint32_t node = 0; node < nodes_; ++node) {
        equations.bring(node, Current{brought[node]});
      }
      auto solution = equations.solve(kMostNodeWork);
      if (!solution) return false;
      potential_ = std::move(*solution);
      return true;
    }
    NodeLifting equations(nodes_);
    join_all(equations);
    const auto solution = equations.solve(brought_currents(), kMostLiftingWork);
    if (!solution) return false;
    for (const cln::cl_I& numerator : solution->numerators) {
      potential_.emplace_back(cln::cl_RA(numerator));
    }
    denominator_ = Number(cln::cl_RA(solution->denominator));
    return true;
  }

  // Symbols have no digits to lift.
  [[nodiscard]] bool has_symbols() const {
    return std::any_of(left_.begin(), left_.end(),
                       [this](PartId part) { return network_.is_symbolic(part); });
  }

  template <class Equations>
  void join_all(Equations& equations) {
    for (const PartId part : left_) {
      if (drives_current(part)) continue;
      const Drive d = drive(part);
      if (d.resistance.is_zero()) continue;
      equations.join(node_[network_.from(part).index], node_[network_.to(part).index],
                     Conductance{Number(1) / d.resistance});
    }
  }

  std::vector<Number> brought_currents() {
    std::vector<Number> brought(nodes_);
    for (const PartId part : left_) {
      const PointId first = network_.from(part);
      const PointId second = network_.to(part);
      if (drives_current(part)) {
        const Number& driven = network_.driven_current(part).number;
        brought[node_[first.index]] -= driven;
        brought[node_[second.index]] += driven;
        continue;
      }
      const Drive d = drive(part);
      if (d.resistance.is_zero()) continue;
      const Number driving = offset_[first.index] - offset_[second.index] + d.emf;
      if (driving.is_zero()) continue;
      brought[node_[first.index]] -= driving / d.resistance;
      brought[node_[second.index]] += driving / d.resistance;
    }
    return brought;
  }

  // Everything times the common denominator: sums and differences then need no greatest common
  // divisor of long numbers.
  void find_flow(PartId part) {
    if (drives_current(part)) {
      flow_.current[part.index] = network_.driven_current(part).number * denominator_;
      return;
    }
    const Drive d = drive(part);
    const std::uint32_t first = network_.from(part).index;
    const std::uint32_t second = network_.to(part).index;
    const Number drop = potential_[node_[first]] - potential_[node_[second]] +
                        (offset_[first] - offset_[second]) * denominator_;
    flow_.voltage[part.index] = counts_rise(network_.kind(part)) ? -drop : drop;
    if (d.resistance.is_zero()) return;
    flow_.current[part.index] = (drop + d.emf * denominator_) / d.resistance;
  }

  void divide_by_denominator() {
    if (denominator_ == Number(1)) return;
    for (const PartId part : left_) {
      flow_.voltage[part.index] = flow_.voltage[part.index] / denominator_;
      flow_.current[part.index] = flow_.current[part.index] / denominator_;
    }
  }

  const Network& network_;
  const std::vector<PartId>& left_;
  Flow<ExactField>& flow_;
  std::unordered_map<std::uint32_t, std::uint32_t> node_;  // by point
  std::unordered_map<std::uint32_t, Number> offset_;       // by point: above its node's potential
  std::uint32_t nodes_ = 0;
  std::vector<Number> potential_;  // by node, times the denominator
  Number denominator_ = 1;
};

}  // namespace

bool solve_by_node_voltage(const Reduction& reduction, Flow<ExactField>& flow) {
  return NodeVoltage(reduction, flow).run();
}

}  // namespace ohmfold

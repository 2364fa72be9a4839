// Supernodes, conductances between them, and what flows at their potentials.
#include "check/node_equations.h"

#include "check/elimination.h"
#include "check/flow.h"
#include "check/rationals.h"
#include "exact/prime_field.h"

namespace ohmfold::check {
namespace {

// A part with a resistance: the current from its first to its second point is
// conductance * (V_first - V_second + emf).
template <class Field>
struct Branch {
  PartId part;
  typename Field::Value conductance, emf;
};

template <class Field>
std::vector<Branch<Field>> branches_of(const Field& field, const Network& network,
                                       const Wiring& wiring) {
  const auto zero = field.from(Number(0));
  const auto one = field.from(Number(1));
  std::vector<Branch<Field>> branches;
  for (const PartId part : wiring.conducting) {
    if (network.kind(part) == ElementKind::resistor) {
      const auto resistance = field.from(network.resistance(part));
      branches.push_back({part, field.divide(one, resistance), zero});
    } else if (!is_ideal(network, part)) {
      const BatteryData& battery = network.battery(part);
      const auto internal = field.from(battery.internal.number);
      branches.push_back({part, field.divide(one, internal), field.from(battery.emf.number)});
    }
  }
  return branches;
}

// Potentials within each supernode, against its root.
template <class Field>
std::vector<typename Field::Value> offsets_of(const Field& field, const Network& network,
                                              const SpanningForest& ideal) {
  std::vector<typename Field::Value> offsets(network.point_count(), field.from(Number(0)));
  for (const PointId point : ideal.order) {
    const PartId up = ideal.up[point.index];
    if (!up.exists()) continue;
    const auto& above = offsets[ideal.above(network, point).index];
    if (network.kind(up) != ElementKind::battery) {
      offsets[point.index] = above;
      continue;
    }
    const auto emf = field.from(network.battery(up).emf.number);
    offsets[point.index] =
        network.to(up) == point ? field.add(above, emf) : field.subtract(above, emf);
  }
  return offsets;
}

// One supernode of each connected piece.
std::vector<bool> grounded_nodes(const Wiring& wiring, const SpanningForest& ideal) {
  std::vector<bool> grounded(ideal.component.size(), false);
  std::vector<bool> has_ground(ideal.component.size(), false);
  for (std::size_t i = 0; i < ideal.component.size(); ++i) {
    if (has_ground[wiring.forest.component[i]]) continue;
    has_ground[wiring.forest.component[i]] = true;
    grounded[ideal.component[i]] = true;
  }
  return grounded;
}

}  // namespace

template <class Field>
std::optional<std::vector<typename Field::Value>> node_potentials(
    const Field& field, const Network& network, const Wiring& wiring,
    const std::optional<Injection>& injection, std::size_t most_core) {
  using Value = typename Field::Value;
  const SpanningForest ideal = span_forest(network, wiring.ideal);
  const std::vector<Value> offsets = offsets_of(field, network, ideal);
  const Value zero = field.from(Number(0));
  const Value one = field.from(Number(1));

  // As many numbers as points; those that no supernode has stay without neighbours.
  Elimination<Field> equations(field, network.point_count());
  for (const Branch<Field>& branch : branches_of(field, network, wiring)) {
    const std::uint32_t from = network.from(branch.part).index;
    const std::uint32_t to = network.to(branch.part).index;
    const std::uint32_t first = ideal.component[from];
    const std::uint32_t second = ideal.component[to];
    if (first == second) continue;
    equations.join(first, second, branch.conductance);
    const Value drive = field.add(field.subtract(offsets[from], offsets[to]), branch.emf);
    if (drive == zero) continue;
    const Value current = field.multiply(branch.conductance, drive);
    equations.inject(first, field.subtract(zero, current));
    equations.inject(second, current);
  }
  for (const PartId drive : wiring.drives) {
    const Value current = field.from(network.driven_current(drive).number);
    equations.inject(ideal.component[network.from(drive).index], field.subtract(zero, current));
    equations.inject(ideal.component[network.to(drive).index], current);
  }
  if (injection) {
    equations.inject(ideal.component[injection->in.index], one);
    equations.inject(ideal.component[injection->out.index], field.subtract(zero, one));
  }
  if (!equations.eliminate(grounded_nodes(wiring, ideal), most_core)) return std::nullopt;
  const std::vector<Value> of_node = equations.potentials();
  std::vector<Value> potential;
  for (std::size_t i = 0; i < network.point_count(); ++i) {
    potential.push_back(field.add(of_node[ideal.component[i]], offsets[i]));
  }
  return potential;
}

template <class Field>
std::vector<typename Field::Value> branch_currents(
    const Field& field, const Network& network, const Wiring& wiring,
    const std::vector<typename Field::Value>& potential) {
  std::vector<typename Field::Value> currents(network.part_count(), field.from(Number(0)));
  for (const Branch<Field>& branch : branches_of(field, network, wiring)) {
    const auto drop = field.subtract(potential[network.from(branch.part).index],
                                     potential[network.to(branch.part).index]);
    currents[branch.part.index] = field.multiply(branch.conductance, field.add(drop, branch.emf));
  }
  for (const PartId drive : wiring.drives) {
    currents[drive.index] = field.from(network.driven_current(drive).number);
  }
  return settle_currents(field, network, wiring.ideal, std::move(currents));
}

template std::optional<std::vector<Number>> node_potentials(const Rationals&, const Network&,
                                                            const Wiring&,
                                                            const std::optional<Injection>&,
                                                            std::size_t);
template std::optional<std::vector<PrimeField::Value>> node_potentials(
    const PrimeField&, const Network&, const Wiring&, const std::optional<Injection>&, std::size_t);
template std::vector<Number> branch_currents(const Rationals&, const Network&, const Wiring&,
                                             const std::vector<Number>&);
template std::vector<PrimeField::Value> branch_currents(const PrimeField&, const Network&,
                                                        const Wiring&,
                                                        const std::vector<PrimeField::Value>&);

}  // namespace ohmfold::check

// Results as elements of a field, and the currents that the ideal model leaves open.
#include "check/flow.h"

#include "check/rationals.h"
#include "exact/prime_field.h"

namespace ohmfold::check {

template <class Field>
Flow<Field> state_flow(const Field& field, const CaseTrace& results, const Network& start) {
  Flow<Field> flow;
  const auto put = [&](auto& list, std::uint32_t index, std::size_t size, const Reading& reading) {
    if (index >= size || !reading.value) return;
    if (list.size() < size) list.resize(size);
    list[index] = field.from(reading.value->number);
  };
  for (const BranchResult& branch : results.branches) {
    put(flow.current, branch.part.index, start.part_count(), branch.current);
    put(flow.voltage, branch.part.index, start.part_count(), branch.voltage);
    put(flow.power, branch.part.index, start.part_count(), branch.power);
  }
  for (const NodeResult& node : results.nodes) {
    put(flow.potential, node.point.index, start.point_count(), node.potential);
  }
  return flow;
}

template <class Field>
std::vector<typename Field::Value> settle_currents(const Field& field, const Network& network,
                                                   const std::vector<PartId>& unknown,
                                                   std::vector<typename Field::Value> currents) {
  using Value = typename Field::Value;
  const Value zero = field.from(Number(0));
  for (const PartId part : unknown) currents[part.index] = zero;
  std::vector<Value> out(network.point_count(), zero);  // sum of the currents out of each point
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    Value& at_from = out[network.from(PartId{i}).index];
    at_from = field.add(at_from, currents[i]);
    Value& at_to = out[network.to(PartId{i}).index];
    at_to = field.subtract(at_to, currents[i]);
  }
  const SpanningForest forest = span_forest(network, unknown);
  for (auto point = forest.order.rbegin(); point != forest.order.rend(); ++point) {
    const PartId up = forest.up[point->index];
    if (!up.exists()) continue;
    const Value& sum = out[point->index];
    currents[up.index] = network.from(up) == *point ? field.subtract(zero, sum) : sum;
    Value& above = out[forest.above(network, *point).index];
    above = field.add(above, sum);
  }
  return currents;
}

template Flow<Rationals> state_flow(const Rationals&, const CaseTrace&, const Network&);
template Flow<PrimeField> state_flow(const PrimeField&, const CaseTrace&, const Network&);
template std::vector<Number> settle_currents(const Rationals&, const Network&,
                                             const std::vector<PartId>&, std::vector<Number>);
template std::vector<PrimeField::Value> settle_currents(const PrimeField&, const Network&,
                                                        const std::vector<PartId>&,
                                                        std::vector<PrimeField::Value>);

}  // namespace ohmfold::check

// The way back: one backward loop over the steps, with one case for each law.
#pragma once

#include "circuit/battery_direction.h"
#include "ohmfold/trace.h"
#include "solve/flow.h"

namespace ohmfold {

namespace detail {

/// The voltage of a side of the delta that a step took, from its first corner along one arm of the
/// star and along the other to its second.
template <class Field>
typename Field::Value along_two_arms(const Network& end, const Field& field, const Step& step,
                                     PartId side, const Flow<Field>& flow) {
  auto voltage = field.from(Number(0));
  for (std::size_t k = 0; k < step.adds.size(); ++k) {
    const auto& arm = flow.voltage[step.makes.index + k];  // from a corner to the middle
    if (step.adds[k].from == end.from(side)) voltage = field.add(voltage, arm);
    if (step.adds[k].from == end.to(side)) voltage = field.subtract(voltage, arm);
  }
  return voltage;
}

/// The current of an arm of the star that a step took: what the sides made carry away from its
/// outer end.
template <class Field>
typename Field::Value from_sides(const Network& end, const Field& field, const Step& step,
                                 PartId arm, const Flow<Field>& flow) {
  const bool inwards = end.to(arm) == step.first;
  const PointId outer = inwards ? end.from(arm) : end.to(arm);
  auto current = field.from(Number(0));
  for (std::size_t k = 0; k < step.adds.size(); ++k) {
    const auto& side = flow.current[step.makes.index + k];
    if (step.adds[k].from == outer) current = field.add(current, side);
    if (step.adds[k].to == outer) current = field.subtract(current, side);
  }
  return inwards ? current : field.subtract(field.from(Number(0)), current);
}

}  // namespace detail

/// Walks back through the steps of a reduction: from the flow of the parts that are left (already
/// in `flow`) to that of every part that was taken. Currents of ideal wires and voltages of gaps
/// stay at zero: they follow from the original points (ideal_currents.h, potentials.h).
///
/// `resistance` by part, as from resistances(). `tell(law, part, step)` is called after each value
/// found. Cost: one multiplication or division for each part taken.
template <class Field, class Tell>
void unfold(const Reduction& reduction, const Field& field,
            const std::vector<typename Field::Value>& resistance, Flow<Field>& flow, Tell tell) {
  using Value = typename Field::Value;
  const Network& end = reduction.end;
  const Value zero = field.from(Number(0));
  std::vector<bool> along;  // does each part of the step run along the part that was made?
  for (std::size_t i = reduction.steps.size(); i-- > 0;) {
    const Step step = reduction.steps[i];
    along.assign(step.takes.size(), true);
    if (step.rule == RuleName::batteries) {
      for (std::size_t k = 0; k < step.takes.size(); ++k)
        along[k] = battery_runs_along(end, step, k);
    } else if (step.makes.exists() && step.adds.empty()) {
      PointId at = step.first;
      for (std::size_t k = 0; k < step.takes.size(); ++k) {
        along[k] = end.from(step.takes[k]) == at;
        if (step.rule == RuleName::series) at = end.across(step.takes[k], at);
      }
    }
    const auto turned = [&](const Value& value, std::size_t k) {
      return along[k] ? value : field.subtract(zero, value);
    };
    for (const Law law : step.back) {
      for (std::size_t k = 0; k < step.takes.size(); ++k) {
        const PartId part = step.takes[k];
        Value& current = flow.current[part.index];
        Value& voltage = flow.voltage[part.index];
        switch (law) {
          case Law::same_current:
            current = turned(flow.current[step.makes.index], k);
            if (flow.open_share[step.makes.index]) flow.open_share[part.index] = true;
            break;
          case Law::same_voltage:
            voltage = turned(flow.voltage[step.makes.index], k);
            break;
          case Law::ohm_current:
            current = field.divide(voltage, resistance[part.index]);
            break;
          case Law::ohm_voltage:
            if (end.kind(part) == ElementKind::battery) {
              voltage = field.from(end.battery(part).emf.number);
            } else {
              voltage = field.multiply(current, resistance[part.index]);
            }
            break;
          case Law::terminal: {
            const BatteryData& data = end.battery(part);
            voltage = field.subtract(field.from(data.emf.number),
                                     field.multiply(current, field.from(data.internal.number)));
            break;
          }
          case Law::zero_current:
            current = zero;
            break;
          case Law::zero_voltage:
            voltage = zero;
            break;
          case Law::two_arms:
            voltage = detail::along_two_arms(end, field, step, part, flow);
            break;
          case Law::sides_at_end:
            current = detail::from_sides(end, field, step, part, flow);
            break;
          case Law::equal_potentials:
            voltage = zero;
            break;
          case Law::current_cut:
          case Law::voltage_loop:
            continue;  // found at the original points, afterwards
          case Law::not_determined:
          case Law::source:
          case Law::node_voltage:
          case Law::power:
          case Law::given_current:
          case Law::superposition:
            ensure(false, "a law that leads back from no step");
            break;
        }
        tell(law, part, step);
      }
    }
  }
}

}  // namespace ohmfold

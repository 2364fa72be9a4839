// The way back: one backward loop over the steps, with one case for each law.
#pragma once

#include "ohmfold/trace.h"
#include "solve/battery_direction.h"
#include "solve/flow.h"

namespace ohmfold {

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
    } else if (step.makes.exists()) {
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

// The battery's current from the equivalent resistance.
#include "solve/drive.h"

namespace ohmfold {

void drive_left(const Reduction& reduction, Flow<ExactField>& flow) {
  const Network& end = reduction.end;
  for (const PartId source : reduction.left) {
    if (end.kind(source) != ElementKind::battery) continue;
    const BatteryData& battery = end.battery(source);
    Current current;
    if (reduction.stop != Stop::open) {
      Resistance total = battery.internal;
      if (reduction.stop == Stop::reduced) {
        total += Resistance{end.resistance(reduction.root).lowest_terms()};
      }
      if (total.is_zero()) {
        // A battery of 0 V across a wire: the two share any current, as two wires would.
        flow.open_share[source.index] = true;
      } else {
        current = battery.emf / total;
      }
    }
    const Voltage voltage = battery.emf - current * battery.internal;
    flow.current[source.index] = current.number;
    flow.voltage[source.index] = voltage.number;
    if (reduction.stop != Stop::reduced) continue;
    const bool along = end.from(reduction.root) == end.to(source);
    flow.current[reduction.root.index] = along ? current.number : -current.number;
    flow.voltage[reduction.root.index] = along ? voltage.number : -voltage.number;
  }
}

}  // namespace ohmfold

// The current of the one source that is left, from the equivalent resistance or as given.
#include "solve/drive.h"

#include <algorithm>

namespace ohmfold {
namespace {

Resistance fed_resistance(const Reduction& reduction) {
  if (reduction.stop != Stop::reduced) return {};
  return {reduction.end.resistance(reduction.root).lowest_terms()};
}

// Current out of the positive terminal, and the voltage between the terminals.
void drive_battery(const Reduction& reduction, PartId source, Flow<ExactField>& flow) {
  const BatteryData& battery = reduction.end.battery(source);
  Current current;
  if (reduction.stop != Stop::open) {
    const Resistance total = battery.internal + fed_resistance(reduction);
    if (total.is_zero()) {
      // A battery of 0 V across a wire: the two share any current, as two wires would.
      flow.open_share[source.index] = true;
    } else {
      current = battery.emf / total;
    }
  }
  flow.current[source.index] = current.number;
  flow.voltage[source.index] = (battery.emf - current * battery.internal).number;
}

}  // namespace

void drive_left(const Reduction& reduction, Flow<ExactField>& flow) {
  const Network& end = reduction.end;
  for (const PartId source : reduction.left) {
    if (end.kind(source) == ElementKind::battery) {
      drive_battery(reduction, source, flow);
    } else if (end.kind(source) == ElementKind::current_source) {
      flow.current[source.index] = end.driven_current(source).number;
    } else {
      continue;
    }
    if (reduction.stop != Stop::reduced) continue;
    // What leaves the source at its second point runs on through the one part that is left.
    const Current current{flow.current[source.index]};
    const bool along = end.from(reduction.root) == end.to(source);
    const Current own = along ? current : -current;
    flow.current[reduction.root.index] = own.number;
    flow.voltage[reduction.root.index] = (own * fed_resistance(reduction)).number;
  }
}

bool all_values_fit(const Reduction& reduction, const Flow<ExactField>& flow, std::size_t parts,
                    std::size_t most_bits) {
  std::size_t longest = 1;
  for (const PartId part : reduction.left) {
    longest = std::max(longest, flow.current[part.index].bits());
    longest = std::max(longest, reduction.end.resistance(part).bits());
  }
  return longest <= most_bits / std::max<std::size_t>(1, parts);
}

}  // namespace ohmfold

// Looks at the sign of each battery's power.
#include "solve/remarks.h"

namespace ohmfold {

std::vector<Remark> remarks_of(const CaseTrace& result) {
  std::vector<Remark> remarks;
  const Network& start = result.main.start;
  const bool several = start.batteries().size() + start.current_sources().size() > 1;
  for (const BatteryData& battery : start.batteries()) {
    if (battery.part.index >= result.branches.size() || battery.emf.is_zero()) continue;
    const Reading& current = result.branches[battery.part.index].current;
    if (!current.value) continue;
    const Number given = battery.emf.number * current.value->number;
    const Quantity size(abs(current.value->number), Unit::ampere);
    if (given.is_negative()) {
      remarks.push_back({RemarkKind::battery_charged, battery.part, size});
    } else if (given.is_zero() && several) {
      remarks.push_back({RemarkKind::battery_idle, battery.part, size});
    }
  }
  return remarks;
}

}  // namespace ohmfold

// One look round a point.
#include "rules/what_else.h"

#include <algorithm>

namespace ohmfold {

Fact what_else(const Network& network, PointId point, std::span<const PartId> parts,
               const Fact& otherwise) {
  Fact fact = otherwise;
  network.for_each_at(point, [&](PartId other) {
    if (std::find(parts.begin(), parts.end(), other) != parts.end()) return;
    if (is_source(network.kind(other))) {
      fact = SourceBetween{other, point};
    } else if (!std::holds_alternative<SourceBetween>(fact)) {
      fact = AlsoMeets{other, point};
    }
  });
  return fact;
}

}  // namespace ohmfold

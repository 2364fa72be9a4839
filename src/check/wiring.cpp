// Sorting the parts of a network by how they conduct.
#include "check/wiring.h"

namespace ohmfold::check {

Wiring::Wiring(const Network& network) {
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    const PartId part{i};
    const ElementKind kind = network.kind(part);
    if (!network.is_alive(part) || kind == ElementKind::port) continue;
    if (kind == ElementKind::current_source) {
      drives.push_back(part);
      continue;
    }
    (is_gap(kind) ? gaps : conducting).push_back(part);
    if (is_ideal(network, part)) ideal.push_back(part);
  }
  forest = span_forest(network, conducting);
  is_powered.assign(network.point_count(), false);
  for (const PartId part : conducting) {
    if (network.kind(part) != ElementKind::battery) continue;
    is_powered[forest.component[network.from(part).index]] = true;
  }
  for (const PartId part : drives) {
    is_powered[forest.component[network.from(part).index]] = true;
    is_powered[forest.component[network.to(part).index]] = true;
  }
  is_open = on_loops(network, span_forest(network, ideal));
}

bool is_ideal(const Network& network, PartId part) {
  const ElementKind kind = network.kind(part);
  return is_wire(kind) ||
         (kind == ElementKind::battery && network.battery(part).internal.is_zero());
}

}  // namespace ohmfold::check

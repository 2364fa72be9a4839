// The two points between which a case asks for a resistance, where that is its main question.
#pragma once

#include <algorithm>
#include <optional>

#include "ohmfold/trace.h"

namespace ohmfold {

struct MainPort {
  PointId first, second;

  [[nodiscard]] bool lies_between(PointId a, PointId b) const {
    return std::minmax(first, second) == std::minmax(a, b);
  }
};

/// Nothing where a source of the file, or what stands for several, feeds the main network.
[[nodiscard]] inline std::optional<MainPort> main_port(const CaseTrace& solved) {
  const PartId source = solved.main.source;
  const Network& start = solved.main.start;
  // What stands for several batteries is no part of the network at the start.
  const bool at_start = source.exists() && source.index < start.part_count();
  if (!at_start || start.kind(source) != ElementKind::port) return std::nullopt;
  return MainPort{start.from(source), start.to(source)};
}

}  // namespace ohmfold

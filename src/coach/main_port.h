// The resistance that the main network of a case shows: between two points, or to its source.
#pragma once

#include <algorithm>
#include <optional>

#include "coach/case_book.h"
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

/// Is it the resistance of the main network, named by its source or by its two points?
[[nodiscard]] inline bool is_main_resistance(const CaseTrace& solved, const Target& target) {
  if (target.claimed == Claimed::resistance_seen_by) return target.part == solved.main.source;
  if (target.claimed != Claimed::resistance_between) return false;
  const auto port = main_port(solved);
  return port && port->lies_between(target.first, target.second);
}

}  // namespace ohmfold

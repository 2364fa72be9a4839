// Sums up what sources of current bring to each piece.
#include "solve/blocked_current.h"

#include <map>

#include "circuit/spanning.h"

namespace ohmfold {
namespace {

std::vector<PartId> conducting_parts(const Network& network) {
  std::vector<PartId> parts;
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    const PartId part{i};
    const ElementKind kind = network.kind(part);
    const bool conducts =
        !is_gap(kind) && kind != ElementKind::current_source && kind != ElementKind::port;
    if (network.is_alive(part) && conducts) parts.push_back(part);
  }
  return parts;
}

Contradiction describe(const Network& network, const SpanningForest& forest, std::uint32_t piece,
                       const Number& surplus) {
  Contradiction found;
  found.kind = ContradictionKind::current_blocked;
  found.surplus = Current{abs(surplus)};
  for (const CurrentSourceData& source : network.current_sources()) {
    const bool leaves = forest.component[network.from(source.part).index] == piece;
    const bool enters = forest.component[network.to(source.part).index] == piece;
    if (leaves != enters) found.loop.push_back(source.part);
  }
  for (std::uint32_t i = 0; i < network.point_count(); ++i) {
    if (forest.component[i] == piece) found.points.push_back(PointId{i});
  }
  return found;
}

}  // namespace

std::optional<Contradiction> find_blocked_current(const Network& start) {
  if (start.current_sources().empty()) return std::nullopt;
  const SpanningForest forest = span_forest(start, conducting_parts(start));
  std::map<std::uint32_t, Number> brought;  // by piece
  for (const CurrentSourceData& source : start.current_sources()) {
    brought[forest.component[start.from(source.part).index]] -= source.current.number;
    brought[forest.component[start.to(source.part).index]] += source.current.number;
  }
  for (const auto& [piece, surplus] : brought) {
    if (!surplus.is_zero()) return describe(start, forest, piece, surplus);
  }
  return std::nullopt;
}

}  // namespace ohmfold

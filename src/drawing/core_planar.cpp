// Places a planar core: each corner a horizontal wire, each edge upright between two of them.
#include <algorithm>
#include <numeric>

#include "drawing/visibility.h"

namespace ohmfold::drawing {
namespace {

/// The row of each corner: as far up as the boxes above it allow.
std::vector<int> rows_of(const Core& core, const Visibility& found) {
  std::vector<std::uint32_t> sorted(found.edges.size());
  std::iota(sorted.begin(), sorted.end(), 0U);
  const auto ends = [&](std::uint32_t edge) {
    const auto [from, to] = found.edges[edge];
    return found.rank[from] < found.rank[to] ? CornerPair(from, to) : CornerPair(to, from);
  };
  std::stable_sort(sorted.begin(), sorted.end(), [&](std::uint32_t a, std::uint32_t b) {
    return found.rank[ends(a).first] < found.rank[ends(b).first];
  });
  std::vector<int> rows(core.corners, 0);
  for (const std::uint32_t i : sorted) {
    const auto [upper, lower] = ends(i);
    const int height = i < core.edges.size() ? height_of(core.edges[i]) : kCell;
    rows[lower] = std::max(rows[lower], rows[upper] + height);
  }
  return rows;
}

}  // namespace

std::optional<CorePlan> place_planar(const Core& core) {
  const std::optional<Visibility> found =
      find_visibility(core, std::vector<bool>(core.edges.size(), true));
  if (!found) return {};
  const std::vector<int> rows = rows_of(core, *found);
  std::vector<int> tops;
  for (const CoreEdge& edge : core.edges) {
    const int upper = std::min(rows[edge.from], rows[edge.to]);
    const int lower = std::max(rows[edge.from], rows[edge.to]);
    tops.push_back(upper + (lower - upper - height_of(edge)) / 2);
  }
  return plan_of(core, rows, found->column, tops);
}

}  // namespace ohmfold::drawing

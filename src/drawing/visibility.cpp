// Finds the columns of uprights from the faces of a planar graph, and draws what stands in them.
#include "drawing/visibility.h"

#include <algorithm>
#include <numeric>
#include <utility>

#include "drawing/bipolar_order.h"

namespace ohmfold::drawing {
namespace {

/// The two sides of each edge, looking down along it.
struct Sides {
  std::vector<std::uint32_t> left, right;  ///< numbers of faces, by edge
  std::uint32_t count = 0;                 ///< of faces
};

/// Numbers the faces by walking round each: a half of an edge is 2 * edge when it leads to the
/// second corner, one more when it leads to the first.
class Faces {
 public:
  explicit Faces(const PlanarMap& map) : map_(map), face_(2 * map.edges.size(), kNone) {
    find_next();
    for (std::uint32_t half = 0; half < face_.size(); ++half) {
      if (face_[half] != kNone) continue;
      for (std::uint32_t at = half; face_[at] == kNone; at = next_[at]) face_[at] = count_;
      ++count_;
    }
  }

  /// Which face is on the left depends on the side from which the map is looked at. The outer edge
  /// is left of all: the face to its left is the outer one, and what has that one on its right gets
  /// a face of its own.
  [[nodiscard]] Sides sides(const std::vector<std::uint32_t>& rank, bool mirrored) const {
    Sides sides;
    sides.count = count_ + 1;
    for (std::uint32_t i = 0; i < map_.edges.size(); ++i) {
      const auto& [from, to] = map_.edges[i];
      const bool is_downward = rank[from] < rank[to];
      const std::uint32_t down = 2 * i + (is_downward ? 0 : 1);
      sides.left.push_back(face_[mirrored ? down ^ 1U : down]);
      sides.right.push_back(face_[mirrored ? down : down ^ 1U]);
    }
    const std::uint32_t outside = sides.left[map_.outer];
    std::replace(sides.right.begin(), sides.right.end(), outside, count_);
    return sides;
  }

 private:
  void find_next() {
    next_.resize(face_.size());
    for (std::uint32_t corner = 0; corner < map_.around.size(); ++corner) {
      const std::vector<std::uint32_t>& around = map_.around[corner];
      for (std::size_t i = 0; i < around.size(); ++i) {
        const std::uint32_t arriving = half_from(around[i], corner) ^ 1U;
        next_[arriving] = half_from(around[(i + 1) % around.size()], corner);
      }
    }
  }
  [[nodiscard]] std::uint32_t half_from(std::uint32_t edge, std::uint32_t corner) const {
    return 2 * edge + (map_.edges[edge].first == corner ? 0 : 1);
  }

  static constexpr std::uint32_t kNone = UINT32_MAX;
  const PlanarMap& map_;
  std::vector<std::uint32_t> next_, face_;
  std::uint32_t count_ = 0;
};

/// The distance of each face from the left: the longest way across edges of these breadths.
std::vector<int> distances(const Sides& sides, const std::vector<int>& breadths) {
  std::vector<std::vector<std::uint32_t>> across(sides.count);
  std::vector<std::uint32_t> waits(sides.count, 0);
  for (std::uint32_t i = 0; i < breadths.size(); ++i) {
    across[sides.left[i]].push_back(i);
    ++waits[sides.right[i]];
  }
  std::vector<int> distance(sides.count, 0);
  std::vector<std::uint32_t> ready;
  for (std::uint32_t face = 0; face < sides.count; ++face) {
    if (waits[face] == 0) ready.push_back(face);
  }
  while (!ready.empty()) {
    const std::uint32_t face = ready.back();
    ready.pop_back();
    for (const std::uint32_t edge : across[face]) {
      const std::uint32_t right = sides.right[edge];
      distance[right] = std::max(distance[right], distance[face] + breadths[edge]);
      if (--waits[right] == 0) ready.push_back(right);
    }
  }
  return distance;
}

/// Do more neighbours below a corner stand in the order of the file than against it?
bool keeps_order(const std::vector<CornerPair>& edges, const std::vector<std::uint32_t>& rank,
                 const std::vector<int>& column) {
  std::vector<std::uint32_t> sorted(column.size());
  std::iota(sorted.begin(), sorted.end(), 0U);
  std::stable_sort(sorted.begin(), sorted.end(),
                   [&](std::uint32_t a, std::uint32_t b) { return column[a] < column[b]; });
  std::vector<std::uint32_t> last(rank.size(), UINT32_MAX);
  std::int64_t in_order = 0;
  for (const std::uint32_t edge : sorted) {
    const auto& [from, to] = edges[edge];
    std::uint32_t& left = last[rank[from] < rank[to] ? from : to];
    if (left != UINT32_MAX) in_order += left < edge ? 1 : -1;
    left = edge;
  }
  return in_order >= 0;
}

}  // namespace

std::optional<Visibility> find_visibility(const Core& core, const std::vector<bool>& taken) {
  std::vector<CornerPair> edges;
  std::vector<int> breadths;
  std::vector<std::uint32_t> number;
  for (std::uint32_t i = 0; i < core.edges.size(); ++i) {
    if (!taken[i]) continue;
    edges.emplace_back(core.edges[i].from, core.edges[i].to);
    breadths.push_back(width_of(core.edges[i]) + kCell);
    number.push_back(i);
  }
  std::optional<PlanarMap> map = embed(core.corners, edges);
  if (!map) return {};
  Visibility found;
  found.rank = bipolar_order(core.corners, map->edges, core.heights);
  // Edges that are not there keep nothing apart.
  breadths.resize(map->edges.size(), 0);
  const Faces faces(*map);
  std::vector<int> columns;
  for (const bool mirrored : {false, true}) {
    const Sides sides = faces.sides(found.rank, mirrored);
    const std::vector<int> distance = distances(sides, breadths);
    columns.clear();
    for (std::size_t i = 0; i < edges.size(); ++i) columns.push_back(distance[sides.left[i]]);
    if (keeps_order(edges, found.rank, columns)) break;
  }
  found.column.assign(core.edges.size(), 0);
  for (std::size_t i = 0; i < edges.size(); ++i) found.column[number[i]] = columns[i];
  found.edges = std::move(map->edges);
  return found;
}

CorePlan plan_of(const Core& core, const std::vector<int>& rows, const std::vector<int>& columns,
                 const std::vector<int>& tops) {
  CorePlan plan;
  plan.height = rows[1];
  plan.wires.resize(core.corners);
  plan.edges.resize(core.edges.size());
  constexpr int kNone = INT32_MAX;
  std::vector<int> left(core.corners, kNone), right(core.corners, 0);
  left[0] = left[1] = 0;
  for (std::size_t i = 0; i < core.edges.size(); ++i) {
    const CoreEdge& edge = core.edges[i];
    const int x = columns[i];
    plan.width = std::max(plan.width, x + width_of(edge));
    const bool turned = rows[edge.from] > rows[edge.to];
    const std::uint32_t upper = turned ? edge.to : edge.from;
    const std::uint32_t lower = turned ? edge.from : edge.to;
    plan.edges[i] = {{x, tops[i]}, turned, {}, 0};
    const int bottom = tops[i] + height_of(edge);
    if (rows[upper] < tops[i]) plan.wires[upper].push_back({{x, rows[upper]}, {x, tops[i]}});
    if (bottom < rows[lower]) plan.wires[lower].push_back({{x, bottom}, {x, rows[lower]}});
    for (const std::uint32_t corner : {upper, lower}) {
      left[corner] = std::min(left[corner], x);
      right[corner] = std::max(right[corner], x);
    }
  }
  for (std::uint32_t i = 0; i < core.corners; ++i) {
    if (left[i] == kNone) left[i] = 0;
    plan.at.push_back({left[i], rows[i]});
    if (left[i] < right[i]) plan.wires[i].push_back({{left[i], rows[i]}, {right[i], rows[i]}});
  }
  return plan;
}

}  // namespace ohmfold::drawing

// Places a core that is not planar: a planar part of it first, then the other edges one by one.
#include <algorithm>
#include <numeric>
#include <set>

#include "drawing/insertion.h"
#include "drawing/visibility.h"
#include "ohmfold/error.h"

namespace ohmfold::drawing {
namespace {

constexpr int kClear = kCell / 2;  // between a box and a wire that crosses its leads

/// Two corners, by rank, and how far apart their rows must be.
struct Gap {
  std::uint32_t above = 0, below = 0;
  int distance = 0;
};

/// Walks over the columns from left to right, and finds out which wires lie above which, and
/// between which wires each box goes.
class Rows {
 public:
  Rows(const Core& core, const std::vector<std::uint32_t>& rank,
       const std::vector<std::uint32_t>& column)
      : core_(core), rank_(rank), column_(column), box_(core.edges.size()) {
    find_reaches();
    walk();
    settle();
  }

  /// By corner.
  [[nodiscard]] std::vector<int> rows() const {
    std::vector<int> rows;
    for (const std::uint32_t rank : rank_) rows.push_back(row_[rank]);
    return rows;
  }
  /// By edge: where its box begins, in the middle between the wires next to it.
  [[nodiscard]] std::vector<int> tops() const {
    std::vector<int> tops;
    for (std::uint32_t i = 0; i < box_.size(); ++i) {
      const int upper = row_[box_[i].above] + (is_end(i, box_[i].above) ? 0 : kClear);
      const int lower = row_[box_[i].below] - (is_end(i, box_[i].below) ? 0 : kClear);
      tops.push_back(upper + (lower - upper - height_of(core_.edges[i])) / 2);
    }
    return tops;
  }

 private:
  [[nodiscard]] bool is_end(std::uint32_t edge, std::uint32_t rank) const {
    return rank_[core_.edges[edge].from] == rank || rank_[core_.edges[edge].to] == rank;
  }

  void find_reaches() {
    std::vector<std::uint32_t> left(rank_.size(), UINT32_MAX), right(rank_.size(), 0);
    left[0] = left[1] = 0;
    std::uint32_t count = 1;
    for (std::uint32_t i = 0; i < column_.size(); ++i) {
      count = std::max(count, column_[i] + 1);
      for (const std::uint32_t corner : {core_.edges[i].from, core_.edges[i].to}) {
        left[corner] = std::min(left[corner], column_[i]);
        right[corner] = std::max(right[corner], column_[i]);
      }
    }
    begin_.resize(count);
    end_.resize(count);
    upright_.resize(count);
    for (std::uint32_t i = 0; i < column_.size(); ++i) upright_[column_[i]].push_back(i);
    for (std::uint32_t i = 0; i < rank_.size(); ++i) {
      if (left[i] == UINT32_MAX) continue;
      begin_[left[i]].push_back(rank_[i]);
      end_[right[i]].push_back(rank_[i]);
    }
  }

  void walk() {
    std::set<std::uint32_t> present;  // ranks
    for (std::size_t column = 0; column < begin_.size(); ++column) {
      for (const std::uint32_t rank : begin_[column]) {
        const auto at = present.insert(rank).first;
        if (at != present.begin()) gaps_.push_back({*std::prev(at), rank, kCell});
        if (std::next(at) != present.end()) gaps_.push_back({rank, *std::next(at), kCell});
      }
      for (const std::uint32_t edge : upright_[column]) place_box(edge, present);
      for (const std::uint32_t rank : end_[column]) {
        const auto after = present.erase(present.find(rank));
        if (after != present.begin() && after != present.end()) {
          gaps_.push_back({*std::prev(after), *after, kCell});
        }
      }
    }
  }

  /// Into the middle one of the gaps that wires leave along the upright.
  void place_box(std::uint32_t edge, const std::set<std::uint32_t>& present) {
    const auto [above, below] =
        std::minmax(rank_[core_.edges[edge].from], rank_[core_.edges[edge].to]);
    const auto first = present.find(above);
    const auto crossed = std::distance(first, present.find(below)) - 1;
    const auto at = std::next(first, crossed / 2);
    Gap& box = box_[edge];
    box = {*at, *std::next(at), height_of(core_.edges[edge])};
    if (!is_end(edge, box.above)) box.distance += kClear;
    if (!is_end(edge, box.below)) box.distance += kClear;
    gaps_.push_back(box);
  }

  void settle() {
    std::sort(gaps_.begin(), gaps_.end(),
              [](const Gap& a, const Gap& b) { return a.above < b.above; });
    row_.assign(rank_.size(), 0);
    row_.back() = kCell;
    for (const Gap& gap : gaps_) {
      row_[gap.below] = std::max(row_[gap.below], row_[gap.above] + gap.distance);
    }
  }

  const Core& core_;
  const std::vector<std::uint32_t>&rank_, &column_;
  std::vector<std::vector<std::uint32_t>> begin_, end_;  // by column: ranks
  std::vector<std::vector<std::uint32_t>> upright_;      // by column: edges
  std::vector<Gap> box_;                                 // by edge
  std::vector<Gap> gaps_;
  std::vector<int> row_;  // by rank
};

/// Where each column lies, so wide that the boxes in it have room.
std::vector<int> spread(const Core& core, const std::vector<std::uint32_t>& column) {
  std::vector<int> width(column.size() + 1, 0);
  for (std::size_t i = 0; i < column.size(); ++i) {
    int& room = width[column[i] + 1];
    room = std::max(room, width_of(core.edges[i]) + kCell);
  }
  std::partial_sum(width.begin(), width.end(), width.begin());
  std::vector<int> x;
  x.reserve(column.size());
  for (const std::uint32_t one : column) x.push_back(width[one]);
  return x;
}

}  // namespace

CorePlan place_crossing(const Core& core) {
  std::vector<CornerPair> edges;
  edges.reserve(core.edges.size());
  for (const CoreEdge& edge : core.edges) edges.emplace_back(edge.from, edge.to);
  const std::vector<bool> taken = planar_subset(core.corners, edges);
  const std::optional<Visibility> found = find_visibility(core, taken);
  ensure(found.has_value(), "a planar part of a core was not planar");
  const std::vector<std::uint32_t> column = insert_columns(core, taken, found->rank, found->column);
  const Rows rows(core, found->rank, column);
  return plan_of(core, rows.rows(), spread(core, column), rows.tops());
}

}  // namespace ohmfold::drawing

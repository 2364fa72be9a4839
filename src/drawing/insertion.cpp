// Puts uprights between others, where they cross the fewest wires.
#include "drawing/insertion.h"

#include <algorithm>

namespace ohmfold::drawing {
namespace {

/// The columns as they fill.
class Columns {
 public:
  Columns(const Core& core, const std::vector<std::uint32_t>& rank)
      : core_(core), rank_(rank), column_(core.edges.size(), 0) {
    left_.assign(core.corners, kNone);
    right_.assign(core.corners, 0);
    left_[0] = left_[1] = 0;
  }

  /// An upright without which the drawing was planar.
  void place(std::uint32_t edge, std::uint32_t column) {
    placed_.push_back(edge);
    column_[edge] = column;
    count_ = std::max(count_, column + 1);
    reach(core_.edges[edge].from, column);
    reach(core_.edges[edge].to, column);
  }

  void insert(std::uint32_t edge) {
    const std::uint32_t best = best_column(edge);
    for (const std::uint32_t other : placed_) {
      if (column_[other] >= best) ++column_[other];
    }
    for (std::uint32_t corner = 0; corner < left_.size(); ++corner) {
      if (left_[corner] != kNone && left_[corner] >= best && corner > 1) ++left_[corner];
      if (right_[corner] >= best) ++right_[corner];
    }
    ++count_;
    place(edge, best);
  }

  [[nodiscard]] const std::vector<std::uint32_t>& columns() const { return column_; }

 private:
  void reach(std::uint32_t corner, std::uint32_t column) {
    left_[corner] = left_[corner] == kNone ? column : std::min(left_[corner], column);
    right_[corner] = std::max(right_[corner], column);
  }

  /// Before which column the edge is crossed least; of several the one nearest to its corners.
  [[nodiscard]] std::uint32_t best_column(std::uint32_t edge) const {
    const CoreEdge& ends = core_.edges[edge];
    std::vector<int> crossed = wires_between(ends);
    std::vector<std::uint32_t> distance(count_ + 1, 0);
    for (const std::uint32_t corner : {ends.from, ends.to}) {
      stretch(corner, crossed, distance);
    }
    std::uint32_t best = 0;
    for (std::uint32_t i = 1; i <= count_; ++i) {
      if (std::pair(crossed[i], distance[i]) < std::pair(crossed[best], distance[best])) best = i;
    }
    return best;
  }

  /// By column: the wires that an upright before it would cross.
  [[nodiscard]] std::vector<int> wires_between(const CoreEdge& ends) const {
    const auto [above, below] = std::minmax(rank_[ends.from], rank_[ends.to]);
    std::vector<int> crossed(count_ + 2, 0);
    for (std::uint32_t corner = 0; corner < left_.size(); ++corner) {
      if (rank_[corner] <= above || rank_[corner] >= below) continue;
      if (left_[corner] == kNone || left_[corner] == right_[corner]) continue;
      ++crossed[left_[corner] + 1];
      --crossed[right_[corner] + 1];
    }
    for (std::uint32_t i = 1; i <= count_; ++i) crossed[i] += crossed[i - 1];
    return crossed;
  }

  /// Adds the uprights that the wire of a corner would cross on its way there.
  void stretch(std::uint32_t corner, std::vector<int>& crossed,
               std::vector<std::uint32_t>& distance) const {
    if (left_[corner] == kNone) return;
    std::vector<int> uprights(count_, 0);
    for (const std::uint32_t edge : placed_) {
      const CoreEdge& ends = core_.edges[edge];
      const auto [above, below] = std::minmax(rank_[ends.from], rank_[ends.to]);
      if (rank_[corner] > above && rank_[corner] < below) ++uprights[column_[edge]];
    }
    int passed = 0;
    for (std::uint32_t i = right_[corner] + 2; i <= count_; ++i) {
      passed += uprights[i - 1];
      crossed[i] += passed;
      distance[i] += i - right_[corner] - 1;
    }
    passed = 0;
    for (std::uint32_t i = left_[corner]; i-- > 0;) {
      passed += uprights[i];
      crossed[i] += passed;
      distance[i] += left_[corner] - i;
    }
  }

  static constexpr std::uint32_t kNone = UINT32_MAX;
  const Core& core_;
  const std::vector<std::uint32_t>& rank_;
  std::vector<std::uint32_t> column_;        // by edge
  std::vector<std::uint32_t> left_, right_;  // by corner: the columns that its wire reaches
  std::vector<std::uint32_t> placed_;
  std::uint32_t count_ = 0;
};

}  // namespace

std::vector<std::uint32_t> insert_columns(const Core& core, const std::vector<bool>& taken,
                                          const std::vector<std::uint32_t>& rank,
                                          const std::vector<int>& columns) {
  std::vector<int> used;
  for (std::size_t i = 0; i < taken.size(); ++i) {
    if (taken[i]) used.push_back(columns[i]);
  }
  std::sort(used.begin(), used.end());
  used.erase(std::unique(used.begin(), used.end()), used.end());
  Columns filled(core, rank);
  for (std::uint32_t i = 0; i < taken.size(); ++i) {
    if (!taken[i]) continue;
    const auto at = std::lower_bound(used.begin(), used.end(), columns[i]);
    filled.place(i, static_cast<std::uint32_t>(at - used.begin()));
  }
  for (std::uint32_t i = 0; i < taken.size(); ++i) {
    if (!taken[i]) filled.insert(i);
  }
  return filled.columns();
}

}  // namespace ohmfold::drawing

// Exploring several pieces of a network side by side.
#include "check/separation.h"

#include <functional>
#include <queue>
#include <unordered_map>
#include <unordered_set>
#include <utility>

#include "circuit/disjoint_sets.h"

namespace ohmfold::check {
namespace {

class Exploration {
 public:
  Exploration(const Network& network, std::span<const PartId> without,
              const std::vector<std::vector<PointId>>& groups)
      : network_(network),
        pieces_(groups.size()),
        open_(groups.size()),
        cost_(groups.size(), 0),
        unfinished_(groups.size()) {
    for (const PartId part : without) without_.insert(part.index);
    for (std::uint32_t i = 0; i < groups.size(); ++i) {
      for (const PointId point : groups[i]) reach(point, i);
    }
    for (std::uint32_t i = 0; i < groups.size(); ++i) wait(i);
  }

  std::vector<std::uint32_t> run() {
    while (unfinished_ > 1) {
      const std::size_t cost = waiting_.top().first;
      const std::uint32_t piece = waiting_.top().second;
      waiting_.pop();
      const bool is_old = pieces_.find(piece) != piece || cost != next_cost(piece);
      if (is_old || open_[piece].empty()) continue;
      const PointId point = open_[piece].back();
      open_[piece].pop_back();
      cost_[piece] += network_.degree(point);
      network_.for_each_at(point, [&](PartId part) {
        if (is_gap(network_.kind(part)) || without_.contains(part.index)) return;
        reach(network_.across(part, point), piece);
      });
      wait(pieces_.find(piece));
    }
    std::vector<std::uint32_t> numbers;
    for (std::uint32_t i = 0; i < open_.size(); ++i) numbers.push_back(pieces_.find(i));
    return numbers;
  }

 private:
  // What the piece will have cost after its next point.
  [[nodiscard]] std::size_t next_cost(std::uint32_t piece) const {
    return cost_[piece] + (open_[piece].empty() ? 0 : network_.degree(open_[piece].back()));
  }

  void wait(std::uint32_t piece) {
    if (open_[piece].empty()) {
      --unfinished_;
    } else {
      waiting_.emplace(next_cost(piece), piece);
    }
  }

  void reach(PointId point, std::uint32_t piece) {
    const auto [at, is_new] = reached_by_.emplace(point.index, piece);
    if (is_new) {
      open_[pieces_.find(piece)].push_back(point);
      return;
    }
    const std::uint32_t other = pieces_.find(at->second);
    const std::uint32_t own = pieces_.find(piece);
    if (!pieces_.join(own, other)) return;
    --unfinished_;
    const std::uint32_t whole = pieces_.find(own);
    const std::uint32_t part = whole == own ? other : own;
    if (open_[whole].size() < open_[part].size()) std::swap(open_[whole], open_[part]);
    open_[whole].insert(open_[whole].end(), open_[part].begin(), open_[part].end());
    open_[part] = {};
    cost_[whole] += cost_[part];
  }

  using Waiting = std::pair<std::size_t, std::uint32_t>;  // cost, piece

  const Network& network_;
  std::unordered_set<std::uint32_t> without_;
  DisjointSets pieces_;
  std::vector<std::vector<PointId>> open_;  // reached, not yet looked at; by piece
  std::vector<std::size_t> cost_;
  std::size_t unfinished_;
  std::unordered_map<std::uint32_t, std::uint32_t> reached_by_;
  std::priority_queue<Waiting, std::vector<Waiting>, std::greater<>> waiting_;
};

}  // namespace

std::vector<std::uint32_t> separate(const Network& network, std::span<const PartId> without,
                                    const std::vector<std::vector<PointId>>& groups) {
  return Exploration(network, without, groups).run();
}

}  // namespace ohmfold::check

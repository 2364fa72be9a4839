// Orders the corners from top to bottom, by potentials or by two depth-first searches.
#include "drawing/bipolar_order.h"

#include <algorithm>
#include <list>
#include <numeric>
#include <tuple>

namespace ohmfold::drawing {
namespace {

using Neighbours = std::vector<std::vector<std::uint32_t>>;

Neighbours neighbours_of(std::uint32_t corners, const std::vector<CornerPair>& edges) {
  Neighbours neighbours(corners);
  for (const auto& [a, b] : edges) {
    neighbours[a].push_back(b);
    neighbours[b].push_back(a);
  }
  return neighbours;
}

/// A depth-first search from corner 0 that goes to corner 1 first.
class Search {
 public:
  explicit Search(const Neighbours& neighbours)
      : parent(neighbours.size(), 0), low(neighbours.size(), 0), neighbours_(neighbours) {
    found_at_.assign(neighbours.size(), kUnseen);
    next_.assign(neighbours.size(), 0);
    find(0, 0);
    find(1, 0);
    while (!open_.empty()) go_on();
  }

  std::vector<std::uint32_t> found;  ///< in the order of finding
  std::vector<std::uint32_t> parent;
  /// The corner found first that it, or what was found from it, is joined to.
  std::vector<std::uint32_t> low;

 private:
  void find(std::uint32_t corner, std::uint32_t from) {
    found_at_[corner] = static_cast<std::uint32_t>(found.size());
    found.push_back(corner);
    parent[corner] = from;
    low[corner] = corner;
    open_.push_back(corner);
  }

  void lower(std::uint32_t corner, std::uint32_t to) {
    if (found_at_[to] < found_at_[low[corner]]) low[corner] = to;
  }

  void go_on() {
    const std::uint32_t corner = open_.back();
    if (next_[corner] == neighbours_[corner].size()) {
      open_.pop_back();
      if (!open_.empty()) lower(open_.back(), low[corner]);
      return;
    }
    const std::uint32_t other = neighbours_[corner][next_[corner]++];
    if (found_at_[other] == kUnseen) {
      find(other, corner);
    } else {
      lower(corner, other);
    }
  }

  static constexpr std::uint32_t kUnseen = UINT32_MAX;
  const Neighbours& neighbours_;
  std::vector<std::uint32_t> found_at_, open_;
  std::vector<std::size_t> next_;
};

std::vector<std::uint32_t> order_by_search(const Neighbours& neighbours) {
  const Search search(neighbours);
  std::list<std::uint32_t> line{0, 1};
  std::vector<std::list<std::uint32_t>::iterator> place(neighbours.size());
  place[0] = line.begin();
  place[1] = std::next(line.begin());
  std::vector<bool> goes_after(neighbours.size(), false);
  for (std::size_t i = 2; i < search.found.size(); ++i) {
    const std::uint32_t corner = search.found[i];
    const std::uint32_t parent = search.parent[corner];
    const bool after = goes_after[search.low[corner]];
    place[corner] = line.insert(after ? std::next(place[parent]) : place[parent], corner);
    goes_after[parent] = !after;
  }
  std::vector<std::uint32_t> rank(neighbours.size(), 0);
  std::uint32_t count = 0;
  for (const std::uint32_t corner : line) rank[corner] = count++;
  return rank;
}

bool is_bipolar(const Neighbours& neighbours, const std::vector<std::uint32_t>& rank) {
  for (std::uint32_t corner = 2; corner < rank.size(); ++corner) {
    bool above = false;
    bool below = false;
    for (const std::uint32_t other : neighbours[corner]) {
      above = above || rank[other] < rank[corner];
      below = below || rank[other] > rank[corner];
    }
    if (!above || !below) return false;
  }
  return true;
}

/// By these heights, and by another order where they are equal.
std::vector<std::uint32_t> order_by_heights(const std::vector<int>& heights,
                                            const std::vector<std::uint32_t>& otherwise) {
  std::vector<std::uint32_t> sorted(heights.size());
  std::iota(sorted.begin(), sorted.end(), 0U);
  const auto key = [&](std::uint32_t corner) {
    const int pole = corner == 0 ? 0 : corner == 1 ? 2 : 1;
    return std::tuple(pole, heights[corner], otherwise[corner]);
  };
  std::sort(sorted.begin(), sorted.end(),
            [&](std::uint32_t a, std::uint32_t b) { return key(a) < key(b); });
  std::vector<std::uint32_t> rank(heights.size());
  for (std::uint32_t i = 0; i < sorted.size(); ++i) rank[sorted[i]] = i;
  return rank;
}

/// How many edges each corner is away from `start`, not counting the one from corner 0 to corner 1.
std::vector<int> distances_from(std::uint32_t start, const Neighbours& neighbours) {
  std::vector<int> distance(neighbours.size(), -1);
  std::vector<std::uint32_t> reached{start};
  distance[start] = 0;
  for (std::size_t i = 0; i < reached.size(); ++i) {
    for (const std::uint32_t other : neighbours[reached[i]]) {
      if (distance[other] >= 0 || reached[i] + other == 1) continue;
      distance[other] = distance[reached[i]] + 1;
      reached.push_back(other);
    }
  }
  return distance;
}

/// Guessed potentials: how far down a corner is on the way from corner 0 to corner 1.
std::vector<int> guessed_heights(const Neighbours& neighbours) {
  constexpr int kFine = 10'000;
  const std::vector<int> from_top = distances_from(0, neighbours);
  const std::vector<int> from_bottom = distances_from(1, neighbours);
  std::vector<int> heights;
  for (std::size_t i = 0; i < neighbours.size(); ++i) {
    const std::int64_t above = std::max(from_top[i], 0);
    const std::int64_t all = above + std::max(from_bottom[i], 0);
    heights.push_back(all == 0 ? 0 : static_cast<int>(above * kFine / all));
  }
  return heights;
}

}  // namespace

std::vector<std::uint32_t> bipolar_order(std::uint32_t corners,
                                         const std::vector<CornerPair>& edges,
                                         const std::vector<int>& heights) {
  const Neighbours neighbours = neighbours_of(corners, edges);
  std::vector<std::uint32_t> by_search = order_by_search(neighbours);
  if (heights.size() == corners) {
    std::vector<std::uint32_t> by_height = order_by_heights(heights, by_search);
    if (is_bipolar(neighbours, by_height)) return by_height;
  }
  std::vector<std::uint32_t> by_guess = order_by_heights(guessed_heights(neighbours), by_search);
  return is_bipolar(neighbours, by_guess) ? by_guess : by_search;
}

}  // namespace ohmfold::drawing

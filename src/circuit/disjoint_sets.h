// Sets that grow together: which of some numbered things have been joined so far.
#pragma once

#include <cstdint>
#include <numeric>
#include <utility>
#include <vector>

namespace ohmfold {

/// Union-find by size with path halving (Tarjan, J. ACM 22 (1975) 215). Cost: near constant a call.
class DisjointSets {
 public:
  explicit DisjointSets(std::size_t count) : above_(count), size_(count, 1) {
    std::iota(above_.begin(), above_.end(), 0U);
  }

  /// The one that stands for all of its set.
  [[nodiscard]] std::uint32_t find(std::uint32_t one) {
    while (above_[one] != one) one = above_[one] = above_[above_[one]];
    return one;
  }
  [[nodiscard]] bool joined(std::uint32_t a, std::uint32_t b) { return find(a) == find(b); }

  /// Joins the sets of a and b; false where they were one set already.
  bool join(std::uint32_t a, std::uint32_t b) {
    a = find(a);
    b = find(b);
    if (a == b) return false;
    if (size_[a] < size_[b]) std::swap(a, b);
    above_[b] = a;
    size_[a] += size_[b];
    return true;
  }

 private:
  std::vector<std::uint32_t> above_;
  std::vector<std::uint32_t> size_;
};

}  // namespace ohmfold

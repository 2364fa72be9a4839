// Conductances between numbered nodes, listed by node: what the node equations are made of.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "ohmfold/value.h"

namespace ohmfold {

/// A conductance between two nodes.
struct Joint {
  std::uint32_t a, b;
  Conductance conductance;
};

/// Each node's neighbours in ascending order, parallel joints as one, in flat arrays.
class Neighbours {
 public:
  struct Entry {
    std::uint32_t node;
    Number conductance;
  };

  /// A joint from a node to itself is left out.
  Neighbours(std::size_t nodes, const std::vector<Joint>& joints);

  [[nodiscard]] std::size_t size() const { return begin_.size() - 1; }
  [[nodiscard]] std::span<const Entry> of(std::size_t node) const {
    return std::span(entries_).subspan(begin_[node], begin_[node + 1] - begin_[node]);
  }

 private:
  std::vector<std::size_t> begin_;
  std::vector<Entry> entries_;
};

}  // namespace ohmfold

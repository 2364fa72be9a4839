// Sparse elimination of node equations, the node with the fewest neighbours first.
//
// Eliminating a node of total conductance G = g1 + … + gk puts a conductance gi gj / G between each
// two of its neighbours, and passes the share gi / G of the current fed into it on to each of them:
// one step of Gauss's method on the conductance matrix. Minimum degree as order: Markowitz,
// Management Sci. 3 (1957) 255. A chain, a ladder or any series-parallel network needs about one
// update a node in this order; where neighbours become many, what is left is eliminated densely.
#pragma once

#include <algorithm>
#include <functional>
#include <queue>
#include <unordered_map>
#include <utility>
#include <vector>

#include "ohmfold/error.h"
#include "ohmfold/value.h"

namespace ohmfold::check {

/// Node equations over a field (Rationals or PrimeField): conductances between numbered nodes and
/// currents fed into them. Usage: join and inject, then eliminate once, then ask.
template <class Field>
class Elimination {
 public:
  using Value = typename Field::Value;

  Elimination(const Field& field, std::size_t nodes)
      : field_(field),
        zero_(field.from(Number(0))),
        neighbours_(nodes),
        degree_(nodes, 0),
        injected_(nodes, zero_),
        is_gone_(nodes, false) {}

  /// Adds a conductance between two nodes. From a node to itself it changes nothing.
  void join(std::uint32_t a, std::uint32_t b, const Value& conductance) {
    if (a == b) return;
    const auto [at, is_new] = between_.try_emplace(key(a, b), conductance);
    if (!is_new) {
      at->second = field_.add(at->second, conductance);
      return;
    }
    neighbours_[a].push_back(b);
    neighbours_[b].push_back(a);
    ++degree_[a];
    ++degree_[b];
  }

  /// Feeds a current into a node.
  void inject(std::uint32_t node, const Value& current) {
    injected_[node] = field_.add(injected_[node], current);
  }

  /// Eliminates every node but those in `keep` (by node). False where more than `most_core` nodes
  /// are left when the equations have become dense; then there is nothing to ask. Cost: as said
  /// above, and the third power of that core.
  [[nodiscard]] bool eliminate(const std::vector<bool>& keep, std::size_t most_core) {
    for (std::uint32_t node = 0; node < degree_.size(); ++node) {
      if (keep[node]) continue;
      ++left_;
      queue_.emplace(degree_[node], node);
    }
    while (!queue_.empty()) {
      const auto [degree, node] = queue_.top();
      queue_.pop();
      if (is_gone_[node] || degree > degree_[node]) continue;  // a later entry is the right one
      if (degree < degree_[node]) {
        queue_.emplace(degree_[node], node);
        continue;
      }
      if (is_dense(degree)) {
        if (left_ > most_core) return false;
        eliminate_densely(keep);
        return true;
      }
      eliminate_node(node, keep);
    }
    return true;
  }

  /// After elimination: the conductance between two kept nodes, as they see it.
  [[nodiscard]] Value conductance(std::uint32_t a, std::uint32_t b) const {
    const auto at = between_.find(key(a, b));
    return at == between_.end() ? zero_ : at->second;
  }

  /// After elimination: the potentials of all nodes where the kept ones are at zero.
  [[nodiscard]] std::vector<Value> potentials() const {
    std::vector<Value> potential(degree_.size(), zero_);
    std::size_t end = shares_.size();
    for (auto at = pivots_.rbegin(); at != pivots_.rend(); ++at) {
      Value value = at->own;
      for (std::size_t i = at->shares_begin; i < end; ++i) {
        const auto& [node, share] = shares_[i];
        value = field_.add(value, field_.multiply(share, potential[node]));
      }
      end = at->shares_begin;
      potential[at->node] = std::move(value);
    }
    return potential;
  }

 private:
  using Row = std::vector<std::pair<std::uint32_t, Value>>;  // conductances to neighbours
  static constexpr std::uint32_t kSparseDegree = 24;

  // An eliminated node: its potential is `own` and the weighted sum of those in shares_.
  struct Pivot {
    std::uint32_t node;
    std::size_t shares_begin;
    Value own;
  };

  static std::uint64_t key(std::uint32_t a, std::uint32_t b) {
    return (std::uint64_t{std::min(a, b)} << 32) | std::max(a, b);
  }

  [[nodiscard]] bool is_dense(std::uint32_t degree) const {
    return degree > kSparseDegree || (degree > 8 && 3 * std::size_t{degree} > left_);
  }

  // Records the pivot, passes its current on, and turns its row into shares.
  void record(std::uint32_t node, Row& row) {
    --left_;
    is_gone_[node] = true;
    if (row.empty()) {
      pivots_.push_back({node, shares_.size(), zero_});
      return;
    }
    Value total = zero_;
    for (const auto& entry : row) total = field_.add(total, entry.second);
    const Value inverse = field_.divide(field_.from(Number(1)), total);
    pivots_.push_back({node, shares_.size(), field_.multiply(injected_[node], inverse)});
    for (auto& [other, value] : row) {
      value = field_.multiply(value, inverse);
      shares_.emplace_back(other, value);
      inject(other, field_.multiply(value, injected_[node]));
    }
  }

  void eliminate_node(std::uint32_t node, const std::vector<bool>& keep) {
    Row row;
    std::vector<Value> conductances;
    for (const std::uint32_t other : neighbours_[node]) {
      if (is_gone_[other]) continue;
      const auto at = between_.find(key(node, other));
      row.emplace_back(other, at->second);
      conductances.push_back(std::move(at->second));
      between_.erase(at);
    }
    neighbours_[node] = {};
    record(node, row);
    for (std::size_t i = 0; i < row.size(); ++i) {
      for (std::size_t j = i + 1; j < row.size(); ++j) {
        join(row[i].first, row[j].first, field_.multiply(row[i].second, conductances[j]));
      }
    }
    for (const auto& entry : row) {
      --degree_[entry.first];
      if (!keep[entry.first]) queue_.emplace(degree_[entry.first], entry.first);
    }
  }

  // The same, for all that is left, in a square of conductances.
  void eliminate_densely(const std::vector<bool>& keep) {
    std::vector<std::uint32_t> nodes;  // to eliminate, then the kept ones
    for (std::uint32_t i = 0; i < degree_.size(); ++i) {
      if (!is_gone_[i] && !keep[i]) nodes.push_back(i);
    }
    const std::size_t pivots = nodes.size();
    std::unordered_map<std::uint32_t, std::size_t> column;
    for (std::size_t i = 0; i < pivots; ++i) {
      column.emplace(nodes[i], i);
    }
    for (std::size_t i = 0; i < pivots; ++i) {
      for (const std::uint32_t other : neighbours_[nodes[i]]) {
        if (keep[other] && column.emplace(other, nodes.size()).second) nodes.push_back(other);
      }
    }
    std::vector<std::vector<Value>> square = take_square(nodes, pivots, column);
    for (std::size_t k = 0; k < pivots; ++k) eliminate_row(k, nodes, square);
    // What lies between kept nodes has been added to below, where it was put in as zero.
    for (std::size_t i = pivots; i < nodes.size(); ++i) {
      for (std::size_t j = i + 1; j < nodes.size(); ++j) join(nodes[i], nodes[j], square[i][j]);
    }
  }

  std::vector<std::vector<Value>> take_square(
      const std::vector<std::uint32_t>& nodes, std::size_t pivots,
      const std::unordered_map<std::uint32_t, std::size_t>& column) {
    std::vector<std::vector<Value>> square(nodes.size(), std::vector<Value>(nodes.size(), zero_));
    for (std::size_t i = 0; i < pivots; ++i) {
      for (const std::uint32_t other : neighbours_[nodes[i]]) {
        if (is_gone_[other]) continue;
        const std::size_t j = column.at(other);
        const auto at = between_.find(key(nodes[i], other));
        // Only the half right of the diagonal is used.
        if (at != between_.end() && i < j) square[i][j] = at->second;
      }
    }
    return square;
  }

  void eliminate_row(std::size_t k, const std::vector<std::uint32_t>& nodes,
                     std::vector<std::vector<Value>>& square) {
    Row row;
    std::vector<std::size_t> columns;
    for (std::size_t j = k + 1; j < nodes.size(); ++j) {
      if (square[k][j] == zero_) continue;
      row.emplace_back(nodes[j], square[k][j]);
      columns.push_back(j);
    }
    record(nodes[k], row);
    const Field field = field_;  // a copy that no store below can touch: it stays in registers
    const std::vector<Value>& from = square[k];
    for (std::size_t i = 0; i < columns.size(); ++i) {
      std::vector<Value>& to = square[columns[i]];
      for (std::size_t j = columns[i] + 1; j < nodes.size(); ++j) {
        to[j] = field.add(to[j], field.multiply(row[i].second, from[j]));
      }
    }
  }

  using Entry = std::pair<std::uint32_t, std::uint32_t>;  // degree, node

  Field field_;
  Value zero_;
  std::unordered_map<std::uint64_t, Value> between_;
  std::vector<std::vector<std::uint32_t>> neighbours_;  // eliminated ones stay listed
  std::vector<std::uint32_t> degree_;                   // neighbours that are not eliminated
  std::vector<Value> injected_;
  std::vector<bool> is_gone_;
  std::size_t left_ = 0;
  std::priority_queue<Entry, std::vector<Entry>, std::greater<>> queue_;
  std::vector<Pivot> pivots_;
  Row shares_;
};

}  // namespace ohmfold::check

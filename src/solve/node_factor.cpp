// Star to mesh modulo a prime, node after node, and the solving that goes with it.
#include "solve/node_factor.h"

#include <functional>
#include <queue>

namespace ohmfold {
namespace {

using Value = PrimeField::Value;
using Row = ModularRows::value_type;

// Adds scale times the pivot's row, without the node itself, to the node's row; takes out the
// pivot.
void merge_into(const PrimeField& field, std::uint32_t node, std::uint32_t pivot, const Row& from,
                Value scale, Row& row, Row& merged) {
  merged.clear();
  auto at = from.begin();
  const auto take_up_to = [&](std::uint32_t end) {
    for (; at != from.end() && at->first < end; ++at) {
      if (at->first != node) merged.emplace_back(at->first, field.multiply(scale, at->second));
    }
  };
  for (const auto& [other, value] : row) {
    if (other == pivot) continue;
    take_up_to(other);
    if (at != from.end() && at->first == other) {
      merged.emplace_back(other, field.add(value, field.multiply(scale, at->second)));
      ++at;
    } else {
      merged.emplace_back(other, value);
    }
  }
  take_up_to(UINT32_MAX);
  row.swap(merged);
}

}  // namespace

std::optional<ModularRows> modular_rows(const PrimeField& field, const Neighbours& neighbours) {
  ModularRows rows(neighbours.size());
  for (std::size_t node = 0; node < rows.size(); ++node) {
    for (const auto& [other, conductance] : neighbours.of(node)) {
      const Value denominator = field.from(conductance.denominator());
      if (denominator == 0) return std::nullopt;
      const Value numerator = field.from(conductance.numerator());
      rows[node].emplace_back(other,
                              denominator == 1 ? numerator : field.divide(numerator, denominator));
    }
  }
  return rows;
}

void NodeFactor::eliminate(std::uint32_t node, ModularRows& rows, Value inverse) {
  Row pivot;
  pivot.swap(rows[node]);
  Row merged;
  for (const auto& [other, value] : pivot) {
    const Value share = field_.multiply(value, inverse);
    later_.terms.emplace_back(other, share);
    merge_into(field_, other, node, pivot, share, rows[other], merged);
  }
}

NodeFactor::Outcome NodeFactor::factor(ModularRows rows, std::uint64_t& work) {
  using Entry = std::pair<std::size_t, std::uint32_t>;  // neighbours, node
  std::priority_queue<Entry, std::vector<Entry>, std::greater<>> queue;
  for (std::uint32_t node = 0; node < rows.size(); ++node) queue.emplace(rows[node].size(), node);
  std::vector<bool> is_gone(rows.size(), false);
  is_ground_.assign(rows.size(), false);
  while (!queue.empty()) {
    const auto [degree, node] = queue.top();
    queue.pop();
    if (is_gone[node] || degree != rows[node].size()) continue;  // another entry is the right one
    is_gone[node] = true;
    const std::uint64_t cost = degree * degree + 1;
    if (cost > work) return Outcome::too_much_work;
    work -= cost;
    order_.push_back(node);
    later_.begin.push_back(later_.terms.size());
    Value total = 0;
    for (const auto& [other, value] : rows[node]) total = field_.add(total, value);
    if (degree > 0 && total == 0) return Outcome::bad_prime;
    is_ground_[node] = degree == 0;
    inverses_.push_back(degree == 0 ? 0 : field_.divide(1, total));
    eliminate(node, rows, inverses_.back());
    for (std::size_t i = later_.begin.back(); i < later_.terms.size(); ++i) {
      const std::uint32_t other = later_.terms[i].first;
      queue.emplace(rows[other].size(), other);
    }
  }
  later_.begin.push_back(later_.terms.size());
  number_by_position();
  return Outcome::done;
}

// Nodes that are near in the order are near in memory then.
void NodeFactor::number_by_position() {
  std::vector<std::uint32_t> position(order_.size());
  for (std::uint32_t i = 0; i < order_.size(); ++i) position[order_[i]] = i;
  earlier_.begin.assign(order_.size() + 1, 0);
  for (Term& term : later_.terms) {
    term.first = position[term.first];
    ++earlier_.begin[term.first + 1];
  }
  for (std::size_t i = 1; i < earlier_.begin.size(); ++i)
    earlier_.begin[i] += earlier_.begin[i - 1];
  std::vector<std::size_t> next(earlier_.begin.begin(), earlier_.begin.end() - 1);
  earlier_.terms.resize(later_.terms.size());
  for (std::uint32_t i = 0; i < order_.size(); ++i) {
    for (const auto& [other, share] : later_.of(i)) earlier_.terms[next[other]++] = {i, share};
  }
}

void NodeFactor::solve(std::vector<Value>& values) {
  const std::size_t nodes = order_.size();
  ordered_.resize(nodes);
  for (std::size_t i = 0; i < nodes; ++i) {
    ordered_[i] = field_.sum_of_products(values[order_[i]], earlier_.of(i), ordered_.data());
  }
  for (std::size_t i = nodes; i-- > 0;) {
    const Value own = field_.multiply(ordered_[i], inverses_[i]);
    ordered_[i] = field_.sum_of_products(own, later_.of(i), ordered_.data());
    values[order_[i]] = ordered_[i];
  }
}

std::vector<std::uint32_t> NodeFactor::grounds() const {
  std::vector<std::uint32_t> ground(order_.size());
  for (std::size_t i = order_.size(); i-- > 0;) {
    const auto later = later_.of(i);
    ground[order_[i]] = later.empty() ? order_[i] : ground[order_[later.front().first]];
  }
  return ground;
}

}  // namespace ohmfold

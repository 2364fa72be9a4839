// Star-mesh elimination in minimum-degree order, over the rationals.
#include "solve/elimination.h"

#include <set>

#include "ohmfold/error.h"

namespace ohmfold {

void NodeEquations::join(std::uint32_t a, std::uint32_t b, const Conductance& conductance) {
  if (a == b) return;
  rows_[a][b] += conductance.number;
  rows_[b][a] += conductance.number;
}

void NodeEquations::eliminate(const Pivot& pivot) {
  for (std::size_t i = 0; i < pivot.row.size(); ++i) {
    const auto& [a, to_a] = pivot.row[i];
    const Number share = to_a / pivot.total;
    brought_[a] += share * brought_[pivot.node];
    rows_[a].erase(pivot.node);
    for (std::size_t j = i + 1; j < pivot.row.size(); ++j) {
      const auto& [b, to_b] = pivot.row[j];
      const Number between = share * to_b;
      rows_[a][b] += between;
      rows_[b][a] += between;
    }
  }
}

std::optional<std::vector<Number>> NodeEquations::solve(std::uint64_t most_work) {
  std::set<std::pair<std::size_t, std::uint32_t>> queue;  // by number of neighbours
  for (std::uint32_t node = 0; node < rows_.size(); ++node) {
    queue.emplace(rows_[node].size(), node);
  }
  std::vector<Pivot> pivots;
  pivots.reserve(rows_.size());
  std::uint64_t work = 0;
  while (!queue.empty()) {
    const std::uint32_t node = queue.begin()->second;
    queue.erase(queue.begin());
    Pivot pivot{node, {}, {rows_[node].begin(), rows_[node].end()}};
    for (const auto& [other, conductance] : pivot.row) {
      pivot.total += conductance;
      queue.erase({rows_[other].size(), other});
    }
    work += pivot.row.size() * pivot.row.size() * (64 + pivot.total.bits());
    if (work > most_work) return std::nullopt;
    eliminate(pivot);
    rows_[node].clear();
    for (const auto& [other, conductance] : pivot.row) queue.emplace(rows_[other].size(), other);
    pivots.push_back(std::move(pivot));
  }
  std::vector<Number> potential(rows_.size());
  for (std::size_t i = pivots.size(); i-- > 0;) {
    const Pivot& pivot = pivots[i];
    if (pivot.row.empty()) {
      ensure(brought_[pivot.node].is_zero(), "currents brought to a piece do not sum to zero");
      continue;
    }
    Number sum = brought_[pivot.node];
    for (const auto& [other, conductance] : pivot.row) sum += conductance * potential[other];
    potential[pivot.node] = sum / pivot.total;
  }
  return potential;
}

}  // namespace ohmfold

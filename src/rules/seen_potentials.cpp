// Gauss's method on the conductances between points.
#include "rules/seen_potentials.h"

namespace ohmfold {
namespace {

// The points that resistors join to `from`, nearest first.
std::vector<std::uint32_t> reached(const SeenGraph& graph, std::uint32_t from) {
  std::vector<bool> seen(graph.points.size(), false);
  std::vector<std::uint32_t> order{from};
  seen[from] = true;
  for (std::size_t i = 0; i < order.size(); ++i) {
    for (const SeenGraph::Edge& edge : graph.edges[order[i]]) {
      if (seen[edge.to]) continue;
      seen[edge.to] = true;
      order.push_back(edge.to);
    }
  }
  return order;
}

}  // namespace

std::optional<std::vector<std::optional<Number>>> seen_potentials(const SeenGraph& graph,
                                                                  std::size_t most_points) {
  const std::size_t count = graph.points.size();
  if (count > most_points) return std::nullopt;
  const std::vector<std::uint32_t> order = reached(graph, graph.terminal);
  std::vector<std::vector<Number>> between(count, std::vector<Number>(count));
  for (std::uint32_t i = 0; i < count; ++i) {
    for (const SeenGraph::Edge& edge : graph.edges[i]) {
      between[i][edge.to] = graph.conductances[edge.weight];
    }
  }
  std::vector<Number> brought(count);
  brought[graph.other] = Number(1);
  std::vector<Number> total(count);
  // The farthest point goes first: each share of what is joined to it goes to its neighbours.
  for (std::size_t k = order.size(); k-- > 1;) {
    const std::uint32_t point = order[k];
    for (std::size_t i = 0; i < k; ++i) total[point] += between[point][order[i]];
    for (std::size_t i = 0; i < k; ++i) {
      const std::uint32_t a = order[i];
      if (between[point][a].is_zero()) continue;
      const Number share = between[point][a] / total[point];
      brought[a] += share * brought[point];
      for (std::size_t j = 0; j < k; ++j) {
        if (j != i) between[a][order[j]] += share * between[point][order[j]];
      }
    }
  }
  std::vector<std::optional<Number>> potential(count);
  potential[graph.terminal] = Number(0);
  for (std::size_t k = 1; k < order.size(); ++k) {
    const std::uint32_t point = order[k];
    Number sum = brought[point];
    for (std::size_t i = 0; i < k; ++i) sum += between[point][order[i]] * *potential[order[i]];
    potential[point] = sum / total[point];
  }
  return potential;
}

}  // namespace ohmfold

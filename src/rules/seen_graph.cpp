// From a network to the graph that its source sees.
#include "rules/seen_graph.h"

#include <algorithm>
#include <map>

namespace ohmfold {

std::optional<std::uint32_t> SeenGraph::number_of(PointId point) const {
  const auto at = std::lower_bound(points.begin(), points.end(), point);
  if (at == points.end() || *at != point) return std::nullopt;
  return static_cast<std::uint32_t>(at - points.begin());
}

std::optional<SeenGraph> seen_graph(const Network& network) {
  SeenGraph graph;
  std::vector<PartId> resistors;
  PartId source;
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    const PartId part{i};
    if (!network.is_alive(part)) continue;
    graph.points.push_back(network.from(part));
    graph.points.push_back(network.to(part));
    if (network.kind(part) == ElementKind::resistor && network.knows_resistance(part)) {
      resistors.push_back(part);
    } else if (is_source(network.kind(part)) && !source.exists()) {
      source = part;
    } else {
      return std::nullopt;
    }
  }
  if (!source.exists() || network.from(source) == network.to(source)) return std::nullopt;
  std::sort(graph.points.begin(), graph.points.end());
  graph.points.erase(std::unique(graph.points.begin(), graph.points.end()), graph.points.end());
  graph.terminal = *graph.number_of(network.from(source));
  graph.other = *graph.number_of(network.to(source));

  std::map<std::pair<std::uint32_t, std::uint32_t>, Number> between;
  for (const PartId part : resistors) {
    if (network.from(part) == network.to(part)) continue;
    const std::uint32_t a = *graph.number_of(network.from(part));
    const std::uint32_t b = *graph.number_of(network.to(part));
    between[{std::min(a, b), std::max(a, b)}] +=
        Number(1) / network.resistance(part).lowest_terms();
  }
  graph.edges.resize(graph.points.size());
  graph.edge_count = between.size();
  for (const auto& [ends, conductance] : between) {
    auto& known = graph.conductances;
    const auto at = std::find(known.begin(), known.end(), conductance);
    const auto weight = static_cast<std::uint32_t>(at - known.begin());
    if (at == known.end()) known.push_back(conductance);
    graph.edges[ends.first].push_back({ends.second, weight});
    graph.edges[ends.second].push_back({ends.first, weight});
  }
  for (auto& edges : graph.edges) std::sort(edges.begin(), edges.end());
  return graph;
}

}  // namespace ohmfold

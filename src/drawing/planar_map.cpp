// Planarity and embeddings by the Boost Graph Library; nobody else includes it.
#include "drawing/planar_map.h"

#include <algorithm>

// The other way to keep its lists recurses over their length.
#define BOOST_GRAPH_PREFER_STD_LIB
#include <boost/graph/adjacency_list.hpp>
#include <boost/graph/boyer_myrvold_planar_test.hpp>
#include <boost/graph/make_biconnected_planar.hpp>
#include <boost/graph/make_connected.hpp>
#include <map>

namespace ohmfold::drawing {
namespace {

using Graph = boost::adjacency_list<boost::vecS, boost::vecS, boost::undirectedS,
                                    boost::property<boost::vertex_index_t, int>,
                                    boost::property<boost::edge_index_t, int>>;
using GraphEdge = boost::graph_traits<Graph>::edge_descriptor;
using Embedding = std::vector<std::vector<GraphEdge>>;

/// Steps of all planarity tests together for one subset.
constexpr std::size_t kMostSteps = 8'000'000;

CornerPair sorted(CornerPair pair) {
  return std::minmax(pair.first, pair.second);
}

void number_edges(Graph& graph) {
  int count = 0;
  for (auto [at, end] = boost::edges(graph); at != end; ++at) {
    boost::put(boost::edge_index, graph, *at, count++);
  }
}

bool find_embedding(Graph& graph, Embedding& embedding) {
  number_edges(graph);
  embedding.assign(boost::num_vertices(graph), {});
  return boost::boyer_myrvold_planarity_test(
      boost::boyer_myrvold_params::graph = graph,
      boost::boyer_myrvold_params::embedding = embedding.data());
}

/// Adds edges until no corner is a cut, and embeds it again.
void close_up(Graph& graph, Embedding& embedding) {
  const auto before = boost::num_edges(graph);
  boost::make_connected(graph);
  if (boost::num_edges(graph) > before) find_embedding(graph, embedding);
  boost::make_biconnected_planar(graph, embedding.data());
  if (boost::num_edges(graph) > before) find_embedding(graph, embedding);
}

/// The graph without twins; all edges by their pair of corners, in their order.
using Bundles = std::map<CornerPair, std::vector<std::uint32_t>>;

std::vector<std::vector<std::uint32_t>> rotations(const Graph& graph, const Embedding& embedding,
                                                  const Bundles& bundles) {
  std::vector<std::vector<std::uint32_t>> around(embedding.size());
  for (std::uint32_t corner = 0; corner < around.size(); ++corner) {
    for (const GraphEdge& edge : embedding[corner]) {
      const auto ends = sorted({static_cast<std::uint32_t>(boost::source(edge, graph)),
                                static_cast<std::uint32_t>(boost::target(edge, graph))});
      std::vector<std::uint32_t> twins = bundles.at(ends);
      // Side by side: their order from one end is the other way round from the other.
      if (corner == ends.second) std::reverse(twins.begin(), twins.end());
      around[corner].insert(around[corner].end(), twins.begin(), twins.end());
    }
  }
  return around;
}

bool are_planar(std::uint32_t corners, const std::vector<CornerPair>& edges) {
  Graph graph(corners);
  boost::add_edge(0, 1, graph);
  for (const CornerPair& edge : edges) boost::add_edge(edge.first, edge.second, graph);
  number_edges(graph);
  return boost::boyer_myrvold_planarity_test(graph);
}

}  // namespace

std::optional<PlanarMap> embed(std::uint32_t corners, const std::vector<CornerPair>& edges) {
  PlanarMap map;
  map.edges = edges;
  map.outer = edges.size();
  map.edges.emplace_back(0, 1);
  Graph graph(corners);
  Bundles bundles;
  for (std::uint32_t i = 0; i < map.edges.size(); ++i) {
    std::vector<std::uint32_t>& twins = bundles[sorted(map.edges[i])];
    if (twins.empty()) boost::add_edge(map.edges[i].first, map.edges[i].second, graph);
    twins.push_back(i);
  }
  Embedding embedding;
  if (!find_embedding(graph, embedding)) return {};
  close_up(graph, embedding);
  for (auto [at, end] = boost::edges(graph); at != end; ++at) {
    const CornerPair ends{static_cast<std::uint32_t>(boost::source(*at, graph)),
                          static_cast<std::uint32_t>(boost::target(*at, graph))};
    std::vector<std::uint32_t>& twins = bundles[sorted(ends)];
    if (!twins.empty()) continue;
    twins.push_back(static_cast<std::uint32_t>(map.edges.size()));
    map.edges.push_back(ends);
  }
  map.around = rotations(graph, embedding, bundles);
  return map;
}

std::vector<bool> planar_subset(std::uint32_t corners, const std::vector<CornerPair>& edges) {
  std::vector<bool> kept(edges.size(), false);
  std::vector<CornerPair> taken;
  std::size_t steps = 0;
  // Stretches of edges that wait, the next one last. One that does not fit is halved.
  std::vector<std::pair<std::size_t, std::size_t>> waiting{{0, edges.size()}};
  while (!waiting.empty() && steps < kMostSteps) {
    const auto [begin, end] = waiting.back();
    waiting.pop_back();
    if (begin == end) continue;
    const std::size_t before = taken.size();
    for (std::size_t i = begin; i < end; ++i) taken.push_back(edges[i]);
    steps += corners + taken.size();
    if (are_planar(corners, taken)) {
      std::fill(kept.begin() + static_cast<std::ptrdiff_t>(begin),
                kept.begin() + static_cast<std::ptrdiff_t>(end), true);
      continue;
    }
    taken.resize(before);
    if (end - begin == 1) continue;
    const std::size_t middle = begin + (end - begin) / 2;
    waiting.emplace_back(middle, end);
    waiting.emplace_back(begin, middle);
  }
  return kept;
}

}  // namespace ohmfold::drawing

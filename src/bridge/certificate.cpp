// From a network to its certificate: thin out, look around an edge, narrow down.
#include "bridge/certificate.h"

#include <algorithm>

#include "bridge/corners.h"
#include "bridge/path_graph.h"
#include "circuit/blocks.h"
#include "ohmfold/error.h"

namespace ohmfold {
namespace {

// For a certificate of few parts, so many edges are tried in all, each looked at so many times.
constexpr std::size_t kMostTries = 64;
constexpr std::size_t kMostEdgesLookedAt = 50'000;

// Of several lists the shortest that has two entries or more. Requires one.
std::vector<PartId> shortest(std::vector<std::vector<PartId>> lists) {
  std::vector<PartId>* best = nullptr;
  for (std::vector<PartId>& list : lists) {
    if (list.size() > 1 && (best == nullptr || list.size() < best->size())) best = &list;
  }
  ensure(best != nullptr, "a graph that does not reduce has no piece of two edges");
  return std::move(*best);
}

// The blocks of some edges, as lists.
std::vector<std::vector<PartId>> block_lists(const Network& graph,
                                             const std::vector<PartId>& edges) {
  const std::vector<std::uint32_t> block = blocks(graph, edges);
  std::vector<std::vector<PartId>> lists;
  for (std::size_t i = 0; i < edges.size(); ++i) {
    if (block[i] >= lists.size()) lists.resize(block[i] + 1);
    lists[block[i]].push_back(edges[i]);
  }
  return lists;
}

class CertificateFinder {
 public:
  explicit CertificateFinder(const Network& start) : paths_(start) {}

  std::optional<Certificate> run() {
    paths_.thin_out();
    while (!paths_.edges().empty()) {
      const auto lists = block_lists(graph(), paths_.edges());
      if (lists.size() > 1) {
        paths_.keep(shortest(lists));
      } else {
        const Corners corners = CornerSearch(graph()).around(edge_to_look_around());
        if (corners.are_complete()) return written(fewest_parts(corners));
        corners.second.empty() ? keep_block(corners) : keep_side(corners);
      }
      paths_.thin_out();
    }
    return std::nullopt;
  }

 private:
  [[nodiscard]] const Network& graph() const { return paths_.graph(); }

  [[nodiscard]] PartId edge_to_look_around() const {
    const std::vector<PartId>& edges = paths_.edges();
    const auto at = std::find_if(edges.begin(), edges.end(),
                                 [this](PartId edge) { return paths_.holds_source(edge); });
    return at == edges.end() ? edges.front() : *at;
  }

  // All paths between the edge's ends pass one point or more: without the edge the graph is a chain
  // of blocks. Keeps one of them, and the way round through the others and the edge.
  void keep_block(const Corners& corners) {
    std::vector<PartId> edges = paths_.edges();
    std::erase(edges, corners.edge);
    const std::vector<PartId> block = shortest(block_lists(graph(), edges));
    const auto is_in_block = [&](PartId edge) {
      return std::binary_search(block.begin(), block.end(), edge);
    };
    const std::vector<PartId>& path = corners.first;
    const auto enters = std::find_if(path.begin(), path.end(), is_in_block);
    const auto leaves = std::find_if_not(enters, path.end(), is_in_block);
    PointId from = graph().from(corners.edge);
    for (auto at = path.begin(); at != enters; ++at) from = graph().across(*at, from);
    PointId to = from;
    for (auto at = enters; at != leaves; ++at) to = graph().across(*at, to);
    std::vector<PartId> detour(std::make_reverse_iterator(enters), path.rend());
    detour.push_back(corners.edge);
    detour.insert(detour.end(), path.rbegin(), std::make_reverse_iterator(leaves));
    paths_.keep(block, detour, from, to);
  }

  // Two paths, but the edge's ends part them: keeps the edge and what lies on one side.
  void keep_side(const Corners& corners) {
    std::vector<bool> is_listed(graph().part_count(), false);
    is_listed[corners.edge.index] = true;
    std::vector<std::vector<PartId>> sides;
    for (const PartId edge : paths_.edges()) {
      if (!is_listed[edge.index]) sides.push_back(side_of(edge, corners.edge, is_listed));
    }
    std::vector<PartId> side = shortest(std::move(sides));
    side.push_back(corners.edge);
    std::sort(side.begin(), side.end());
    paths_.keep(side);
  }

  // All edges that hang together with `start` without passing an end of `parting`.
  std::vector<PartId> side_of(PartId start, PartId parting, std::vector<bool>& is_listed) const {
    std::vector<PartId> side{start};
    is_listed[start.index] = true;
    for (std::size_t i = 0; i < side.size(); ++i) {
      for (const PointId point : {graph().from(side[i]), graph().to(side[i])}) {
        if (point == graph().from(parting) || point == graph().to(parting)) continue;
        graph().for_each_at(point, [&](PartId next) {
          if (is_listed[next.index]) return;
          is_listed[next.index] = true;
          side.push_back(next);
        });
      }
    }
    return side;
  }

  [[nodiscard]] std::size_t parts_of(const Corners& corners) const {
    std::size_t count = paths_.length(corners.edge);
    for (const auto* path : {&corners.first, &corners.second, &corners.link}) {
      for (const PartId edge : *path) count += paths_.length(edge);
    }
    return count;
  }

  [[nodiscard]] Corners fewest_parts(Corners best) const {
    CornerSearch search(graph());
    std::size_t fewest = parts_of(best);
    const std::size_t tries = std::min(kMostTries, kMostEdgesLookedAt / paths_.edges().size());
    for (std::size_t i = 0; i < std::min(tries, paths_.edges().size()); ++i) {
      Corners corners = search.around(paths_.edges()[i]);
      if (!corners.are_complete() || parts_of(corners) >= fewest) continue;
      fewest = parts_of(corners);
      best = std::move(corners);
    }
    return best;
  }

  [[nodiscard]] Certificate::Path path(const std::vector<PartId>& edges, PointId from,
                                       PointId to) const {
    Certificate::Path one{from, to, {}};
    paths_.expand(edges, from, one.parts);
    return one;
  }

  // A path cut in two at one of its points.
  void add_halves(const std::vector<PartId>& edges, const Corners& corners, PointId middle,
                  std::vector<Certificate::Path>& paths) const {
    const PointId from = graph().from(corners.edge);
    auto cut = edges.begin();
    for (PointId at = from; at != middle; ++cut) at = graph().across(*cut, at);
    paths.push_back(path({edges.begin(), cut}, from, middle));
    paths.push_back(path({cut, edges.end()}, middle, graph().to(corners.edge)));
  }

  [[nodiscard]] Certificate written(const Corners& corners) const {
    const PointId from = graph().from(corners.edge);
    const PointId to = graph().to(corners.edge);
    std::vector<Certificate::Path> paths{path({corners.edge}, from, to)};
    add_halves(corners.first, corners, corners.on_first, paths);
    add_halves(corners.second, corners, corners.on_second, paths);
    paths.push_back(path(corners.link, corners.on_first, corners.on_second));
    for (Certificate::Path& one : paths) {
      if (one.from < one.to) continue;
      std::swap(one.from, one.to);
      std::reverse(one.parts.begin(), one.parts.end());
    }
    std::sort(paths.begin(), paths.end(), [](const auto& a, const auto& b) {
      return std::pair(a.from, a.to) < std::pair(b.from, b.to);
    });
    Certificate certificate{{from, to, corners.on_first, corners.on_second}, {}};
    std::sort(certificate.corners.begin(), certificate.corners.end());
    std::move(paths.begin(), paths.end(), certificate.paths.begin());
    return certificate;
  }

  PathGraph paths_;
};

}  // namespace

std::optional<Certificate> find_certificate(const Network& start) {
  return CertificateFinder(start).run();
}

}  // namespace ohmfold

// Cut vertices by blocks, pairs by trying.
#include "drawing/splitting.h"

#include <algorithm>
#include <unordered_map>

#include "circuit/blocks.h"
#include "circuit/disjoint_sets.h"

namespace ohmfold::drawing {

namespace {

constexpr std::size_t kMostVertices = 60;

/// The vertices of a piece, numbered from 0 in the order in which its links name them.
class Numbers {
 public:
  explicit Numbers(const std::vector<Link>& links) {
    for (const Link& link : links) {
      add(link.a);
      add(link.b);
    }
  }
  [[nodiscard]] std::uint32_t of(std::uint32_t vertex) const { return numbers_.at(vertex); }
  [[nodiscard]] const std::vector<std::uint32_t>& vertices() const { return vertices_; }

 private:
  void add(std::uint32_t vertex) {
    const auto next = static_cast<std::uint32_t>(vertices_.size());
    if (numbers_.try_emplace(vertex, next).second) vertices_.push_back(vertex);
  }
  std::unordered_map<std::uint32_t, std::uint32_t> numbers_;
  std::vector<std::uint32_t> vertices_;
};

/// The block of each link.
std::vector<std::uint32_t> blocks_of(const std::vector<Link>& links, const Numbers& numbers) {
  Network wires(numbers.vertices().size());
  std::vector<PartId> all;
  all.reserve(links.size());
  for (const Link& link : links) {
    all.push_back(
        wires.add(ElementKind::wire, PointId{numbers.of(link.a)}, PointId{numbers.of(link.b)}));
  }
  return blocks(wires, all);
}

/// The links that hang together when two vertices are taken out, as a set for each link; a link
/// between the two is by itself.
std::vector<std::uint32_t> sets_without(const std::vector<Link>& links, const Numbers& numbers,
                                        std::uint32_t first, std::uint32_t second) {
  const auto count = static_cast<std::uint32_t>(numbers.vertices().size());
  DisjointSets sets(count + links.size());
  for (std::uint32_t i = 0; i < links.size(); ++i) {
    for (const std::uint32_t vertex : {links[i].a, links[i].b}) {
      if (vertex != first && vertex != second) sets.join(count + i, numbers.of(vertex));
    }
  }
  std::vector<std::uint32_t> set_of(links.size());
  for (std::uint32_t i = 0; i < links.size(); ++i) set_of[i] = sets.find(count + i);
  return set_of;
}

/// The links by their sets, in the order of their first links.
std::vector<std::vector<Link>> grouped(const std::vector<Link>& links,
                                       const std::vector<std::uint32_t>& set_of) {
  std::unordered_map<std::uint32_t, std::size_t> place;
  std::vector<std::vector<Link>> groups;
  for (std::size_t i = 0; i < links.size(); ++i) {
    const auto [entry, is_new] = place.try_emplace(set_of[i], groups.size());
    if (is_new) groups.emplace_back();
    groups[entry->second].push_back(links[i]);
  }
  return groups;
}

bool touches(const std::vector<Link>& links, std::uint32_t vertex) {
  return std::any_of(links.begin(), links.end(),
                     [&](const Link& link) { return link.a == vertex || link.b == vertex; });
}

}  // namespace

std::vector<Piece> in_series(const Piece& piece) {
  const Numbers numbers(piece.links);
  std::vector<std::vector<Link>> groups = grouped(piece.links, blocks_of(piece.links, numbers));
  // By vertex, the blocks that it belongs to: one, or two where the chain passes it.
  std::unordered_map<std::uint32_t, std::vector<std::size_t>> at;
  for (std::size_t i = 0; i < groups.size(); ++i) {
    for (const Link& link : groups[i]) {
      for (const std::uint32_t vertex : {link.a, link.b}) {
        std::vector<std::size_t>& there = at[vertex];
        if (there.empty() || there.back() != i) there.push_back(i);
      }
    }
  }
  std::vector<Piece> chain;
  std::uint32_t entry = piece.top;
  std::size_t block = at.at(entry).front();
  while (true) {
    std::uint32_t exit = piece.bottom;
    std::size_t next = block;
    for (const Link& link : groups[block]) {
      for (const std::uint32_t vertex : {link.a, link.b}) {
        for (const std::size_t other : at.at(vertex)) {
          if (vertex == entry || other == block) continue;
          exit = vertex;
          next = other;
        }
      }
    }
    chain.push_back({std::move(groups[block]), entry, exit});
    if (next == block) return chain;
    entry = exit;
    block = next;
  }
}

std::vector<Piece> in_parallel(const Piece& piece) {
  const Numbers numbers(piece.links);
  std::vector<Piece> pieces;
  for (std::vector<Link>& links :
       grouped(piece.links, sets_without(piece.links, numbers, piece.top, piece.bottom))) {
    pieces.push_back({std::move(links), piece.top, piece.bottom});
  }
  return pieces;
}

std::optional<Piece> inner_piece(const Piece& piece) {
  const Numbers numbers(piece.links);
  const std::vector<std::uint32_t>& vertices = numbers.vertices();
  if (vertices.size() > kMostVertices) return std::nullopt;
  for (std::size_t i = 0; i < vertices.size(); ++i) {
    for (std::size_t j = i + 1; j < vertices.size(); ++j) {
      const std::vector<std::uint32_t> sets =
          sets_without(piece.links, numbers, vertices[i], vertices[j]);
      for (std::vector<Link>& links : grouped(piece.links, sets)) {
        const auto is_outer = [&](std::uint32_t end) {
          return vertices[i] != end && vertices[j] != end && touches(links, end);
        };
        // What holds the top or the bottom is the rest; so is a single link.
        if (links.size() < 2 || links.size() == piece.links.size()) continue;
        if (is_outer(piece.top) || is_outer(piece.bottom)) continue;
        return Piece{std::move(links), vertices[i], vertices[j]};
      }
    }
  }
  return std::nullopt;
}

}  // namespace ohmfold::drawing

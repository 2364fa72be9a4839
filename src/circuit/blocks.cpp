// Biconnected components without recursion.
#include "circuit/blocks.h"

#include <algorithm>
#include <unordered_map>

namespace ohmfold {
namespace {

constexpr std::uint32_t kUnset = UINT32_MAX;

// The listed parts as a graph on points numbered 0, 1, … in compressed rows.
struct Rows {
  struct Arc {
    std::uint32_t part;  // index into the list
    std::uint32_t to;
  };
  std::vector<std::uint32_t> begin;
  std::vector<Arc> arcs;
};

// Numbers the ends of the listed parts 0, 1, … in the order of meeting them: in an array by point
// where the list is a good part of the network, else by looking them up.
class Numbering {
 public:
  Numbering(std::size_t points, std::size_t parts) {
    if (4 * parts >= points) dense_.assign(points, kUnset);
  }
  std::uint32_t operator()(PointId point) {
    std::uint32_t& number = dense_.empty() ? sparse_.try_emplace(point.index, kUnset).first->second
                                           : dense_[point.index];
    if (number == kUnset) number = count_++;
    return number;
  }
  [[nodiscard]] std::uint32_t count() const { return count_; }

 private:
  std::vector<std::uint32_t> dense_;
  std::unordered_map<std::uint32_t, std::uint32_t> sparse_;
  std::uint32_t count_ = 0;
};

Rows rows_of(const Network& network, const std::vector<PartId>& parts) {
  struct Ends {
    std::uint32_t from, to;
  };
  std::vector<Ends> ends;
  ends.reserve(parts.size());
  Numbering number(network.point_count(), parts.size());
  for (const PartId part : parts) {
    const std::uint32_t from = number(network.from(part));
    ends.push_back({from, number(network.to(part))});
  }
  Rows rows;
  rows.begin.assign(number.count() + std::size_t{1}, 0);
  for (const Ends& one : ends) {
    ++rows.begin[one.from + 1];
    ++rows.begin[one.to + 1];
  }
  for (std::size_t p = 0; p + 1 < rows.begin.size(); ++p) rows.begin[p + 1] += rows.begin[p];
  rows.arcs.resize(2 * parts.size());
  std::vector<std::uint32_t> fill(rows.begin.begin(), rows.begin.end() - 1);
  for (std::uint32_t i = 0; i < parts.size(); ++i) {
    rows.arcs[fill[ends[i].from]++] = {i, ends[i].to};
    rows.arcs[fill[ends[i].to]++] = {i, ends[i].from};
  }
  return rows;
}

class BlockFinder {
 public:
  BlockFinder(const Rows& rows, std::size_t parts)
      : rows_(rows),
        block_(parts, kUnset),
        entered_(rows.begin.size() - 1, kUnset),
        low_(rows.begin.size() - 1, kUnset),
        next_arc_(rows.begin.begin(), rows.begin.end() - 1),
        by_(rows.begin.size() - 1, kUnset) {}

  std::vector<std::uint32_t> run() {
    for (std::uint32_t root = 0; root < entered_.size(); ++root) {
      if (entered_[root] == kUnset) walk_from(root);
    }
    return std::move(block_);
  }

 private:
  void enter(std::uint32_t point, std::uint32_t by) {
    entered_[point] = low_[point] = clock_++;
    by_[point] = by;
    path_.push_back(point);
  }

  void walk_from(std::uint32_t root) {
    enter(root, kUnset);
    while (!path_.empty()) {
      const std::uint32_t point = path_.back();
      if (next_arc_[point] < rows_.begin[point + 1]) {
        follow(point, rows_.arcs[next_arc_[point]++]);
      } else {
        path_.pop_back();
        if (!path_.empty()) leave(point, path_.back());
      }
    }
  }

  void follow(std::uint32_t point, Rows::Arc arc) {
    if (arc.to == point) {  // both ends on one point
      if (block_[arc.part] == kUnset) block_[arc.part] = blocks_++;
    } else if (entered_[arc.to] == kUnset) {
      open_.push_back(arc.part);
      enter(arc.to, arc.part);
    } else if (arc.part != by_[point] && entered_[arc.to] < entered_[point]) {
      open_.push_back(arc.part);
      low_[point] = std::min(low_[point], entered_[arc.to]);
    }
  }

  // Back from `point` to the point before it: if nothing below reaches further up, the parts
  // opened since then are one block.
  void leave(std::uint32_t point, std::uint32_t before) {
    low_[before] = std::min(low_[before], low_[point]);
    if (low_[point] < entered_[before]) return;
    std::uint32_t part = kUnset;
    do {
      part = open_.back();
      open_.pop_back();
      block_[part] = blocks_;
    } while (part != by_[point]);
    ++blocks_;
  }

  const Rows& rows_;
  std::vector<std::uint32_t> block_;
  std::vector<std::uint32_t> entered_, low_, next_arc_,
      by_;                           // by point; by_: the part it was entered by
  std::vector<std::uint32_t> path_;  // points from the root to here
  std::vector<std::uint32_t> open_;  // parts whose block is still open
  std::uint32_t clock_ = 0;
  std::uint32_t blocks_ = 0;
};

}  // namespace

std::vector<std::uint32_t> blocks(const Network& network, const std::vector<PartId>& parts) {
  const Rows rows = rows_of(network, parts);
  return BlockFinder(rows, parts.size()).run();
}

std::vector<bool> fed_by_source(const Network& network, const std::vector<PartId>& parts) {
  const std::vector<std::uint32_t> block = blocks(network, parts);
  std::vector<std::uint32_t> sizes, sources;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (block[i] >= sizes.size()) {
      sizes.resize(block[i] + 1, 0);
      sources.resize(block[i] + 1, 0);
    }
    ++sizes[block[i]];
    if (is_source(network.kind(parts[i]))) ++sources[block[i]];
  }
  std::vector<bool> fed(parts.size());
  for (std::size_t i = 0; i < parts.size(); ++i) {
    // A source that lies on no closed path feeds nothing, not even itself; one with both ends on
    // one point is its own closed path.
    const bool alone = sizes[block[i]] == 1 && network.from(parts[i]) != network.to(parts[i]);
    fed[i] = sources[block[i]] > 0 && !alone;
  }
  return fed;
}

}  // namespace ohmfold

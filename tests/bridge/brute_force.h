// Whether a small network holds an embedded bridge, by trying everything.
#pragma once

#include <array>
#include <cstdint>
#include <functional>
#include <vector>

#include "ohmfold/network.h"

namespace ohmfold::test {

/// A network of few points as a table of which points are joined, ideal wires contracted. Joined
/// means: by a part that lies on a path between the terminals that passes no point twice, or by the
/// source itself.
class SmallGraph {
 public:
  /// Requires one source and at most 16 points.
  explicit SmallGraph(const Network& network) : count_(network.point_count()) {
    contract(network);
    const Ends source = ends_of_source(network);
    if (source.from == source.to) return;
    std::vector<bool> passed(count_, false);
    std::vector<std::size_t> path{source.from};
    passed[source.from] = true;
    go(network_joins(network), source.to, passed, path);
    if (joined_any_) join(source.from, source.to);
  }

  /// Are there four points joined with one another by six paths that meet in them only?
  [[nodiscard]] bool holds_bridge() const {
    for (std::size_t a = 0; a < count_; ++a) {
      for (std::size_t b = a + 1; b < count_; ++b) {
        for (std::size_t c = b + 1; c < count_; ++c) {
          for (std::size_t d = c + 1; d < count_; ++d) {
            if (are_corners({a, b, c, d})) return true;
          }
        }
      }
    }
    return false;
  }

 private:
  struct Ends {
    std::size_t from, to;
  };
  using Table = std::array<std::array<bool, 16>, 16>;

  void contract(const Network& network) {
    for (std::size_t i = 0; i < count_; ++i) one_point_[i] = i;
    for (std::uint32_t i = 0; i < network.part_count(); ++i) {
      if (!is_wire(network.kind(PartId{i}))) continue;
      const Ends wire = ends_of(network, PartId{i});
      for (std::size_t p = 0; p < count_; ++p) {
        if (one_point_[p] == wire.to) one_point_[p] = wire.from;
      }
    }
  }

  [[nodiscard]] Ends ends_of(const Network& network, PartId part) const {
    return {one_point_[network.from(part).index], one_point_[network.to(part).index]};
  }

  [[nodiscard]] Ends ends_of_source(const Network& network) const {
    for (std::uint32_t i = 0; i < network.part_count(); ++i) {
      if (is_source(network.kind(PartId{i}))) return ends_of(network, PartId{i});
    }
    return {0, 0};
  }

  [[nodiscard]] Table network_joins(const Network& network) const {
    Table table{};
    for (std::uint32_t i = 0; i < network.part_count(); ++i) {
      if (network.kind(PartId{i}) != ElementKind::resistor) continue;
      const Ends ends = ends_of(network, PartId{i});
      table[ends.from][ends.to] = table[ends.to][ends.from] = ends.from != ends.to;
    }
    return table;
  }

  void join(std::size_t a, std::size_t b) {
    joined_[a][b] = joined_[b][a] = true;
    joined_any_ = true;
  }

  // All paths from the end of `path` to `goal`. The depth is that of the few points.
  void go(const Table& table, std::size_t goal, std::vector<bool>& passed,
          std::vector<std::size_t>& path) {
    const std::size_t at = path.back();
    if (at == goal) {
      for (std::size_t i = 0; i + 1 < path.size(); ++i) join(path[i], path[i + 1]);
      return;
    }
    for (std::size_t next = 0; next < count_; ++next) {
      if (!table[at][next] || passed[next]) continue;
      passed[next] = true;
      path.push_back(next);
      go(table, goal, passed, path);
      path.pop_back();
      passed[next] = false;
    }
  }

  [[nodiscard]] bool are_corners(const std::array<std::size_t, 4>& corners) const {
    std::vector<bool> passed(count_, false);
    for (const std::size_t corner : corners) passed[corner] = true;
    return join_pair(corners, 0, corners[0], passed);
  }

  // Can the pairs from number `pair` on be joined, the first of them being walked and now at `at`?
  [[nodiscard]] bool join_pair(const std::array<std::size_t, 4>& corners, std::size_t pair,
                               std::size_t at, std::vector<bool>& passed) const {
    static constexpr std::array<std::array<std::size_t, 2>, 6> kPairs{
        {{0, 1}, {0, 2}, {0, 3}, {1, 2}, {1, 3}, {2, 3}}};
    if (joined_[at][corners[kPairs[pair][1]]]) {
      if (pair == 5 || join_pair(corners, pair + 1, corners[kPairs[pair + 1][0]], passed)) {
        return true;
      }
    }
    for (std::size_t next = 0; next < count_; ++next) {
      if (!joined_[at][next] || passed[next]) continue;
      passed[next] = true;
      const bool found = join_pair(corners, pair, next, passed);
      passed[next] = false;
      if (found) return true;
    }
    return false;
  }

  std::size_t count_;
  std::array<std::size_t, 16> one_point_{};
  Table joined_{};
  bool joined_any_ = false;
};

}  // namespace ohmfold::test

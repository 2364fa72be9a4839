// Cores for tests: well-known graphs, and random ones that can be drawn without crossings.
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <random>
#include <set>
#include <utility>
#include <vector>

#include "drawing/core.h"
#include "drawing/placement.h"

namespace ohmfold::drawing::test {

inline Core core_of(std::uint32_t corners,
                    const std::vector<std::pair<std::uint32_t, std::uint32_t>>& edges) {
  Core core;
  core.corners = corners;
  for (const auto& [from, to] : edges) core.edges.push_back({from, to, 0, kCell, true});
  return core;
}

inline Core complete(std::uint32_t corners) {
  Core core = core_of(corners, {});
  for (std::uint32_t a = 0; a < corners; ++a) {
    for (std::uint32_t b = a + 1; b < corners; ++b) core.edges.push_back({a, b, 0, kCell, true});
  }
  return core;
}

/// Each of the even corners to each of the odd ones.
inline Core complete_bipartite(std::uint32_t half) {
  Core core = core_of(2 * half, {});
  for (std::uint32_t a = 0; a < half; ++a) {
    for (std::uint32_t b = 0; b < half; ++b) {
      core.edges.push_back({2 * a, 2 * b + 1, 0, kCell, true});
    }
  }
  return core;
}

/// A square mesh; corner 0 is one of its corners, corner 1 the opposite one.
inline Core mesh(std::uint32_t columns, std::uint32_t rows) {
  Core core = core_of(columns * rows, {});
  const auto corner = [&](std::uint32_t x, std::uint32_t y) {
    const std::uint32_t i = y * columns + x;
    const std::uint32_t last = columns * rows - 1;
    return i == 1 ? last : i == last ? 1 : i;
  };
  for (std::uint32_t y = 0; y < rows; ++y) {
    for (std::uint32_t x = 0; x < columns; ++x) {
      if (x + 1 < columns) {
        core.edges.push_back({corner(x, y), corner(x + 1, y), 0, kCell, true});
      }
      if (y + 1 < rows) core.edges.push_back({corner(x, y), corner(x, y + 1), 0, kCell, true});
    }
  }
  return core;
}

/// A hub, corner 0, and a rim.
inline Core wheel(std::uint32_t rim) {
  Core core = core_of(rim + 1, {});
  for (std::uint32_t i = 0; i < rim; ++i) {
    core.edges.push_back({0, i + 1, 0, kCell, true});
    core.edges.push_back({i + 1, (i + 1) % rim + 1, 0, kCell, true});
  }
  return core;
}

inline Core prism(std::uint32_t sides) {
  Core core = core_of(2 * sides, {});
  for (std::uint32_t i = 0; i < sides; ++i) {
    const std::uint32_t next = (i + 1) % sides;
    core.edges.push_back({2 * i, 2 * next, 0, kCell, true});
    core.edges.push_back({2 * i, 2 * i + 1, 0, kCell, true});
    core.edges.push_back({2 * i + 1, 2 * next + 1, 0, kCell, true});
  }
  return core;
}

inline Core petersen() {
  return core_of(10, {{0, 1},
                      {1, 2},
                      {2, 3},
                      {3, 4},
                      {4, 0},
                      {0, 5},
                      {1, 6},
                      {2, 7},
                      {3, 8},
                      {4, 9},
                      {5, 7},
                      {7, 9},
                      {9, 6},
                      {6, 8},
                      {8, 5}});
}

/// A triangulation grown by putting corners into random triangles, less some of its edges, with
/// boxes of random sizes. Some corners may be left with few edges.
inline Core random_planar(std::uint64_t seed, std::uint32_t corners,
                          std::uint64_t percent_left_out) {
  std::mt19937_64 random(seed);
  Core core = core_of(corners, {{0, 1}, {1, 2}, {2, 0}});
  std::vector<std::array<std::uint32_t, 3>> triangles{{0, 1, 2}, {0, 1, 2}};
  for (std::uint32_t corner = 3; corner < corners; ++corner) {
    auto& chosen = triangles[random() % triangles.size()];
    const auto [a, b, c] = chosen;
    chosen = {a, b, corner};
    triangles.push_back({b, c, corner});
    triangles.push_back({a, c, corner});
    for (const std::uint32_t old : {a, b, c}) {
      const bool turned = random() % 2 == 0;
      core.edges.push_back({turned ? old : corner, turned ? corner : old, 0, kCell, true});
    }
  }
  std::vector<CoreEdge> kept;
  for (CoreEdge edge : core.edges) {
    if (random() % 100 < percent_left_out) continue;
    if (random() % 3 == 0) {
      edge.single = false;
      edge.width = static_cast<int>(random() % 4) * kCell;
      edge.height = static_cast<int>(random() % 4 + 1) * kCell;
    }
    kept.push_back(edge);
  }
  core.edges = kept;
  return core;
}

/// Any edges between random corners, no two between the same ones, each corner joined.
inline Core random_any(std::uint64_t seed, std::uint32_t corners, std::size_t edges) {
  std::mt19937_64 random(seed);
  Core core = core_of(corners, {});
  std::set<std::pair<std::uint32_t, std::uint32_t>> pairs;
  for (std::size_t tries = 0; tries < 20 * edges && pairs.size() < edges; ++tries) {
    auto a = static_cast<std::uint32_t>(random() % corners);
    const auto b = static_cast<std::uint32_t>(random() % corners);
    if (tries < corners) a = static_cast<std::uint32_t>(tries);
    if (a == b || !pairs.insert(std::minmax(a, b)).second) continue;
    CoreEdge edge{a, b, 0, kCell, true};
    if (random() % 4 == 0) {
      edge.single = false;
      edge.width = static_cast<int>(random() % 3) * kCell;
      edge.height = static_cast<int>(random() % 3 + 1) * kCell;
    }
    core.edges.push_back(edge);
  }
  return core;
}

}  // namespace ohmfold::drawing::test

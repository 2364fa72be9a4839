// Spanning forests by breadth-first walks, and loops by climbing towards the root.
#include "circuit/spanning.h"

#include <algorithm>
#include <limits>

namespace ohmfold {
namespace {

// The parts at each point, packed one point after the other.
struct Incidence {
  std::vector<std::size_t> begin;  // by point, and one more
  std::vector<PartId> parts;

  Incidence(const Network& network, const std::vector<PartId>& listed)
      : begin(network.point_count() + 2, 0), parts(2 * listed.size()) {
    for (const PartId part : listed) {
      ++begin[network.from(part).index + 2];
      ++begin[network.to(part).index + 2];
    }
    for (std::size_t i = 2; i < begin.size(); ++i) begin[i] += begin[i - 1];
    // begin[i + 1] is where the next part at point i goes; at the end it is where they stop.
    for (const PartId part : listed) {
      parts[begin[network.from(part).index + 1]++] = part;
      parts[begin[network.to(part).index + 1]++] = part;
    }
  }
};

}  // namespace

SpanningForest span_forest(const Network& network, const std::vector<PartId>& parts) {
  constexpr std::uint32_t kUnseen = std::numeric_limits<std::uint32_t>::max();
  const Incidence incidence(network, parts);
  const std::size_t points = network.point_count();
  SpanningForest forest{std::vector<PartId>(points),
                        {},
                        std::vector<std::uint32_t>(points, kUnseen),
                        std::vector<std::uint32_t>(points, 0),
                        {}};
  forest.order.reserve(points);
  std::uint32_t components = 0;
  for (std::uint32_t root = 0; root < points; ++root) {
    if (forest.component[root] != kUnseen) continue;
    forest.component[root] = components;
    forest.order.push_back(PointId{root});
    for (std::size_t next = forest.order.size() - 1; next < forest.order.size(); ++next) {
      const PointId point = forest.order[next];
      for (std::size_t i = incidence.begin[point.index]; i < incidence.begin[point.index + 1];
           ++i) {
        const PartId part = incidence.parts[i];
        const PointId below = network.across(part, point);
        if (forest.component[below.index] != kUnseen) continue;
        forest.component[below.index] = components;
        forest.depth[below.index] = forest.depth[point.index] + 1;
        forest.up[below.index] = part;
        forest.order.push_back(below);
      }
    }
    ++components;
  }
  for (const PartId part : parts) {
    const bool in_forest =
        forest.up[network.from(part).index] == part || forest.up[network.to(part).index] == part;
    if (!in_forest) forest.chords.push_back(part);
  }
  return forest;
}

std::vector<PartId> fundamental_loop(const Network& network, const SpanningForest& forest,
                                     PartId chord) {
  std::vector<PartId> loop{chord};
  std::vector<PartId> back;  // from the first point up to the meeting point
  PointId second = network.to(chord);
  PointId first = network.from(chord);
  while (second != first) {
    if (forest.depth[second.index] >= forest.depth[first.index]) {
      loop.push_back(forest.up[second.index]);
      second = forest.above(network, second);
    } else {
      back.push_back(forest.up[first.index]);
      first = forest.above(network, first);
    }
  }
  loop.insert(loop.end(), back.rbegin(), back.rend());
  return loop;
}

std::vector<bool> on_loops(const Network& network, const SpanningForest& forest) {
  std::vector<bool> result(network.part_count(), false);
  // skip[p]: the nearest point towards the root, p included, whose own up-part is not known to lie
  // on a loop. Found with path halving.
  std::vector<std::uint32_t> skip(network.point_count());
  for (std::uint32_t i = 0; i < skip.size(); ++i) skip[i] = i;
  const auto climb = [&](std::uint32_t point) {
    while (skip[point] != point) point = skip[point] = skip[skip[point]];
    return point;
  };
  for (const PartId chord : forest.chords) {
    result[chord.index] = true;
    std::uint32_t a = climb(network.from(chord).index);
    std::uint32_t b = climb(network.to(chord).index);
    while (a != b) {
      std::uint32_t& deeper = forest.depth[a] >= forest.depth[b] ? a : b;
      result[forest.up[deeper].index] = true;
      skip[deeper] = forest.above(network, PointId{deeper}).index;
      deeper = climb(deeper);
    }
  }
  return result;
}

}  // namespace ohmfold

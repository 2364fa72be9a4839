// Networks without a series or parallel pair, of any size.
#pragma once

#include <algorithm>
#include <cstdint>
#include <numeric>
#include <random>
#include <utility>
#include <vector>

#include "ohmfold/network.h"

namespace ohmfold::test {

/// Resistors of 1 ohm between pairs of points, and a battery from the first pair's first point to
/// the last pair's second one.
class Shape {
 public:
  explicit Shape(std::size_t points) : network_(points) {}

  void join(std::size_t from, std::size_t to) {
    if (from != to) network_.add(ElementKind::resistor, id(from), id(to), Ratio(1, 1));
  }
  Network fed(std::size_t from, std::size_t to) && {
    network_.add_battery(id(from), id(to), {Number(12)}, {Number(0)});
    return std::move(network_);
  }

 private:
  static PointId id(std::size_t number) { return PointId{static_cast<std::uint32_t>(number)}; }
  Network network_;
};

inline Network grid(std::size_t rows, std::size_t columns) {
  Shape shape(rows * columns);
  for (std::size_t r = 0; r < rows; ++r) {
    for (std::size_t c = 0; c < columns; ++c) {
      if (c + 1 < columns) shape.join(r * columns + c, r * columns + c + 1);
      if (r + 1 < rows) shape.join(r * columns + c, (r + 1) * columns + c);
    }
  }
  return std::move(shape).fed(0, rows * columns - 1);
}

inline Network complete(std::size_t points) {
  Shape shape(points);
  for (std::size_t a = 0; a < points; ++a) {
    for (std::size_t b = a + 1; b < points; ++b) shape.join(a, b);
  }
  return std::move(shape).fed(0, points - 1);
}

/// A hub, and a rim of so many points.
inline Network wheel(std::size_t rim) {
  Shape shape(rim + 1);
  for (std::size_t i = 0; i < rim; ++i) {
    shape.join(i, (i + 1) % rim);
    shape.join(i, rim);
  }
  return std::move(shape).fed(0, rim / 2);
}

/// Two rings, one inside the other, joined by spokes.
inline Network prism(std::size_t side) {
  Shape shape(2 * side);
  for (std::size_t i = 0; i < side; ++i) {
    shape.join(i, (i + 1) % side);
    shape.join(side + i, side + (i + 1) % side);
    shape.join(i, side + i);
  }
  return std::move(shape).fed(0, side + side / 2);
}

/// A ring with a resistor from each point to the one opposite.
inline Network moebius(std::size_t half) {
  Shape shape(2 * half);
  for (std::size_t i = 0; i < 2 * half; ++i) shape.join(i, (i + 1) % (2 * half));
  for (std::size_t i = 0; i < half; ++i) shape.join(i, i + half);
  return std::move(shape).fed(0, half / 2);
}

/// Bridges one after the other: at each point between two of them all paths meet.
inline Network chain_of_bridges(std::size_t bridges) {
  Shape shape(3 * bridges + 1);
  for (std::size_t i = 0; i < bridges; ++i) {
    const std::size_t at = 3 * i;
    shape.join(at, at + 1);
    shape.join(at, at + 2);
    shape.join(at + 1, at + 2);
    shape.join(at + 1, at + 3);
    shape.join(at + 2, at + 3);
  }
  return std::move(shape).fed(0, 3 * bridges);
}

/// Bridges within bridges: the middle part of each is the next one.
inline Network nested_bridges(std::size_t bridges) {
  Shape shape(2 * bridges + 2);
  for (std::size_t i = 0; i < bridges; ++i) {
    for (const std::size_t outer : {2 * i, 2 * i + 1}) {
      shape.join(outer, 2 * i + 2);
      shape.join(outer, 2 * i + 3);
    }
  }
  shape.join(2 * bridges, 2 * bridges + 1);
  return std::move(shape).fed(0, 1);
}

/// Three resistors or more at each of `points` points, drawn at random.
inline Network random_bridge(std::size_t points, std::uint64_t seed) {
  std::mt19937_64 random(seed);
  Shape shape(points);
  for (int round = 0; round < 2; ++round) {
    std::vector<std::size_t> ring(points);
    std::iota(ring.begin(), ring.end(), std::size_t{0});
    for (std::size_t i = points; i > 1; --i) std::swap(ring[i - 1], ring[random() % i]);
    for (std::size_t i = 0; i < points; ++i) shape.join(ring[i], ring[(i + 1) % points]);
  }
  return std::move(shape).fed(0, points - 1);
}

}  // namespace ohmfold::test

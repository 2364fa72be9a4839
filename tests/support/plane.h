// Spots, lines and boxes of a finished drawing, to judge it by: measured, so with a tolerance.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <vector>

namespace ohmfold::support {

struct Vec {
  double x = 0, y = 0;

  friend Vec operator+(Vec a, Vec b) { return {a.x + b.x, a.y + b.y}; }
  friend Vec operator-(Vec a, Vec b) { return {a.x - b.x, a.y - b.y}; }
  friend Vec operator*(double k, Vec a) { return {k * a.x, k * a.y}; }
};

/// Closer than this, no eye sees a gap.
inline constexpr double kNear = 0.05;

inline double dot(Vec a, Vec b) {
  return a.x * b.x + a.y * b.y;
}
inline double cross(Vec a, Vec b) {
  return a.x * b.y - a.y * b.x;
}
inline double length(Vec a) {
  return std::hypot(a.x, a.y);
}
inline bool is_near(Vec a, Vec b) {
  return length(a - b) < kNear;
}

/// The nearest spot of the line from a to b.
inline Vec nearest_on(Vec a, Vec b, Vec spot) {
  const double square = dot(b - a, b - a);
  if (square == 0) return a;
  return a + std::clamp(dot(spot - a, b - a) / square, 0.0, 1.0) * (b - a);
}
inline double distance(Vec a, Vec b, Vec spot) {
  return length(nearest_on(a, b, spot) - spot);
}
/// On the line, away from its ends?
inline bool is_inside(Vec a, Vec b, Vec spot) {
  return distance(a, b, spot) < kNear && !is_near(a, spot) && !is_near(b, spot);
}

/// Corners in order, convex; two corners are a line, one is a spot.
using Polygon = std::vector<Vec>;

struct Frame {
  Vec min{std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity()};
  Vec max{-std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};

  [[nodiscard]] bool is_empty() const { return min.x > max.x; }
  void take_in(Vec spot) {
    min = {std::min(min.x, spot.x), std::min(min.y, spot.y)};
    max = {std::max(max.x, spot.x), std::max(max.y, spot.y)};
  }
  [[nodiscard]] Polygon corners() const {
    if (is_empty()) return {};
    return {min, {max.x, min.y}, max, {min.x, max.y}};
  }
};

inline Frame frame_of(const Polygon& polygon) {
  Frame frame;
  for (const Vec corner : polygon) frame.take_in(corner);
  return frame;
}
inline Vec middle_of(const Polygon& polygon) {
  Vec sum;
  for (const Vec corner : polygon) sum = sum + corner;
  return (1.0 / static_cast<double>(polygon.size())) * sum;
}

/// How far the two reach into each other; negative where they are apart. By separating lines along
/// the sides of both.
inline double overlap(const Polygon& a, const Polygon& b) {
  // Most are far apart, which the frames round them say at once.
  const Frame frame_a = frame_of(a);
  const Frame frame_b = frame_of(b);
  double least =
      std::min(std::min(frame_a.max.x, frame_b.max.x) - std::max(frame_a.min.x, frame_b.min.x),
               std::min(frame_a.max.y, frame_b.max.y) - std::max(frame_a.min.y, frame_b.min.y));
  if (least < 0) return least;
  for (const Polygon* sides : {&a, &b}) {
    for (std::size_t i = 0; i < sides->size(); ++i) {
      const Vec side = (*sides)[(i + 1) % sides->size()] - (*sides)[i];
      if (length(side) < 1e-9) continue;
      const Vec across = (1 / length(side)) * Vec{-side.y, side.x};
      const auto shadow = [&across](const Polygon& polygon) {
        const auto [low, high] =
            std::ranges::minmax(polygon, {}, [&across](Vec corner) { return dot(corner, across); });
        return std::pair{dot(low, across), dot(high, across)};
      };
      const auto [low_a, high_a] = shadow(a);
      const auto [low_b, high_b] = shadow(b);
      least = std::min(least, std::min(high_a, high_b) - std::max(low_a, low_b));
    }
  }
  return least;
}

/// Does the line from a to b lead through the polygon, further inside than `margin`? The line is
/// cut off at one side after the other (Cyrus and Beck 1978).
inline bool passes(const Polygon& polygon, Vec a, Vec b, double margin) {
  double begin = 0;
  double end = 1;
  const Vec middle = middle_of(polygon);
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const Vec side = polygon[(i + 1) % polygon.size()] - polygon[i];
    if (length(side) < 1e-9) continue;
    Vec inward = (1 / length(side)) * Vec{-side.y, side.x};
    if (dot(middle - polygon[i], inward) < 0) inward = -1 * inward;
    const double at_a = dot(a - polygon[i], inward) - margin;
    const double at_b = dot(b - polygon[i], inward) - margin;
    if (at_a <= 0 && at_b <= 0) return false;
    if (at_a < 0) begin = std::max(begin, at_a / (at_a - at_b));
    if (at_b < 0) end = std::min(end, at_a / (at_a - at_b));
  }
  return polygon.size() > 2 && begin < end;
}

inline double distance(const Polygon& a, const Polygon& b) {
  if (overlap(a, b) >= 0 && a.size() > 2 && b.size() > 2) return 0;
  double least = std::numeric_limits<double>::infinity();
  const auto from_corners = [&least](const Polygon& corners, const Polygon& sides) {
    for (const Vec corner : corners) {
      for (std::size_t i = 0; i < sides.size(); ++i) {
        least = std::min(least, distance(sides[i], sides[(i + 1) % sides.size()], corner));
      }
    }
  };
  from_corners(a, b);
  from_corners(b, a);
  return least;
}

}  // namespace ohmfold::support

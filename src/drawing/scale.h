// Where the lines of a placement's grid lie in a drawing: each column and each row between two of
// them is as wide as what stands there needs.
#pragma once

#include <cstddef>
#include <vector>

#include "drawing/geometry.h"

namespace ohmfold::drawing {

/// The grid along one direction.
class Axis {
 public:
  /// With so much from each grid line to the next; those from `first` to `last` may be widened.
  /// Requires first <= last, pitch >= 1.
  Axis(int first, int last, int pitch);
  Axis() : Axis(0, 0, 1) {}

  /// Where a grid line lies; cost: constant.
  [[nodiscard]] int operator()(int line) const;
  /// The last grid line that lies there or before. Cost: logarithmic.
  [[nodiscard]] int line_at(int position) const;

  [[nodiscard]] int first() const { return first_; }
  [[nodiscard]] int last() const { return first_ + static_cast<int>(pitches_.size()); }
  /// From this line to the next. Requires first() <= line < last().
  [[nodiscard]] int pitch(int line) const { return pitches_[index(line)]; }
  /// At least so much from this line to the next; nothing happens elsewhere. settle() has to
  /// follow.
  void widen(int line, int pitch);
  void settle();

 private:
  [[nodiscard]] std::size_t index(int line) const {
    return static_cast<std::size_t>(line - first_);
  }

  int first_;
  int pitch_;  ///< outside
  std::vector<int> pitches_;
  std::vector<int> at_;  ///< from the first line on
};

/// Both directions. Where a slanted line goes, all columns and rows are equally wide, so that its
/// angle stays.
class Scale {
 public:
  Scale() = default;
  /// For a grid within the box. `even`: all pitches are even numbers, which have a middle.
  Scale(const Box& grid, int pitch, bool even);

  [[nodiscard]] Spot operator()(Spot spot) const { return origin + Spot{x_(spot.x), y_(spot.y)}; }
  /// The middle of a segment of the grid, which need not be the middle of what is drawn of it.
  [[nodiscard]] Spot middle(const Segment& segment) const;
  /// The last grid lines that lie there or before.
  [[nodiscard]] Spot lines_at(Spot spot) const;

  /// Keeps the columns and rows that a slanted segment crosses equally wide.
  void share(const Segment& slanted);
  /// From one grid line to another at least so much, all pitches between them alike. settle() has
  /// to follow.
  void widen_columns(int from, int to, int width);
  void widen_rows(int from, int to, int height);
  void settle();

  Spot origin;  ///< where (0, 0) lies

 private:
  void widen(Axis& axis, std::vector<bool>& shared, int from, int to, int room);

  Axis x_, y_;
  std::vector<bool> shared_columns_, shared_rows_;
  int shared_ = 0;  ///< the pitch of those
  bool is_even_ = false;
};

}  // namespace ohmfold::drawing

// Columns and rows of different widths.
#include "drawing/scale.h"

#include <algorithm>

namespace ohmfold::drawing {

Axis::Axis(int first, int last, int pitch)
    : first_(first), pitch_(pitch), pitches_(static_cast<std::size_t>(last - first), pitch) {
  settle();
}

void Axis::settle() {
  at_.assign(1, 0);
  for (const int pitch : pitches_) at_.push_back(at_.back() + pitch);
  const int zero = (*this)(0);
  for (int& at : at_) at -= zero;
}

int Axis::operator()(int line) const {
  if (line < first_) return at_.front() - (first_ - line) * pitch_;
  if (line > last()) return at_.back() + (line - last()) * pitch_;
  return at_[index(line)];
}

int Axis::line_at(int position) const {
  const auto after = std::upper_bound(at_.begin(), at_.end(), position);
  return after == at_.begin() ? first_ : first_ + static_cast<int>(after - at_.begin()) - 1;
}

void Axis::widen(int line, int pitch) {
  if (line < first_ || line >= last()) return;
  pitches_[index(line)] = std::max(pitches_[index(line)], pitch);
}

Scale::Scale(const Box& grid, int pitch, bool even)
    : x_(grid.min.x, grid.max.x, pitch),
      y_(grid.min.y, grid.max.y, pitch),
      shared_columns_(static_cast<std::size_t>(grid.max.x - grid.min.x), false),
      shared_rows_(static_cast<std::size_t>(grid.max.y - grid.min.y), false),
      shared_(pitch),
      is_even_(even) {}

Spot Scale::middle(const Segment& segment) const {
  const auto half = [](const Axis& axis, int sum) {
    const int before = sum >= 0 ? sum / 2 : -((1 - sum) / 2);
    return (axis(before) + axis(sum - before)) / 2;
  };
  return origin +
         Spot{half(x_, segment.from.x + segment.to.x), half(y_, segment.from.y + segment.to.y)};
}

Spot Scale::lines_at(Spot spot) const {
  return {x_.line_at(spot.x - origin.x), y_.line_at(spot.y - origin.y)};
}

void Scale::share(const Segment& slanted) {
  const auto [left, right] = std::minmax(slanted.from.x, slanted.to.x);
  const auto [top, bottom] = std::minmax(slanted.from.y, slanted.to.y);
  for (int i = left; i < right; ++i)
    shared_columns_[static_cast<std::size_t>(i - x_.first())] = true;
  for (int i = top; i < bottom; ++i) shared_rows_[static_cast<std::size_t>(i - y_.first())] = true;
}

void Scale::widen(Axis& axis, std::vector<bool>& shared, int from, int to, int room) {
  const int count = to - from;
  int pitch = (room + count - 1) / count;
  pitch += is_even_ ? pitch % 2 : 0;
  for (int line = std::max(from, axis.first()); line < std::min(to, axis.last()); ++line) {
    axis.widen(line, pitch);
    if (shared[static_cast<std::size_t>(line - axis.first())]) shared_ = std::max(shared_, pitch);
  }
}

void Scale::widen_columns(int from, int to, int width) {
  widen(x_, shared_columns_, from, to, width);
}

void Scale::widen_rows(int from, int to, int height) {
  widen(y_, shared_rows_, from, to, height);
}

void Scale::settle() {
  for (std::size_t i = 0; i < shared_columns_.size(); ++i) {
    if (shared_columns_[i]) x_.widen(x_.first() + static_cast<int>(i), shared_);
  }
  for (std::size_t i = 0; i < shared_rows_.size(); ++i) {
    if (shared_rows_[i]) y_.widen(y_.first() + static_cast<int>(i), shared_);
  }
  x_.settle();
  y_.settle();
}

}  // namespace ohmfold::drawing

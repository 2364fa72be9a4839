// How much room symbols, frames, arrows and labels take.
#pragma once

#include <algorithm>
#include <vector>

#include "drawing/schematic.h"

namespace ohmfold::drawing {

[[nodiscard]] Box around(Spot middle, int x, int y);
/// The least box round all of them. Requires one spot at least.
[[nodiscard]] Box box_of(const std::vector<Spot>& spots);

/// Measures that labels, frames and arrows share.
class Measures {
 public:
  explicit Measures(const Sizes& sizes) : sizes_(sizes) {}

  /// From the middle of a resistor to its end.
  [[nodiscard]] int half_length(Spot direction) const {
    return (direction.x == 0 ? sizes_.upright_length : sizes_.symbol_length) / 2;
  }
  /// From the middle of a symbol to the frame of Mark::next, along its path and across.
  [[nodiscard]] int frame_along(Spot direction) const {
    return half_length(direction) + sizes_.gap;
  }
  [[nodiscard]] int frame_across() const { return sizes_.symbol_breadth / 2 + sizes_.gap; }
  /// From the middle to the tip of an arrow.
  [[nodiscard]] int arrow_tip(Spot direction) const { return half_length(direction) + sizes_.lead; }
  /// Between what has nothing to do with one another, at least.
  [[nodiscard]] int clearance() const { return std::max(1, sizes_.gap / 3); }
  /// From a spot to the name of its point, along both directions.
  [[nodiscard]] int name_offset() const { return sizes_.gap; }
  /// From the middle of a symbol to its label, across its path.
  [[nodiscard]] int label_offset() const { return frame_across() + clearance(); }

  [[nodiscard]] int width(const std::vector<LabelLine>& lines) const;
  [[nodiscard]] int height(const std::vector<LabelLine>& lines) const;
  /// The label that fills a box of its width and height.
  [[nodiscard]] Label label(const std::vector<LabelLine>& lines, Spot top_left,
                            Anchor anchor) const;
  /// The letters of each of its lines.
  [[nodiscard]] std::vector<Box> letters(const Label& label) const;

  /// The half of a symbol, along its path (x) and across.
  [[nodiscard]] Spot body(SymbolKind kind) const;
  /// The corners of a part's body and of the room for its frame, in order.
  [[nodiscard]] std::vector<Spot> body_of(const DrawnPart& part) const;
  [[nodiscard]] std::vector<Spot> frame_of(const DrawnPart& part) const;
  /// The room for the number of its step at a corner of the frame.
  [[nodiscard]] Box tag_of(const DrawnPart& part, Spot corner) const;
  [[nodiscard]] Box arrow_box(const Arrow& arrow) const;

 private:
  [[nodiscard]] int ascent() const { return 3 * sizes_.line_height / 4; }

  const Sizes& sizes_;
};

/// All that is drawn, frames and numbers of steps included.
[[nodiscard]] Box extent_of(const Schematic& schematic, const Sizes& sizes, bool framed);

}  // namespace ohmfold::drawing

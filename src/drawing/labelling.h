// Labels beside the parts and points of a schematic, where nothing else is drawn.
#pragma once

#include <algorithm>
#include <optional>
#include <vector>

#include "drawing/schematic.h"

namespace ohmfold::drawing {

/// Measures that labels, frames and arrows share.
class Measures {
 public:
  explicit Measures(const Sizes& sizes) : sizes_(sizes) {}

  /// From the middle of a symbol to the frame of Mark::next, along its path and across.
  [[nodiscard]] int frame_along() const { return sizes_.symbol_length / 2 + sizes_.gap; }
  [[nodiscard]] int frame_across() const { return sizes_.symbol_breadth / 2 + sizes_.gap; }
  /// From the middle to the tip of an arrow.
  [[nodiscard]] int arrow_tip() const { return sizes_.symbol_length / 2 + sizes_.lead; }
  /// Between what has nothing to do with one another, at least.
  [[nodiscard]] int clearance() const { return std::max(1, sizes_.gap / 3); }
  /// From a spot to the name of its point, along both directions.
  [[nodiscard]] int name_offset() const { return sizes_.gap; }

  /// Half of the room for the number of a step.
  [[nodiscard]] int tag_width() const { return 3 * sizes_.line_height / 4; }
  [[nodiscard]] int tag_height() const { return sizes_.line_height / 2; }

  [[nodiscard]] int width(const std::vector<LabelLine>& lines) const;
  [[nodiscard]] int height(const std::vector<LabelLine>& lines) const;
  /// The label that fills a box of its width and height.
  [[nodiscard]] Label label(const std::vector<LabelLine>& lines, Spot top_left,
                            Anchor anchor) const;

 private:
  [[nodiscard]] int ascent() const { return 3 * sizes_.line_height / 4; }

  const Sizes& sizes_;
};

/// What stands beside a part or point of the schematic, in its order; may be empty.
struct LabelTexts {
  std::vector<std::vector<LabelLine>> parts, points;
  std::vector<Spot> names;  ///< by point: where its name belongs
};

/// Puts the labels in: beside an upright symbol at its right, above a lying one, at the outer side
/// of a slanted one, near a point; elsewhere where that is taken. `framed`: keeps frames and
/// numbers of steps free. `least`: nothing lies further left or up. Gives how many labels found no
/// free place and stand at their first one. Requires all lines, symbols and arrows. Cost:
/// near-linear.
std::size_t put_labels(Schematic& schematic, const LabelTexts& texts, const Sizes& sizes,
                       bool framed, const std::optional<Spot>& least);

/// All that is drawn, frames and numbers of steps included.
[[nodiscard]] Box extent_of(const Schematic& schematic, const Sizes& sizes, bool framed);

}  // namespace ohmfold::drawing

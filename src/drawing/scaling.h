// From the grid of a placement to the units of a drawing, and what stands there: lines, symbols,
// dots, arrows.
#pragma once

#include "drawing/figures.h"
#include "drawing/labelling.h"
#include "drawing/redraw.h"

namespace ohmfold::drawing {

/// Where a unit of the grid lies.
struct Scale {
  int x = 0, y = 0;  ///< units of the drawing to a unit of the grid
  Spot origin;       ///< where (0, 0) lies

  [[nodiscard]] Spot operator()(Spot spot) const {
    return {origin.x + spot.x * x, origin.y + spot.y * y};
  }
};

/// What all figures of a reduction share. Refers to what it is made from.
struct Look {
  const Problem& problem;
  const Reduction& reduction;
  const Captions& captions;
  const Sizes& sizes;
  bool framed;  ///< with room for marks

  [[nodiscard]] const std::vector<LabelLine>& caption(PartId part) const;
  [[nodiscard]] const std::vector<LabelLine>& caption(PointId point) const;
  /// Its kind, as the case sets it or a step makes it.
  [[nodiscard]] ElementKind kind(PartId part) const;
};

/// The widest and highest of the labels of some parts.
struct LabelRoom {
  int width = 0, height = 0, name_width = 0;
  bool slanted = false;
};

/// A scale at which neighbours a cell apart have room for symbol and label.
[[nodiscard]] Scale close_scale(const LabelRoom& room, const Sizes& sizes);
/// A scale at which every label has the room that the placement keeps free round its symbol.
[[nodiscard]] Scale wide_scale(const LabelRoom& room, const Sizes& sizes);

/// Everything but the labels, marks and the size of the whole. Requires a tidy redrawing.
[[nodiscard]] Schematic drawn(const Look& look, const Redrawing& redrawing, const Scale& scale,
                              LabelTexts& texts);

}  // namespace ohmfold::drawing

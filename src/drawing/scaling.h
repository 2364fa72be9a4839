// A placement drawn at a scale: lines, symbols, dots, arrows.
#pragma once

#include "drawing/figures.h"
#include "drawing/labelling.h"
#include "drawing/redraw.h"
#include "drawing/scale.h"

namespace ohmfold::drawing {

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

/// Everything but the labels, marks and the size of the whole. Requires a tidy redrawing.
[[nodiscard]] Schematic drawn(const Look& look, const Redrawing& redrawing, const Scale& scale,
                              LabelTexts& texts);

}  // namespace ohmfold::drawing

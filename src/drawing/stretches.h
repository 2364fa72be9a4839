// The redraws of a reduction that share one placement: where each such stretch begins, how far it
// goes, and its scale.
#pragma once

#include <cstddef>
#include <vector>

#include "drawing/scaling.h"

namespace ohmfold::drawing {

/// From the drawing after `begin` steps to the one before `end` steps.
struct StretchOfRedraws {
  std::size_t begin = 0, end = 0;
  Redrawing start;  ///< after `begin` steps
  Scale scale;
};

/// The stretch that begins after so many steps. Cost: that of a layout, of all steps in it, and of
/// trying the labels of its figures, for small networks of all of them.
[[nodiscard]] StretchOfRedraws stretch_from(const Look& look, const std::vector<int>& heights,
                                            std::size_t begin);

/// A drawing at this scale, with labels. Gives those that found no free place.
std::vector<Crowded> labelled(const Look& look, const Redrawing& redrawing, const Scale& scale,
                              bool bounded, Schematic& schematic);

}  // namespace ohmfold::drawing

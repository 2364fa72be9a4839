// Labels beside the parts and points of a schematic, where nothing else is drawn.
#pragma once

#include <optional>
#include <vector>

#include "drawing/schematic.h"
#include "drawing/surroundings.h"

namespace ohmfold::drawing {

/// What stands beside a part or point of the schematic, in its order; may be empty.
struct LabelTexts {
  std::vector<std::vector<LabelLine>> parts, points;
  std::vector<PartEnds> ends;  ///< by part
  std::vector<Spot> names;     ///< by point: where its name belongs
};

/// A label or number that found no free place.
struct Crowded {
  Spot at;    ///< its part or point lies here
  Spot side;  ///< where room would help: x is 1 to the right, -1 to the left, y 1 below, -1 above
  Spot room;  ///< from `at` on; with so much of nothing else it fits
};

/// Puts the labels in: beside an upright symbol at its right, above a lying one, at the outer side
/// of a slanted one, near a point; elsewhere where that is taken, or where a reader would take it
/// for the label of a neighbour. `framed`: keeps frames and numbers of steps free, and chooses the
/// corners of the numbers. `least`: nothing lies further left or up. Gives the labels that found no
/// free place and stand at their first one. Requires all lines, symbols and arrows. Cost:
/// near-linear.
std::vector<Crowded> put_labels(Schematic& schematic, const LabelTexts& texts, const Sizes& sizes,
                                bool framed, const std::optional<Spot>& least);

}  // namespace ohmfold::drawing

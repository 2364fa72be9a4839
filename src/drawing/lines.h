// The lines of a schematic as they are stroked: leads cut off at symbols, arcs where lines cross.
#pragma once

#include <vector>

#include "drawing/schematic.h"
#include "drawing/turned.h"

namespace ohmfold::drawing {

/// The radius of the arc with which a line passes another.
inline constexpr int kArc = 6;

/// One more piece of a line.
struct LinePiece {
  FineSpot to;
  bool arc = false;        ///< half a circle of kArc, otherwise straight
  bool clockwise = false;  ///< of an arc, as seen with y downwards
};

/// From a spot on, piece after piece.
struct Line {
  FineSpot from;
  std::vector<LinePiece> pieces;
};

/// The two leads of a part whose symbol takes `half` to each side of its middle; one line where
/// half is 0.
[[nodiscard]] std::vector<std::vector<FineSpot>> leads(const DrawnPart& part, int half);

/// Knows the crossings of a schematic, which must outlive it.
class Arcs {
 public:
  explicit Arcs(const std::vector<Crossing>& crossings);

  /// The line through these spots, with an arc at each crossing where it is the one that is over.
  [[nodiscard]] Line through(const std::vector<FineSpot>& spots) const;

 private:
  [[nodiscard]] std::vector<Spot> crossings_on(FineSpot from, FineSpot to) const;

  std::vector<Crossing> by_row_;     ///< over is horizontal; in the order of y, x
  std::vector<Crossing> by_column_;  ///< upright; x, y
  std::vector<Crossing> slanted_;    ///< few
};

}  // namespace ohmfold::drawing

// Where the parts and points of a network lie on a grid of cells, before anything has a size.
//
// A cell has room for one part that lies along either direction, with its label. What holds of
// every placement (tests/drawing/sound.h checks it):
//   - each living part of the network but the port and the parts that are left out is there once,
//     and its path leads from the wires of its first point to those of its second;
//   - the wires of a point hang together; each part's end lies on them;
//   - lines that belong to different points or parts share no stretch, and no end or corner of one
//     lies on the other; they may cross, at right angles, in the middle of both;
//   - round the seat of a symbol (the middle of its segment) half a cell along the path is free of
//     crossings and corners, and no other line comes closer than half a cell, nor another seat
//     closer than a cell; two seats at right angles may be half a cell apart in both directions.
#pragma once

#include <cstddef>
#include <vector>

#include "drawing/geometry.h"
#include "ohmfold/ids.h"

namespace ohmfold::drawing {

/// The width and height of a cell in units of the grid.
inline constexpr int kCell = 4;

struct PlacedPart {
  PartId part;
  Path path;             ///< from its first point to its second
  std::size_t seat = 0;  ///< the symbol stands in the middle of path[seat] and path[seat + 1]
};

struct PlacedPoint {
  PointId point;
  std::vector<Segment> wires;  ///< none where all of its parts end at one spot
  Spot at;                     ///< on its wires, or the one spot: where its name belongs
};

/// Where something outside is joined: an end of the wires of a point without a part.
struct Terminal {
  PointId point;
  Spot at;
};

struct Placement {
  std::vector<PlacedPart> parts;    ///< in the order of their ids
  std::vector<PlacedPoint> points;  ///< in the order of their ids; only those with something joined
  std::vector<Terminal> terminals;  ///< of the port, where the network is seen from one
};

}  // namespace ohmfold::drawing

// From one redraw to the next: the lines of a placement rewritten as a step says, so that no point
// moves.
#pragma once

#include <cstdint>
#include <utility>
#include <vector>

#include "drawing/placement.h"
#include "ohmfold/trace.h"

namespace ohmfold::drawing {

class Redrawing {
 public:
  /// Begins with a placement of the network.
  void lay(const Network& network, Placement placement);

  /// Rewrites the lines. False where this step wants a new placement, as it makes points or several
  /// parts, or merges points for another reason than a wire; then lay() has to follow. Requires the
  /// step after the network at hand. Cost: that of the lines of its parts and of the points between
  /// them.
  [[nodiscard]] bool apply(const Step& step);

  /// Takes away the wires that the steps so far have left without an end. Cost: near-linear in the
  /// wires and parts of the points that they touched.
  void tidy();

  /// Lines of parts and points as they are now. Requires tidy() after the last step.
  [[nodiscard]] Placement placement() const;

  /// The line of a part; none where it is not drawn.
  [[nodiscard]] const PlacedPart* line(PartId part) const;
  /// Its first and its second point, as merged so far. Requires a part that is or was there.
  [[nodiscard]] std::pair<PointId, PointId> points_of(PartId part) const;
  [[nodiscard]] PointId representative(PointId point) const;

 private:
  struct DrawnLine {
    PlacedPart placed;  ///< without corners where it is not drawn
    PointId from, to;
  };

  [[nodiscard]] bool is_drawn(PartId part) const { return line(part) != nullptr; }
  PlacedPoint& point(PointId id);
  void put(PartId part, PointId from, PointId to, Path path, std::size_t seat);
  void take(PartId part);
  void touch(PointId point);
  void merge(PointId one, PointId two);
  void becomes_wire(PartId part);
  [[nodiscard]] bool join_chain(const Step& step);
  void keep_one(const Step& step);
  void tidy(PointId point);
  [[nodiscard]] std::vector<Spot> ends_at(PointId point);
  [[nodiscard]] std::size_t seat_of(Path& path, const std::vector<Segment>& seats) const;
  [[nodiscard]] bool is_clear(const Segment& seat) const;

  std::vector<DrawnLine> lines_;      ///< by PartId
  std::vector<PlacedPoint> points_;   ///< by PointId; those that are not drawn have no id
  std::vector<PointId> merged_into_;  ///< by PointId; itself, or one with a smaller id
  std::vector<std::vector<std::uint32_t>>
      halves_;  ///< by PointId: 2 * part + end; may be out of date
  std::vector<PointId> touched_;
  std::vector<Terminal> terminals_;
  std::size_t drawn_ = 0;  ///< parts
};

/// The middle of the segment that the symbol stands on, in half units of the grid.
[[nodiscard]] Spot doubled_seat(const PlacedPart& part);

}  // namespace ohmfold::drawing

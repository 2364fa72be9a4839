// What is drawn round the labels of a schematic: where there is room for one more, and whether a
// reader takes it for what it belongs to.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "drawing/measures.h"
#include "drawing/occupied.h"

namespace ohmfold::drawing {

/// What the lines of a part belong to: as indices into the points of a schematic; SIZE_MAX: none.
struct PartEnds {
  std::size_t from = SIZE_MAX, to = SIZE_MAX;
  std::size_t seat = 0;  ///< as in PlacedPart
};

class Surroundings {
 public:
  /// Takes room for all lines, symbols, frames and arrows. `ends`: by part. Refers to the schematic
  /// and the sizes. `least`: nothing lies further left or up.
  Surroundings(const Schematic& schematic, const std::vector<PartEnds>& ends, const Sizes& sizes,
               const std::optional<Spot>& least);

  /// Is there room for it, but for the frame of one part?
  [[nodiscard]] bool is_free(const Box& box, std::uint32_t part = kNobody) const;
  /// Are the letters nowhere nearer to the body of another part?
  [[nodiscard]] bool belongs_to_part(const std::vector<Box>& letters, std::size_t part) const;
  /// Are the letters nowhere nearer to a line of another point than to this spot of theirs?
  [[nodiscard]] bool belongs_to_point(const std::vector<Box>& letters, Spot spot,
                                      std::size_t point) const;
  /// From now on it is taken.
  void take(const Box& box) { occupied_.add(box); }

 private:
  void take_part(std::size_t index, const PartEnds& ends);
  void take_point(std::size_t index);
  void take_lead(const Path& lead, std::size_t point);
  [[nodiscard]] int distance_to_body(const Box& box, std::size_t part) const;

  const Schematic& schematic_;
  Measures measures_;
  int slack_;  ///< letters are not as large as reckoned
  std::optional<Spot> least_;
  Occupied occupied_;
  Occupied bodies_;  ///< by index of their part
  Occupied lines_;   ///< by index of their point
};

}  // namespace ohmfold::drawing

// Room for labels, and nearness.
#include "drawing/surroundings.h"

#include <limits>

#include "drawing/slant.h"

namespace ohmfold::drawing {

namespace {

void add_outline(Occupied& occupied, const std::vector<Spot>& corners, bool slanted,
                 std::uint32_t owner) {
  if (!slanted) return occupied.add(box_of(corners), owner);
  for (std::size_t i = 0; i < corners.size(); ++i) {
    occupied.add(Segment{corners[i], corners[(i + 1) % corners.size()]}, owner);
  }
}

/// Rounded up.
int length_of(std::int64_t square) {
  const std::int64_t root = square_root(square);
  return static_cast<int>(root * root < square ? root + 1 : root);
}

}  // namespace

Surroundings::Surroundings(const Schematic& schematic, const std::vector<PartEnds>& ends,
                           const Sizes& sizes, const std::optional<Spot>& least)
    : schematic_(schematic),
      measures_(sizes),
      slack_(sizes.gap / 3),
      least_(least),
      occupied_(2 * (sizes.symbol_length + sizes.lead)),
      bodies_(2 * (sizes.symbol_length + sizes.lead)),
      lines_(2 * (sizes.symbol_length + sizes.lead)) {
  for (std::size_t i = 0; i < schematic.parts.size(); ++i) take_part(i, ends[i]);
  for (std::size_t i = 0; i < schematic.points.size(); ++i) take_point(i);
}

void Surroundings::take_part(std::size_t index, const PartEnds& ends) {
  const DrawnPart& part = schematic_.parts[index];
  const auto owner = static_cast<std::uint32_t>(index);
  const bool slanted = is_slanted(part.direction);
  add_outline(occupied_, measures_.frame_of(part), slanted, owner);
  add_outline(bodies_, measures_.body_of(part), slanted, owner);
  for (const Arrow& arrow : part.arrows) occupied_.add(measures_.arrow_box(arrow));
  const auto seat = part.path.begin() + static_cast<std::ptrdiff_t>(ends.seat) + 1;
  Path before(part.path.begin(), seat);
  before.push_back(part.middle);
  Path after{part.middle};
  after.insert(after.end(), seat, part.path.end());
  take_lead(before, ends.from);
  take_lead(after, ends.to);
}

void Surroundings::take_lead(const Path& lead, std::size_t point) {
  for (std::size_t i = 0; i + 1 < lead.size(); ++i) {
    occupied_.add(Segment{lead[i], lead[i + 1]});
    lines_.add(Segment{lead[i], lead[i + 1]}, static_cast<std::uint32_t>(point));
  }
}

void Surroundings::take_point(std::size_t index) {
  const DrawnPoint& point = schematic_.points[index];
  for (const Segment& wire : point.wires) {
    occupied_.add(wire);
    lines_.add(wire, static_cast<std::uint32_t>(index));
  }
  const int dot = measures_.name_offset() / 2;
  for (const Spot spot : point.dots) occupied_.add(around(spot, dot, dot));
  for (const Spot spot : point.rings) occupied_.add(around(spot, dot, dot));
}

bool Surroundings::is_free(const Box& box, std::uint32_t part) const {
  const bool inside = !least_ || (box.min.x >= least_->x && box.min.y >= least_->y);
  return inside && occupied_.is_free(grown(box, measures_.clearance() - 1), part);
}

int Surroundings::distance_to_body(const Box& box, std::size_t part) const {
  const DrawnPart& drawn = schematic_.parts[part];
  const std::vector<Spot> corners = measures_.body_of(drawn);
  if (!is_slanted(drawn.direction)) return length_of(square_of_distance(box, box_of(corners)));
  // The corners and the middles of the sides stand for the whole outline.
  std::int64_t least = std::numeric_limits<std::int64_t>::max();
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Spot corner = corners[i];
    const Spot next = corners[(i + 1) % corners.size()];
    const Spot middle{(corner.x + next.x) / 2, (corner.y + next.y) / 2};
    least = std::min({least, square_of_distance(box, {corner, corner}),
                      square_of_distance(box, {middle, middle})});
  }
  return length_of(least);
}

bool Surroundings::belongs_to_part(const std::vector<Box>& letters, std::size_t part) const {
  return std::all_of(letters.begin(), letters.end(), [&](const Box& box) {
    return bodies_.is_clear(box, distance_to_body(box, part) + slack_,
                            static_cast<std::uint32_t>(part));
  });
}

bool Surroundings::belongs_to_point(const std::vector<Box>& letters, Spot spot,
                                    std::size_t point) const {
  return std::all_of(letters.begin(), letters.end(), [&](const Box& box) {
    const int own = length_of(square_of_distance(box, {spot, spot}));
    return lines_.is_clear(box, own + slack_, static_cast<std::uint32_t>(point));
  });
}

}  // namespace ohmfold::drawing

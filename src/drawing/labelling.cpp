// Finding a free place for each label.
#include "drawing/labelling.h"

#include <algorithm>
#include <cstdlib>
#include <limits>
#include <utility>

#include "drawing/slant.h"

namespace ohmfold::drawing {

namespace {

/// A place to try: the corner of the label at the upper left.
struct Candidate {
  Spot top_left;
  Anchor anchor = Anchor::start;
};

/// Where a line ends, and which way it goes from there; a slanted one counts as both.
struct LineEnd {
  Spot at;
  bool lies = false, stands = false;
};

LineEnd end_of(const Segment& line) {
  const Spot along = line.to - line.from;
  return {line.from, !is_upright(along), !is_lying(along)};
}

class Labelling {
 public:
  Labelling(Schematic& schematic, const LabelTexts& texts, const Sizes& sizes, bool framed,
            const std::optional<Spot>& least)
      : schematic_(schematic),
        texts_(texts),
        sizes_(sizes),
        measures_(sizes),
        framed_(framed),
        surroundings_(schematic, texts.ends, sizes, least) {}

  std::vector<Crowded> run() {
    find_middle();
    find_leads();
    for (std::size_t i = 0; i < schematic_.parts.size(); ++i) label_part(i);
    for (std::size_t i = 0; i < schematic_.points.size(); ++i) label_point(i);
    return std::move(crowded_);
  }

 private:
  void find_middle() {
    for (const DrawnPart& part : schematic_.parts) {
      for (const Spot corner : part.path) {
        highest_ = std::min(highest_, corner.y);
        lowest_ = std::max(lowest_, corner.y);
      }
      if (!is_slanted(part.direction)) continue;
      middle_ = middle_ + part.middle;
      ++slanted_;
    }
    if (slanted_ > 0) middle_ = {middle_.x / slanted_, middle_.y / slanted_};
  }

  void find_leads() {
    leads_.resize(schematic_.points.size());
    for (std::size_t i = 0; i < schematic_.parts.size(); ++i) {
      const Path& path = schematic_.parts[i].path;
      const PartEnds& ends = texts_.ends[i];
      if (ends.from < leads_.size()) leads_[ends.from].push_back({path[0], path[1]});
      if (ends.to >= leads_.size()) continue;
      leads_[ends.to].push_back({path.back(), path[path.size() - 2]});
    }
  }

  void label_part(std::size_t index) {
    DrawnPart& part = schematic_.parts[index];
    bool at_left = false;
    if (const std::vector<LabelLine>& lines = texts_.parts[index]; !lines.empty()) {
      Label label = beside(index, lines);
      surroundings_.take(label.box);
      const Spot centre{(label.box.min.x + label.box.max.x) / 2,
                        (label.box.min.y + label.box.max.y) / 2};
      const Spot right = right_of(part.direction);
      const Spot towards = centre - part.middle;
      at_left = dot(towards, right) < 0;
      part.labels.push_back(std::move(label));
    }
    if (framed_) put_tag(index, at_left ? 1 : -1);
  }

  Label beside(std::size_t index, const std::vector<LabelLine>& lines) {
    const DrawnPart& part = schematic_.parts[index];
    const std::vector<Candidate> places = places_beside(part, lines);
    for (const Candidate& one : places) {
      Label label = measures_.label(lines, one.top_left, one.anchor);
      if (!surroundings_.is_free(label.box)) continue;
      if (surroundings_.belongs_to_part(measures_.letters(label), index)) return label;
    }
    const int away = measures_.label_offset() + 2 * measures_.clearance();
    crowded_.push_back({part.middle,
                        side_of(part, places.front()),
                        {away + measures_.width(lines), away + measures_.height(lines)}});
    return measures_.label(lines, places.front().top_left, places.front().anchor);
  }

  /// Where a label at this place is, seen from its part.
  static Spot side_of(const DrawnPart& part, const Candidate& place) {
    const Spot side{place.top_left.x < part.middle.x ? -1 : 1,
                    place.top_left.y < part.middle.y ? -1 : 1};
    if (is_upright(part.direction)) return {side.x, 0};
    return is_lying(part.direction) ? Spot{0, side.y} : side;
  }

  /// At a corner of the frame, at this side of the direction if that can be.
  void put_tag(std::size_t index, int side) {
    DrawnPart& part = schematic_.parts[index];
    const auto own = static_cast<std::uint32_t>(index);
    for (const Spot corner : {Spot{-1, side}, Spot{1, side}, Spot{-1, -side}, Spot{1, -side}}) {
      const Box box = measures_.tag_of(part, corner);
      const Spot middle{(box.min.x + box.max.x) / 2, (box.min.y + box.max.y) / 2};
      const Box number = around(middle, sizes_.line_height / 4, sizes_.line_height / 3);
      if (!surroundings_.is_free(box, own) || !surroundings_.belongs_to_part({number}, index)) {
        continue;
      }
      part.tag_corner = corner;
      return surroundings_.take(box);
    }
    part.tag_corner = {-1, side};
    const int room = measures_.arrow_tip(part.direction) + sizes_.line_height;
    crowded_.push_back({part.middle, {-1, -1}, {room, room}});
    surroundings_.take(measures_.tag_of(part, part.tag_corner));
  }

  [[nodiscard]] std::vector<Candidate> places_beside(const DrawnPart& part,
                                                     const std::vector<LabelLine>& lines) const {
    const int width = measures_.width(lines);
    const int height = measures_.height(lines);
    const Spot m = part.middle;
    const int away = measures_.label_offset();
    const int quarter = measures_.frame_along(part.direction) / 2;
    std::vector<Candidate> places;
    const std::vector<int> shifts{0, -quarter, quarter, -2 * quarter, 2 * quarter};
    if (is_upright(part.direction)) {
      for (const int shift : shifts) {
        places.push_back({{m.x + away, m.y - height / 2 + shift}, Anchor::start});
      }
      for (const int shift : shifts) {
        places.push_back({{m.x - away - width, m.y - height / 2 + shift}, Anchor::end});
      }
    } else if (is_lying(part.direction)) {
      // Outside, where it is the lowest line of all.
      const bool below = m.y == lowest_ && lowest_ > highest_;
      for (const bool under : {below, !below}) {
        const int top = under ? m.y + away : m.y - away - height;
        for (const int shift : shifts) {
          places.push_back({{m.x - width / 2 + shift, top}, Anchor::middle});
        }
      }
    } else {
      add_slanted(part, width, height, places);
    }
    return places;
  }

  /// Away from the symbol step by step, first on the side away from the middle of all slanted ones.
  void add_slanted(const DrawnPart& part, int width, int height,
                   std::vector<Candidate>& places) const {
    const Spot right = right_of(part.direction);
    const Spot out = part.middle - middle_;
    const bool outer = dot(out, right) >= 0;
    for (const bool at_right : {outer, !outer}) {
      const Spot away = at_right ? right : Spot{-right.x, -right.y};
      for (int far = measures_.clearance(); far < 4 * sizes_.symbol_length; far += 2) {
        const Spot corner = part.middle + stride(away, far);
        places.push_back(
            {{away.x > 0 ? corner.x : corner.x - width, away.y > 0 ? corner.y : corner.y - height},
             away.x > 0 ? Anchor::start : Anchor::end});
      }
    }
  }

  void label_point(std::size_t index) {
    const std::vector<LabelLine>& lines = texts_.points[index];
    if (lines.empty()) return;
    DrawnPoint& point = schematic_.points[index];
    std::vector<Spot> spots = spots_to_name(index);
    for (const Segment& wire : point.wires) {
      for (int quarter = 1; quarter < 4; ++quarter) {
        spots.push_back({wire.from.x + (wire.to.x - wire.from.x) * quarter / 4,
                         wire.from.y + (wire.to.y - wire.from.y) * quarter / 4});
      }
    }
    Label label = near(index, spots, lines);
    surroundings_.take(label.box);
    point.labels.push_back(std::move(label));
  }

  /// The ends of its lines: from the left, where one begins to read; dots and corners, which one
  /// sees, before those in the midst of a straight line.
  [[nodiscard]] std::vector<Spot> spots_to_name(std::size_t index) const {
    const DrawnPoint& point = schematic_.points[index];
    std::vector<LineEnd> ends{{texts_.names[index], false, false}};
    for (const Segment& wire : point.wires) {
      ends.push_back(end_of(wire));
      ends.push_back(end_of({wire.to, wire.from}));
    }
    for (const Segment& lead : leads_[index]) ends.push_back(end_of(lead));
    for (const Spot dot : point.dots) ends.push_back({dot, true, true});
    std::sort(ends.begin(), ends.end(),
              [](const LineEnd& a, const LineEnd& b) { return a.at < b.at; });
    std::vector<LineEnd> merged;
    for (const LineEnd& end : ends) {
      if (merged.empty() || merged.back().at != end.at) merged.push_back({end.at, false, false});
      merged.back().lies = merged.back().lies || end.lies;
      merged.back().stands = merged.back().stands || end.stands;
    }
    std::stable_partition(merged.begin(), merged.end(),
                          [](const LineEnd& end) { return end.lies && end.stands; });
    std::vector<Spot> spots;
    spots.reserve(merged.size());
    for (const LineEnd& end : merged) spots.push_back(end.at);
    return spots;
  }

  Label near(std::size_t index, const std::vector<Spot>& spots,
             const std::vector<LabelLine>& lines) {
    std::vector<Candidate> places;
    for (const Spot spot : spots) {
      places.clear();
      add_near(spot, lines, places);
      for (const Candidate& one : places) {
        Label label = measures_.label(lines, one.top_left, one.anchor);
        if (!surroundings_.is_free(label.box)) continue;
        if (surroundings_.belongs_to_point(measures_.letters(label), spot, index)) return label;
      }
    }
    const int away = measures_.name_offset() + 2 * measures_.clearance();
    crowded_.push_back(
        {spots.front(), {1, -1}, {away + measures_.width(lines), away + measures_.height(lines)}});
    places.clear();
    add_near(spots.front(), lines, places);
    return measures_.label(lines, places.front().top_left, places.front().anchor);
  }

  void add_near(Spot spot, const std::vector<LabelLine>& lines,
                std::vector<Candidate>& places) const {
    const int width = measures_.width(lines);
    const int height = measures_.height(lines);
    const int off = measures_.name_offset();
    const int right = spot.x + off;
    const int left = spot.x - off - width;
    const int above = spot.y - off - height;
    const int below = spot.y + off;
    const Spot centred{spot.x - width / 2, spot.y - height / 2};
    places.push_back({{right, above}, Anchor::start});
    places.push_back({{left, above}, Anchor::end});
    places.push_back({{right, below}, Anchor::start});
    places.push_back({{left, below}, Anchor::end});
    places.push_back({{centred.x, above}, Anchor::middle});
    places.push_back({{centred.x, below}, Anchor::middle});
    places.push_back({{right, centred.y}, Anchor::start});
    places.push_back({{left, centred.y}, Anchor::end});
  }

  Schematic& schematic_;
  const LabelTexts& texts_;
  const Sizes& sizes_;
  Measures measures_;
  bool framed_;
  Surroundings surroundings_;
  std::vector<std::vector<Segment>> leads_;  ///< by point: from it towards its parts
  Spot middle_;                              ///< of the slanted symbols
  int slanted_ = 0;
  int highest_ = std::numeric_limits<int>::max();
  int lowest_ = std::numeric_limits<int>::min();
  std::vector<Crowded> crowded_;
};

}  // namespace

std::vector<Crowded> put_labels(Schematic& schematic, const LabelTexts& texts, const Sizes& sizes,
                                bool framed, const std::optional<Spot>& least) {
  return Labelling(schematic, texts, sizes, framed, least).run();
}

}  // namespace ohmfold::drawing

// Finding a free place for each label.
#include "drawing/labelling.h"

#include <algorithm>
#include <cstdlib>
#include <limits>
#include <utility>

#include "drawing/occupied.h"
#include "drawing/slant.h"

namespace ohmfold::drawing {

namespace {

/// A place to try: the corner of the label at the upper left.
struct Candidate {
  Spot top_left;
  Anchor anchor = Anchor::start;
};

Box around(Spot middle, int x, int y) {
  return {{middle.x - x, middle.y - y}, {middle.x + x, middle.y + y}};
}

/// The four corners of a frame round a symbol, in order.
std::vector<Spot> frame_of(const DrawnPart& part, int along, int across) {
  const Spot ahead = stride(part.direction, along);
  const Spot aside = stride(right_of(part.direction), across);
  const Spot m = part.middle;
  return {m + ahead + aside, m + ahead - aside, m - ahead - aside, m - ahead + aside};
}

Box box_of(const std::vector<Spot>& spots) {
  Box box{spots.front(), spots.front()};
  for (const Spot spot : spots) {
    box.min = {std::min(box.min.x, spot.x), std::min(box.min.y, spot.y)};
    box.max = {std::max(box.max.x, spot.x), std::max(box.max.y, spot.y)};
  }
  return box;
}

/// Round the number of a step, at the corner of the frame that the label leaves free.
Box tag_of(const DrawnPart& part, const Measures& measures, bool at_right) {
  const Spot aside = stride(right_of(part.direction), measures.frame_across());
  const Spot behind = part.middle - stride(part.direction, measures.frame_along());
  return around(at_right ? behind + aside : behind - aside, measures.tag_width(),
                measures.tag_height());
}

Box arrow_box(const Arrow& arrow, const Sizes& sizes) {
  const Spot tail = arrow.at - stride(arrow.direction, 2 * sizes.lead / 3);
  Box box = box_of({arrow.at, tail});
  const int across = sizes.symbol_breadth / 4;
  return {{box.min.x - across, box.min.y - across}, {box.max.x + across, box.max.y + across}};
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
        least_(least),
        occupied_(2 * (sizes.symbol_length + sizes.lead)) {}

  std::size_t run() {
    take_room();
    for (std::size_t i = 0; i < schematic_.parts.size(); ++i) label_part(i);
    for (std::size_t i = 0; i < schematic_.points.size(); ++i) label_point(i);
    return failures_;
  }

 private:
  void take_room() {
    for (const DrawnPart& part : schematic_.parts) {
      for (std::size_t i = 0; i + 1 < part.path.size(); ++i) {
        occupied_.add(Segment{part.path[i], part.path[i + 1]});
      }
      for (const Spot corner : part.path) {
        highest_ = std::min(highest_, corner.y);
        lowest_ = std::max(lowest_, corner.y);
      }
      for (const Arrow& arrow : part.arrows) occupied_.add(arrow_box(arrow, sizes_));
      const std::vector<Spot> frame =
          frame_of(part, measures_.frame_along(), measures_.frame_across());
      if (is_upright(part.direction) || is_lying(part.direction)) {
        occupied_.add(box_of(frame));
        continue;
      }
      middle_ = middle_ + part.middle;
      ++slanted_;
      for (std::size_t i = 0; i < frame.size(); ++i) {
        occupied_.add(Segment{frame[i], frame[(i + 1) % frame.size()]});
      }
    }
    if (slanted_ > 0) middle_ = {middle_.x / slanted_, middle_.y / slanted_};
    for (const DrawnPoint& point : schematic_.points) {
      for (const Segment& wire : point.wires) occupied_.add(wire);
      const int dot = measures_.name_offset() / 2;
      for (const Spot spot : point.dots) occupied_.add(around(spot, dot, dot));
      for (const Spot spot : point.rings) occupied_.add(around(spot, dot, dot));
    }
  }

  [[nodiscard]] bool is_free(const Box& box) const {
    const int apart = measures_.clearance() - 1;
    const bool inside = !least_ || (box.min.x >= least_->x && box.min.y >= least_->y);
    return inside && occupied_.is_free({{box.min.x - apart, box.min.y - apart},
                                        {box.max.x + apart, box.max.y + apart}});
  }

  Label first_free(const std::vector<LabelLine>& lines, const std::vector<Candidate>& candidates) {
    for (const Candidate& one : candidates) {
      Label label = measures_.label(lines, one.top_left, one.anchor);
      if (is_free(label.box)) return label;
    }
    ++failures_;
    return measures_.label(lines, candidates.front().top_left, candidates.front().anchor);
  }

  void label_part(std::size_t index) {
    DrawnPart& part = schematic_.parts[index];
    bool at_right = false;
    if (!texts_.parts[index].empty()) {
      Label label = first_free(texts_.parts[index], places_beside(part, texts_.parts[index]));
      occupied_.add(label.box);
      const Spot centre{(label.box.min.x + label.box.max.x) / 2,
                        (label.box.min.y + label.box.max.y) / 2};
      const Spot right = right_of(part.direction);
      const Spot towards = centre - part.middle;
      at_right = std::int64_t{towards.x} * right.x + std::int64_t{towards.y} * right.y < 0;
      part.labels.push_back(std::move(label));
    }
    if (framed_) occupied_.add(tag_of(part, measures_, at_right));
  }

  [[nodiscard]] std::vector<Candidate> places_beside(const DrawnPart& part,
                                                     const std::vector<LabelLine>& lines) const {
    const int width = measures_.width(lines);
    const int height = measures_.height(lines);
    const Spot m = part.middle;
    const int away = measures_.frame_across() + measures_.clearance();
    const int quarter = measures_.frame_along() / 2;
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
    const bool outer = std::int64_t{out.x} * right.x + std::int64_t{out.y} * right.y >= 0;
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
    std::vector<Spot> spots{texts_.names[index]};
    for (const Segment& wire : point.wires) {
      spots.push_back(wire.from);
      spots.push_back(wire.to);
    }
    for (const Segment& wire : point.wires) {
      for (int quarter = 1; quarter < 4; ++quarter) {
        spots.push_back({wire.from.x + (wire.to.x - wire.from.x) * quarter / 4,
                         wire.from.y + (wire.to.y - wire.from.y) * quarter / 4});
      }
    }
    std::vector<Candidate> places;
    for (const Spot spot : spots) add_near(spot, lines, places);
    Label label = first_free(lines, places);
    occupied_.add(label.box);
    point.labels.push_back(std::move(label));
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
  std::optional<Spot> least_;
  Occupied occupied_;
  Spot middle_;  ///< of the slanted symbols
  int slanted_ = 0;
  int highest_ = std::numeric_limits<int>::max();
  int lowest_ = std::numeric_limits<int>::min();
  std::size_t failures_ = 0;
};

}  // namespace

int Measures::width(const std::vector<LabelLine>& lines) const {
  int width = 0;
  for (const LabelLine& line : lines) width = std::max(width, sizes_.text_width(line.text));
  return width;
}

int Measures::height(const std::vector<LabelLine>& lines) const {
  return static_cast<int>(lines.size()) * sizes_.line_height - 1;
}

Label Measures::label(const std::vector<LabelLine>& lines, Spot top_left, Anchor anchor) const {
  const Box box{top_left, {top_left.x + width(lines), top_left.y + height(lines)}};
  const int x = anchor == Anchor::start    ? box.min.x
                : anchor == Anchor::middle ? box.min.x + (box.max.x - box.min.x) / 2
                                           : box.max.x;
  return {{x, box.min.y + ascent()}, anchor, lines, box};
}

std::size_t put_labels(Schematic& schematic, const LabelTexts& texts, const Sizes& sizes,
                       bool framed, const std::optional<Spot>& least) {
  return Labelling(schematic, texts, sizes, framed, least).run();
}

Box extent_of(const Schematic& schematic, const Sizes& sizes, bool framed) {
  const Measures measures(sizes);
  std::vector<Spot> corners;
  const auto add = [&](const Box& box) {
    corners.push_back(box.min);
    corners.push_back(box.max);
  };
  for (const DrawnPart& part : schematic.parts) {
    corners.insert(corners.end(), part.path.begin(), part.path.end());
    add(box_of(frame_of(part, measures.frame_along(), measures.frame_across())));
    for (const Label& label : part.labels) add(label.box);
    for (const Arrow& arrow : part.arrows) add(arrow_box(arrow, sizes));
    if (!framed) continue;
    add(tag_of(part, measures, true));
    add(tag_of(part, measures, false));
  }
  for (const DrawnPoint& point : schematic.points) {
    for (const Segment& wire : point.wires) add({wire.from, wire.to});
    for (const Label& label : point.labels) add(label.box);
    for (const Spot spot : point.rings)
      add(around(spot, measures.clearance(), measures.clearance()));
  }
  return corners.empty() ? Box{} : box_of(corners);
}

}  // namespace ohmfold::drawing

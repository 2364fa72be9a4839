// The room of symbols, frames, arrows and labels, in numbers.
#include "drawing/measures.h"

#include <utility>

#include "drawing/slant.h"

namespace ohmfold::drawing {

namespace {

/// The four corners of a box round a symbol, in order.
std::vector<Spot> turned_box(const DrawnPart& part, Spot half) {
  const Spot ahead = stride(part.direction, half.x);
  const Spot aside = stride(right_of(part.direction), half.y);
  const Spot m = part.middle;
  return {m + ahead + aside, m + ahead - aside, m - ahead - aside, m - ahead + aside};
}

}  // namespace

Box around(Spot middle, int x, int y) {
  return {{middle.x - x, middle.y - y}, {middle.x + x, middle.y + y}};
}

Box box_of(const std::vector<Spot>& spots) {
  Box box{spots.front(), spots.front()};
  for (const Spot spot : spots) {
    box.min = {std::min(box.min.x, spot.x), std::min(box.min.y, spot.y)};
    box.max = {std::max(box.max.x, spot.x), std::max(box.max.y, spot.y)};
  }
  return box;
}

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

std::vector<Box> Measures::letters(const Label& label) const {
  std::vector<Box> boxes;
  int top = label.box.min.y;
  for (const LabelLine& line : label.lines) {
    const int width = sizes_.text_width(line.text);
    const int left = label.anchor == Anchor::start    ? label.at.x
                     : label.anchor == Anchor::middle ? label.at.x - width / 2
                                                      : label.at.x - width;
    boxes.push_back({{left, top + sizes_.line_height / 6},
                     {left + width, top + sizes_.line_height - 1 - sizes_.line_height / 8}});
    top += sizes_.line_height;
  }
  return boxes;
}

Spot Measures::body(SymbolKind kind) const {
  const int length = sizes_.symbol_length;
  const int breadth = sizes_.symbol_breadth;
  switch (kind) {
    case SymbolKind::battery:
      return {length / 11, 3 * breadth / 4};
    case SymbolKind::lamp:
    case SymbolKind::current_source:
    case SymbolKind::ammeter:
    case SymbolKind::voltmeter:
      return {length / 4, 11 * breadth / 16};
    case SymbolKind::open_switch:
    case SymbolKind::closed_switch:
      return {2 * length / 5, breadth / 2};
    case SymbolKind::resistor:
      return {length / 2, breadth / 2};
    case SymbolKind::plain:
      break;
  }
  return {};
}

std::vector<Spot> Measures::body_of(const DrawnPart& part) const {
  return turned_box(part, body(part.kind));
}

std::vector<Spot> Measures::frame_of(const DrawnPart& part) const {
  return turned_box(part, {frame_along(part.direction), frame_across()});
}

Box Measures::tag_of(const DrawnPart& part, Spot corner) const {
  // The signs of a battery are within its frame.
  const int signs = part.kind == SymbolKind::battery ? 5 * sizes_.gap / 2 : 0;
  const int along = body(part.kind).x + sizes_.gap + signs;
  // Beside a slanted line the corners of the number come nearer to it.
  const int across = frame_across() + (is_slanted(part.direction) ? sizes_.gap : 0);
  const Spot middle = part.middle + stride(part.direction, corner.x * along) +
                      stride(right_of(part.direction), corner.y * across);
  return around(middle, 3 * sizes_.line_height / 4, sizes_.line_height / 2);
}

Box Measures::arrow_box(const Arrow& arrow) const {
  const Spot tail = arrow.at - stride(arrow.direction, 2 * sizes_.lead / 3);
  const Box box = box_of({arrow.at, tail});
  const int across = sizes_.symbol_breadth / 4;
  return {{box.min.x - across, box.min.y - across}, {box.max.x + across, box.max.y + across}};
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
    add(box_of(measures.frame_of(part)));
    for (const Label& label : part.labels) add(label.box);
    for (const Arrow& arrow : part.arrows) add(measures.arrow_box(arrow));
    if (framed) add(measures.tag_of(part, part.tag_corner));
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

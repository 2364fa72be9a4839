// Schematics built by hand.
#include "drawing/schematics.h"

#include <algorithm>
#include <utility>

namespace ohmfold::drawing::testing {

Spot Sketch::spot(int x, int y) const {
  return {x * scale_.x + scale_.x / 2, y * scale_.y + scale_.y / 2};
}

Label Sketch::label(Spot at, Anchor anchor, std::vector<LabelLine> lines) const {
  int width = 0;
  for (const LabelLine& line : lines) {
    width = std::max(width, static_cast<int>(line.text.size()) * scale_.letter);
  }
  const int left = anchor == Anchor::start ? 0 : anchor == Anchor::middle ? width / 2 : width;
  const int below = (static_cast<int>(lines.size()) - 1) * scale_.line;
  return {at,
          anchor,
          std::move(lines),
          {{at.x - left, at.y - scale_.ascent}, {at.x - left + width, at.y + below}}};
}

DrawnPart& Sketch::part(SymbolKind kind, const std::string& name, const std::string& value,
                        const std::vector<Spot>& cells, std::size_t seat) {
  DrawnPart made;
  made.part = PartId{static_cast<std::uint32_t>(schematic_.parts.size())};
  made.name = name;
  made.kind = kind;
  for (const Spot cell : cells) made.path.push_back(spot(cell.x, cell.y));
  const Spot from = made.path[seat];
  const Spot to = made.path[seat + 1];
  made.middle = {(from.x + to.x) / 2, (from.y + to.y) / 2};
  made.direction = to - from;
  std::vector<LabelLine> lines;
  if (!name.empty()) lines.push_back({TextRole::part_name, name});
  if (!value.empty()) lines.push_back({TextRole::value, value});
  if (!lines.empty()) {
    const bool lying = from.y == to.y;
    const int above = scale_.above + (static_cast<int>(lines.size()) - 1) * scale_.line;
    const Spot at = lying ? Spot{made.middle.x, made.middle.y - above}
                          : Spot{made.middle.x + scale_.beside, made.middle.y};
    made.labels.push_back(label(at, lying ? Anchor::middle : Anchor::start, lines));
  }
  schematic_.parts.push_back(made);
  return schematic_.parts.back();
}

DrawnPoint& Sketch::point(const std::string& name, Spot at, const std::vector<Segment>& wires,
                          const std::vector<Spot>& dots) {
  DrawnPoint made;
  made.point = PointId{static_cast<std::uint32_t>(schematic_.points.size())};
  made.name = name;
  for (const Segment& wire : wires) {
    made.wires.push_back({spot(wire.from.x, wire.from.y), spot(wire.to.x, wire.to.y)});
  }
  for (const Spot dot : dots) made.dots.push_back(spot(dot.x, dot.y));
  if (!name.empty()) {
    const Spot beside = spot(at.x, at.y) - Spot{scale_.letter, scale_.above / 2};
    made.labels.push_back(label(beside, Anchor::end, {{TextRole::point_name, name}}));
  }
  schematic_.points.push_back(made);
  return schematic_.points.back();
}

void Sketch::cross(Spot at, Segment over) {
  schematic_.crossings.push_back(
      {spot(at.x, at.y), {spot(over.from.x, over.from.y), spot(over.to.x, over.to.y)}});
}

Schematic Sketch::done(int columns, int rows) {
  schematic_.width = columns * scale_.x;
  schematic_.height = rows * scale_.y;
  return std::move(schematic_);
}

Schematic series_loop(Scale scale) {
  Sketch sketch(scale);
  sketch.part(SymbolKind::battery, "E", "9 V", {{0, 2}, {0, 0}});
  sketch.part(SymbolKind::open_switch, "S", "", {{0, 0}, {1, 0}});
  sketch.part(SymbolKind::ammeter, "A1", "", {{1, 0}, {2, 0}});
  sketch.part(SymbolKind::lamp, "L1", "20 Ω", {{2, 0}, {2, 2}});
  sketch.part(SymbolKind::resistor, "R12", "4.7 kΩ", {{2, 2}, {0, 2}});
  sketch.point("T", {0, 0});
  sketch.point("A", {1, 0});
  sketch.point("G", {0, 2});
  return sketch.done(3, 3);
}

Schematic side_by_side(Scale scale) {
  Sketch sketch(scale);
  sketch.part(SymbolKind::battery, "E", "12 V", {{0, 2}, {0, 0}});
  DrawnPart& first = sketch.part(SymbolKind::resistor, "R1", "6 Ω", {{1, 0}, {1, 2}});
  first.mark = Mark::next;
  first.step = 1;
  const Spot tip = sketch.spot(1, 0) + Spot{0, scale.y / 3};
  first.arrows.push_back({tip, {0, 1}});
  DrawnPart& second = sketch.part(SymbolKind::resistor, "R2", "3 Ω", {{2, 0}, {2, 2}});
  second.mark = Mark::next;
  second.step = 1;
  sketch.part(SymbolKind::resistor, "R_3_4", "5 Ω", {{2, 0}, {3, 0}, {3, 2}, {2, 2}}, 1).mark =
      Mark::came;
  sketch.point("T", {0, 0}, {{{0, 0}, {1, 0}}, {{1, 0}, {2, 0}}}, {{1, 0}, {2, 0}});
  sketch.point("G", {0, 2}, {{{0, 2}, {1, 2}}, {{1, 2}, {2, 2}}}, {{1, 2}, {2, 2}});
  return sketch.done(4, 3);
}

Schematic diamond() {
  Sketch sketch(kPaper);
  sketch.part(SymbolKind::battery, "E", "10 V", {{0, 4}, {0, 0}});
  sketch.part(SymbolKind::resistor, "R1", "1 Ω", {{3, 0}, {2, 2}});
  sketch.part(SymbolKind::resistor, "R2", "2 Ω", {{3, 0}, {4, 2}}).mark = Mark::came;
  DrawnPart& third = sketch.part(SymbolKind::resistor, "R3", "3 Ω", {{2, 2}, {3, 4}});
  third.mark = Mark::next;
  third.step = 12;
  sketch.part(SymbolKind::lamp, "L", "4 Ω", {{4, 2}, {3, 4}});
  sketch.part(SymbolKind::voltmeter, "V", "", {{2, 2}, {4, 2}});
  sketch.point("T", {3, 0}, {{{0, 0}, {3, 0}}}, {{3, 0}});
  sketch.point("G", {3, 4}, {{{0, 4}, {3, 4}}}, {{3, 4}});
  sketch.point("B", {2, 2}, {}, {{2, 2}});
  sketch.point("C", {4, 2}, {}, {{4, 2}});
  return sketch.done(5, 5);
}

Schematic crossing(Scale scale) {
  Sketch sketch(scale);
  sketch.part(SymbolKind::resistor, "R1", "1 Ω", {{0, 1}, {1, 1}, {3, 1}});
  sketch.part(SymbolKind::resistor, "R2", "2 Ω", {{1, 0}, {1, 1}, {1, 2}, {2, 2}}, 2);
  sketch.point("loose", {3, 1}).rings.push_back(sketch.spot(3, 1));
  sketch.point("P", {1, 0}, {{{2, 0}, {1, 0}}, {{2, 0}, {2, 2}}});
  sketch.cross({2, 1}, {{2, 0}, {2, 2}});
  Schematic made = sketch.done(4, 3);
  // The first part's symbol has room only before the crossing.
  made.parts[0].path = {sketch.spot(0, 1), sketch.spot(3, 1)};
  made.parts[0].middle = {(sketch.spot(0, 1).x + sketch.spot(1, 1).x) / 2, sketch.spot(0, 1).y};
  made.parts[0].direction = {1, 0};
  made.parts[1].path = {sketch.spot(1, 0), sketch.spot(1, 2), sketch.spot(2, 2)};
  made.crossings.push_back({sketch.spot(1, 1), {sketch.spot(0, 1), sketch.spot(3, 1)}});
  return made;
}

Schematic directions(SymbolKind kind, Scale scale) {
  Sketch sketch(scale);
  const Mark marks[] = {Mark::none, Mark::next, Mark::came};
  for (int row = 0; row < 3; ++row) {
    const std::vector<std::vector<Spot>> ways{{{0, row}, {1, row}},
                                              {{3, row}, {2, row}},
                                              {{4, 2 * row}, {4, 2 * row + 2}},
                                              {{5, 2 * row + 2}, {5, 2 * row}}};
    for (const auto& way : ways) {
      DrawnPart& part = sketch.part(kind, "X1", "", way);
      part.mark = marks[row];
      part.step = marks[row] == Mark::next ? 3 : 0;
    }
  }
  return sketch.done(6, 7);
}

Schematic slants(SymbolKind kind) {
  Sketch sketch(kPaper);
  const Spot ends[] = {{4, 2}, {4, 3}, {3, 4}, {1, 4}, {0, 3}, {0, 1}, {1, 0}, {3, 0}};
  for (const Spot end : ends) {
    // All lead outwards from near the middle.
    sketch.part(kind, "", "", {{2, 2}, end});
  }
  Schematic made = sketch.done(5, 5);
  for (DrawnPart& part : made.parts) {
    const Spot end = part.path[1];
    part.path[0] = {end.x - (end.x - part.path[0].x) * 2 / 3,
                    end.y - (end.y - part.path[0].y) * 2 / 3};
    part.middle = {(part.path[0].x + end.x) / 2, (part.path[0].y + end.y) / 2};
  }
  return made;
}

Schematic odd_labels(Scale scale) {
  Sketch sketch(scale);
  sketch.part(SymbolKind::resistor, "<R&1>\"'", "]]> -- 100 % $x_1$", {{0, 0}, {0, 1}});
  sketch.part(SymbolKind::resistor, "\\input{x}", "a\u0301 \u05D0\u05D1 \u6F22\u5B57",
              {{1, 0}, {1, 1}});
  sketch.part(SymbolKind::resistor, std::string("c\x1B[31m\0", 7), "5\u00A0µA ∥ ≈ −1 × 2",
              {{2, 0}, {2, 1}});
  return sketch.done(4, 2);
}

}  // namespace ohmfold::drawing::testing

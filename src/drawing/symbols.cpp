// The symbols of parts on paper, stroke by stroke.
#include "drawing/symbols.h"

#include <algorithm>

#include "drawing/slant.h"

namespace ohmfold::drawing {

namespace {

constexpr int kHalf = kBodyLength / 2;
constexpr int kSide = kBodyBreadth / 2;
constexpr int kRadius = 11;  // of meters, lamps and current sources
constexpr int kApart = 3;    // the two lines of a double line

Stroke rectangle(Spot min, Spot max, Pen pen = Pen::line) {
  return {{min, {max.x, min.y}, max, {min.x, max.y}}, true, pen};
}

Symbol box(bool doubled) {
  Symbol symbol;
  symbol.half = kHalf;
  symbol.strokes.push_back(rectangle({-kHalf, -kSide}, {kHalf, kSide}));
  if (doubled) {
    symbol.strokes.push_back(
        rectangle({-kHalf + kApart, -kSide + kApart}, {kHalf - kApart, kSide - kApart}));
  }
  return symbol;
}

/// Three full waves between -18 and 18.
Symbol zigzag(bool doubled) {
  Stroke line{{{-kHalf, 0}, {-18, 0}}};
  for (int wave = 0; wave < 6; ++wave) {
    line.corners.push_back({-15 + 6 * wave, wave % 2 == 0 ? -kSide : kSide});
  }
  line.corners.push_back({18, 0});
  line.corners.push_back({kHalf, 0});
  line.pen = doubled ? Pen::doubled : Pen::line;
  Symbol symbol;
  symbol.half = kHalf;
  symbol.strokes.push_back(line);
  return symbol;
}

Symbol round(bool doubled) {
  Symbol symbol;
  symbol.half = kRadius;
  symbol.frame = {18, 13};
  symbol.circles.push_back({{}, kRadius});
  if (doubled) symbol.circles.push_back({{}, kRadius - kApart});
  return symbol;
}

Symbol lamp(bool doubled) {
  Symbol symbol = round(doubled);
  // Whole units near the circle's points at 45 degrees.
  const int reach = doubled ? 5 : 8;
  symbol.strokes.push_back({{{-reach, -reach}, {reach, reach}}});
  symbol.strokes.push_back({{{-reach, reach}, {reach, -reach}}});
  return symbol;
}

Symbol meter(std::string_view letter, bool doubled) {
  Symbol symbol = round(doubled);
  symbol.signs.push_back({{}, letter, true});
  return symbol;
}

Symbol current_source(SymbolSet set, bool doubled) {
  Symbol symbol = round(doubled);
  symbol.frame.x = 27;
  if (set == SymbolSet::rectangle) {
    const int reach = doubled ? kRadius - kApart : kRadius;
    symbol.strokes.push_back({{{0, -reach}, {0, reach}}});
    symbol.strokes.push_back({{{24, 0}, {15, -4}, {15, 4}}, true, Pen::filled});
  } else {
    symbol.strokes.push_back({{{-7, 0}, {1, 0}}});
    symbol.strokes.push_back({{{8, 0}, {0, -4}, {0, 4}}, true, Pen::filled});
  }
  return symbol;
}

/// The long thin plate is the positive one, at the second point.
Symbol battery(bool doubled, int out) {
  Symbol symbol;
  symbol.half = 4;
  symbol.frame = {26, 14};
  if (doubled) {
    symbol.strokes.push_back(rectangle({3, -12}, {6, 12}));
    symbol.strokes.push_back(rectangle({-7, -7}, {-3, 7}));
    symbol.half = 7;
    symbol.strokes.push_back({{{6, 0}, {7, 0}}});
  } else {
    symbol.strokes.push_back({{{4, -12}, {4, 12}}});
    symbol.strokes.push_back({{{-4, -7}, {-4, 7}}, false, Pen::thick});
  }
  symbol.signs.push_back({{13, out * 8}, "+"});
  symbol.signs.push_back({{-13, out * 8}, "−"});
  return symbol;
}

Symbol contacts(bool is_open, bool doubled, int out) {
  Symbol symbol;
  symbol.half = 17;
  symbol.frame = {24, 12};
  symbol.circles = {{{-15, 0}, 2}, {{15, 0}, 2}};
  Stroke blade{{{-13, 0}, {13, 0}}, false, doubled ? Pen::doubled : Pen::line};
  if (is_open) blade.corners = {{-13, out}, {12, out * 10}};
  symbol.strokes.push_back(blade);
  return symbol;
}

/// Are there labels at the left of the part's lead, and none at its right?
bool label_is_left(const DrawnPart& part) {
  bool left = false;
  bool right = false;
  for (const Label& label : part.labels) {
    // Twice the middle of the label's box, seen from the symbol, across the direction.
    const std::int64_t x = label.box.min.x + label.box.max.x - 2 * part.middle.x;
    const std::int64_t y = label.box.min.y + label.box.max.y - 2 * part.middle.y;
    const std::int64_t across = part.direction.x * y - part.direction.y * x;
    (across < 0 ? left : right) = true;
  }
  return left && !right;
}

}  // namespace

Symbol symbol_of(SymbolKind kind, SymbolSet set, bool doubled, bool flipped) {
  const int out = flipped ? 1 : -1;
  switch (kind) {
    case SymbolKind::resistor:
      return set == SymbolSet::rectangle ? box(doubled) : zigzag(doubled);
    case SymbolKind::lamp:
      return lamp(doubled);
    case SymbolKind::battery:
      return battery(doubled, out);
    case SymbolKind::current_source:
      return current_source(set, doubled);
    case SymbolKind::ammeter:
      return meter("A", doubled);
    case SymbolKind::voltmeter:
      return meter("V", doubled);
    case SymbolKind::open_switch:
      return contacts(true, doubled, out);
    case SymbolKind::closed_switch:
      return contacts(false, doubled, out);
    case SymbolKind::plain:
      break;
  }
  return {};
}

Tag tag_of(const DrawnPart& part, const Schematic& schematic) {
  constexpr Milli kHeight = 13 * kMilli;
  Tag tag{{}, 0, kHeight, std::to_string(part.step)};
  tag.width = 6 * kMilli * static_cast<Milli>(tag.text.size()) + 7 * kMilli;
  const Spot frame = symbol_of(part.kind, SymbolSet::rectangle, false, false).frame;
  const int across = is_slanted(part.direction) ? 18 : 12;
  const Spot corner{part.tag_corner.x * frame.x, part.tag_corner.y * across};
  tag.middle = placed(fine(corner), part.middle, turn_to(part.direction));
  // What is wider than a circle reaches outwards.
  const Milli wider = (tag.width - tag.height) / 2;
  tag.middle.x += tag.middle.x < part.middle.x * kMilli ? -wider : wider;
  const auto inside = [](Milli middle, Milli size, int canvas) {
    const Milli half = size / 2 + kMilli;
    return std::max(half, std::min(middle, canvas * kMilli - half));
  };
  tag.middle.x = inside(tag.middle.x, tag.width, schematic.width);
  tag.middle.y = inside(tag.middle.y, tag.height, schematic.height);
  return tag;
}

std::vector<FineSpot> arrow_head(const Arrow& arrow) {
  const Turn turn = turn_to(arrow.direction);
  std::vector<FineSpot> corners;
  for (const FineSpot corner : {FineSpot{0, 0}, FineSpot{-9000, -4000}, FineSpot{-9000, 4000}}) {
    corners.push_back(placed(corner, arrow.at, turn));
  }
  return corners;
}

bool is_flipped(const DrawnPart& part) {
  const bool lies = part.direction.y == 0;
  if (part.kind == SymbolKind::open_switch && lies) return part.direction.x < 0;
  return label_is_left(part);
}

std::string_view kind_word(SymbolKind kind) {
  switch (kind) {
    case SymbolKind::resistor:
      return "resistor";
    case SymbolKind::lamp:
      return "lamp";
    case SymbolKind::battery:
      return "battery";
    case SymbolKind::current_source:
      return "current-source";
    case SymbolKind::ammeter:
      return "ammeter";
    case SymbolKind::voltmeter:
      return "voltmeter";
    case SymbolKind::open_switch:
      return "open-switch";
    case SymbolKind::closed_switch:
      return "closed-switch";
    case SymbolKind::plain:
      break;
  }
  return "plain";
}

}  // namespace ohmfold::drawing

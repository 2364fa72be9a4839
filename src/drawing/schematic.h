// A drawing with all sizes settled: symbols, wires, dots and labels at their places. Whoever writes
// it in some form (svg.h, tikz.h, box_text.h) decides nothing but strokes and letters.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "drawing/geometry.h"
#include "ohmfold/ids.h"

namespace ohmfold::drawing {

enum class SymbolKind : std::uint8_t {
  resistor,
  lamp,
  battery,
  current_source,
  ammeter,
  voltmeter,
  open_switch,
  closed_switch,
  plain  ///< nothing but a line: an ideal wire
};

/// What a redraw says about a part. Shown by colour and by a second sign: a dashed frame with the
/// number of the step; a double line.
enum class Mark : std::uint8_t {
  none,
  next,  ///< is combined, or left out, next
  came   ///< has just come
};

enum class Anchor : std::uint8_t { start, middle, end };

/// What a label is about; writers set each in its own way.
enum class TextRole : std::uint8_t { part_name, value, current, point_name, potential };

struct LabelLine {
  TextRole role{};
  std::string text;  ///< UTF-8, never empty
};

/// Lines of text below one another.
struct Label {
  Spot at;  ///< start, middle or end of the first line's baseline
  Anchor anchor = Anchor::start;
  std::vector<LabelLine> lines;
  Box box;  ///< all of it, as measured by Sizes
};

/// Which way a current really flows; its size stands in the label.
struct Arrow {
  Spot at;         ///< its tip, on the path of the part
  Spot direction;  ///< any length
};

struct DrawnPart {
  PartId part;
  std::string name;  ///< as the labels call it; that of the problem where it has no label
  SymbolKind kind{};
  Path path;       ///< lead, symbol, lead; from the first point of the part to its second
  Spot middle;     ///< of the symbol, on a segment of the path
  Spot direction;  ///< of that segment, towards the second point
  Mark mark = Mark::none;
  std::uint32_t step = 0;  ///< with Mark::next the number of the step that takes it, otherwise 0
  /// Which corner of the frame has the number: x is 1 ahead and -1 behind, y is 1 at the right of
  /// the direction and -1 at the left.
  Spot tag_corner{-1, -1};
  std::vector<Label> labels;
  std::vector<Arrow> arrows;
};

struct DrawnPoint {
  PointId point;
  std::string name;  ///< as DrawnPart::name
  std::vector<Segment> wires;
  std::vector<Spot> dots;   ///< where three or more lines meet
  std::vector<Spot> rings;  ///< ends to which nothing is joined: terminals, loose ends
  std::vector<Label> labels;
};

/// Where a line passes another without touching it; `over` is the one that is drawn with an arc.
struct Crossing {
  Spot at;
  Segment over;
};

struct Schematic {
  int width = 0, height = 0;  ///< everything lies within, from (0, 0)
  std::vector<DrawnPart> parts;
  std::vector<DrawnPoint> points;
  std::vector<Crossing> crossings;
};

/// How large things are where the drawing will stand: on paper in pixels of SVG, on a terminal in
/// columns and lines.
struct Sizes {
  int symbol_length = 0;   ///< of a resistor's body along its path
  int upright_length = 0;  ///< the same where it stands upright
  int symbol_breadth = 0;  ///< across
  int lead = 0;            ///< least length of a lead at each end
  int line_height = 0;     ///< of a label
  int gap = 0;             ///< between a symbol or wire and its label
  int margin = 0;          ///< round the whole
  bool slanted = true;     ///< can lines run at other angles than right ones?
  int (*text_width)(std::string_view text) = nullptr;
};

/// For SVG and TikZ: one unit is a pixel of SVG; letters as wide as a usual sans-serif face at
/// most.
[[nodiscard]] const Sizes& paper_sizes();
/// For a terminal: one unit is a column or a line.
[[nodiscard]] const Sizes& terminal_sizes();

}  // namespace ohmfold::drawing

// The symbols of parts on paper as strokes round their middle, once for every form of drawing.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "drawing/schematic.h"
#include "drawing/turned.h"
#include "ohmfold/draw.h"

namespace ohmfold::drawing {

/// A resistor's body on paper, along its lead and across.
inline constexpr int kBodyLength = 44;
inline constexpr int kBodyBreadth = 16;
/// From one line of a label to the next on paper.
inline constexpr int kLineHeight = 17;

enum class Pen : std::uint8_t {
  line,     ///< as wide as a lead
  thick,    ///< the short plate of a battery
  doubled,  ///< the two edges of a thick line
  filled    ///< the inside too
};

/// Lines from corner to corner. x runs along the lead towards the second point, y to its right.
struct Stroke {
  std::vector<Spot> corners;
  bool closed = false;
  Pen pen = Pen::line;
};

struct Circle {
  Spot centre;
  int radius = 0;
};

/// A letter or sign that stays upright; it is centred at the spot.
struct Sign {
  Spot at;
  std::string_view text;
  bool large = false;  ///< the letter of a meter
};

struct Symbol {
  int half = 0;  ///< the leads end this far from the middle; 0 of a plain line, which has no body
  Spot frame{27, 12};  ///< the half of the frame of Mark::next, along the lead and across
  std::vector<Stroke> strokes;
  std::vector<Circle> circles;
  std::vector<Sign> signs;
};

/// `doubled`: with the double line of Mark::came. `flipped`: what stands out at one side (the signs
/// of a battery, the blade of a switch) is at the right of the lead, not at its left.
/// Sources: IEC 60617 and IEEE 315, from memory. A switch has rings at its contacts in both.
[[nodiscard]] Symbol symbol_of(SymbolKind kind, SymbolSet set, bool doubled, bool flipped);

/// The number of the step beside the frame of Mark::next.
struct Tag {
  FineSpot middle;
  Milli width = 0, height = 0;
  std::string text;
};

/// At the corner of the frame that the schematic says, off the body, within the canvas.
[[nodiscard]] Tag tag_of(const DrawnPart& part, const Schematic& schematic);

/// Three corners, the tip first.
[[nodiscard]] std::vector<FineSpot> arrow_head(const Arrow& arrow);

/// Does what stands out of the part's symbol belong to the right of its lead? Yes where labels are
/// at the left and none at the right; the blade of a switch that lies is lifted upwards.
[[nodiscard]] bool is_flipped(const DrawnPart& part);

/// "resistor", "open-switch", …: for programs that read a drawing.
[[nodiscard]] std::string_view kind_word(SymbolKind kind);

}  // namespace ohmfold::drawing

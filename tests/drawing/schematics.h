// Schematics built by hand, for paper and for a terminal, to try whoever writes them.
#pragma once

#include <string>
#include <vector>

#include "drawing/schematic.h"

namespace ohmfold::drawing::testing {

/// How far cells lie apart, and how large letters are.
struct Scale {
  int x = 100, y = 100;  ///< of a cell
  int letter = 8;        ///< width of a letter
  int line = 17;         ///< from line to line
  int beside = 16;       ///< from the middle of a part to a label beside it
  int above = 16;        ///< to the baseline of a label above it
  int ascent = 11;       ///< of letters
};

inline constexpr Scale kPaper{};
inline constexpr Scale kTerminal{18, 8, 1, 1, 3, 2, 0};

/// Builds a schematic in cells.
class Sketch {
 public:
  explicit Sketch(Scale scale = kPaper) : scale_(scale) {}

  [[nodiscard]] Spot spot(int x, int y) const;

  /// A part along corners in cells, with its symbol in the middle of the segment from corner `seat`
  /// on and a name and a value beside it. Returns it, to be changed.
  DrawnPart& part(SymbolKind kind, const std::string& name, const std::string& value,
                  const std::vector<Spot>& cells, std::size_t seat = 0);

  /// A point with wires along cells, dots and a name beside `at`.
  DrawnPoint& point(const std::string& name, Spot at, const std::vector<Segment>& wires = {},
                    const std::vector<Spot>& dots = {});

  void cross(Spot at, Segment over);

  [[nodiscard]] Schematic done(int columns, int rows);

 private:
  [[nodiscard]] Label label(Spot at, Anchor anchor, std::vector<LabelLine> lines) const;

  Scale scale_;
  Schematic schematic_;
};

/// A battery, an open switch, an ammeter, a lamp and a resistor, one after another.
[[nodiscard]] Schematic series_loop(Scale scale);
/// A battery and three parts side by side, dots and currents; one is next, one has come.
[[nodiscard]] Schematic side_by_side(Scale scale);
/// A bridge drawn as a diamond, with slanted parts; on paper only.
[[nodiscard]] Schematic diamond();
/// Two lines that pass each other, one with a corner, and a loose end.
[[nodiscard]] Schematic crossing(Scale scale);
/// One kind in four directions, in each mark.
[[nodiscard]] Schematic directions(SymbolKind kind, Scale scale);
/// One kind at eight slants; on paper only.
[[nodiscard]] Schematic slants(SymbolKind kind);
/// Names and values with every character that somebody might want to put there.
[[nodiscard]] Schematic odd_labels(Scale scale);

inline constexpr SymbolKind kKinds[] = {
    SymbolKind::resistor,       SymbolKind::lamp,          SymbolKind::battery,
    SymbolKind::current_source, SymbolKind::ammeter,       SymbolKind::voltmeter,
    SymbolKind::open_switch,    SymbolKind::closed_switch, SymbolKind::plain};

}  // namespace ohmfold::drawing::testing

// A sheet of character cells: lines that join where they meet, with other characters over them.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "drawing/schematic.h"
#include "ohmfold/decimal.h"

namespace ohmfold::drawing {

/// Whatever is put outside the sheet is left out.
class BoxCanvas {
 public:
  BoxCanvas(int columns, int lines, Letters letters);

  /// A line along a row or a column from spot to spot; others are not drawn.
  void line(Spot from, Spot to);
  /// A line passes another here: the upright one is drawn as an arc.
  void pass(Spot at);
  /// Text from this cell on, over whatever is there. Control characters become "?"; in ASCII other
  /// characters too, but for the signs of the trade.
  void write(Spot at, std::string_view text, Mark mark = Mark::none);
  /// Takes the line out of this cell, such as below an open switch.
  void clear(Spot at);

  /// Rows without spaces at their ends, ended by line feeds; empty rows above and below are left
  /// out.
  [[nodiscard]] std::string rows(bool colour) const;

 private:
  struct Cell {
    std::uint8_t sides = 0;  ///< to which of its neighbours a line leads
    Mark mark = Mark::none;
    std::uint32_t text = 0;  ///< index in texts_; 0 for none
  };

  [[nodiscard]] Cell* cell(Spot at);
  [[nodiscard]] std::string row(std::size_t index, bool colour) const;
  [[nodiscard]] std::string_view joint(std::uint8_t sides) const;

  int columns_, lines_;
  Letters letters_;
  std::vector<Cell> cells_;
  std::vector<std::string> texts_;  ///< [0] none, [1] for the second cell of a wide character
};

/// The columns that write() fills with this text.
[[nodiscard]] int columns_written(std::string_view text, Letters letters);

}  // namespace ohmfold::drawing

// Lines of working as displayed formulas of LaTeX, and words as text.
#pragma once

#include <string>

#include "views/document.h"

namespace ohmfold::handout {

struct TextOfWords {
  std::string code;
  int width = 0;  ///< as in MathText
  int least = 0;  ///< of the widest piece that cannot be broken
};

/// In running text no word is wider without a place to break; in a cell of a table.
inline constexpr int kLongWord = 1200;
inline constexpr int kLongWordInCell = 600;

/// Words for text mode: also for headings, cells and notes.
[[nodiscard]] TextOfWords latex_words(const views::Words& words, int long_word = kLongWord);

/// The lines with their relations below one another, as wide as `line_width` at most. Notes stand
/// beside them where there is room for all of them, otherwise below.
[[nodiscard]] std::string latex_working(const views::Working& working, int line_width);

}  // namespace ohmfold::handout

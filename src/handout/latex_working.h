// Lines of working as displayed formulas of LaTeX, and words as text.
#pragma once

#include <string>

#include "views/document.h"

namespace ohmfold::handout {

struct TextOfWords {
  std::string code;
  int width = 0;  ///< as in MathText
};

/// Words for text mode: also for headings, cells and notes.
[[nodiscard]] TextOfWords latex_words(const views::Words& words);

/// The lines with their relations below one another, as wide as `line_width` at most. Notes stand
/// beside them where there is room for all of them, otherwise below.
[[nodiscard]] std::string latex_working(const views::Working& working, int line_width);

}  // namespace ohmfold::handout

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

/// The lines with their relations below one another, as wide as kLineWidth at most.
[[nodiscard]] std::string latex_working(const views::Working& working);

}  // namespace ohmfold::handout

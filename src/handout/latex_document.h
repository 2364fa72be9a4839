// A document as LaTeX.
#pragma once

#include <string>

#include "ohmfold/draw.h"
#include "views/document.h"

namespace ohmfold::handout {

struct LatexOptions {
  SymbolSet symbols = SymbolSet::rectangle;
  bool fragment = false;  ///< the inside of a document only
  std::string title;      ///< above the contents, where there are any
};

/// Each heading of level 1 begins a section; several begin a page each, and contents stand before
/// them unless it is a fragment. Cost: linear.
[[nodiscard]] std::string latex_document(const views::Document& document,
                                         const LatexOptions& options);

/// The packages and commands that a fragment needs.
[[nodiscard]] std::string latex_commands();

}  // namespace ohmfold::handout

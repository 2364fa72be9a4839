// A document as one self-contained page.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "ohmfold/draw.h"
#include "views/document.h"

namespace ohmfold::handout {

struct PageOptions {
  std::string title;  ///< of the page: its first heading, unless the document has only one problem
  SymbolSet symbols = SymbolSet::rectangle;
  bool workbook = false;
  /// By heading of level 1: as many figures as a value that is typed has to have; 3 where there is
  /// no entry.
  std::vector<int> figures;
};

/// HTML that is well-formed XML, too, but for what stands within script and style. Ids depend on
/// nothing but the place in the document. Cost: linear in the text.
[[nodiscard]] std::string html_page(const views::Document& document, const PageOptions& options);

/// How many problems a document has: headings of level 1.
[[nodiscard]] std::size_t count_problems(const views::Document& document);

}  // namespace ohmfold::handout

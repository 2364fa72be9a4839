// The blocks of one document as HTML: sections, lists, workings, tables, figures, steps.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "handout/html_page.h"

namespace ohmfold::handout {

/// A heading that the contents of the page may list.
struct Section {
  int level = 1;  ///< as in the document
  std::string id;
  std::string words;  ///< phrasing content without names of its own
};

struct WrittenDocument {
  std::string html;
  std::size_t after_title = 0;  ///< where in `html` the first heading ends; 0 without one
  std::vector<Section> sections;
};

/// Each heading of level 1 begins an article. In a workbook each step is covered, with what follows
/// it in its section; and so is an article without steps beside others that have some: an answer
/// key.
[[nodiscard]] WrittenDocument write_blocks(const views::Document& document,
                                           const PageOptions& options);

}  // namespace ohmfold::handout

// Words within a page.
#pragma once

#include <string>

#include "views/words.h"

namespace ohmfold::handout {

/// Phrasing content: names isolated for their direction, symbols with subscripts, all escaped.
[[nodiscard]] std::string html_words(const views::Words& words);

/// The same without any element, for attributes and titles.
[[nodiscard]] std::string html_plain(const views::Words& words);

}  // namespace ohmfold::handout

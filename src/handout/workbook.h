// What a workbook asks before it shows a step.
#pragma once

#include <string>
#include <vector>

#include "views/document.h"

namespace ohmfold::handout {

/// A field for each value that can be judged: rational and not too long to write. Hidden until the
/// script of the page shows it; empty where nothing is asked. `id`: prefix of the ids within.
[[nodiscard]] std::string workbook_fields(const std::vector<views::Asked>& asked, int figures,
                                          const std::string& id);

/// The bar with progress, "Show all" and "Start again", and the remarks that the script gives.
[[nodiscard]] std::string workbook_bar();

/// A name under which a browser keeps how far the reader of this text is.
[[nodiscard]] std::string workbook_key(const std::string& text);

}  // namespace ohmfold::handout

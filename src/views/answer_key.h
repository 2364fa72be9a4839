// Several problems in one document: what it is called, and the answers of all of them in one table.
#pragma once

#include <span>

#include "ohmfold/handout.h"
#include "ohmfold/trace.h"
#include "views/document.h"

namespace ohmfold::views {

/// The title of the only problem; of several "Worked solutions", "Problems" or "Answers".
[[nodiscard]] Words collection_title(std::span<const Trace> traces, Content content);

/// A heading of level 1 and a table with a row for each answer: problem, case, what was asked, its
/// value. `figures` as in OutlineOptions.
void add_answer_key(std::span<const Trace> traces, int figures, Document& document);

}  // namespace ohmfold::views

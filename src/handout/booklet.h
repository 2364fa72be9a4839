// Several problems as one document: what every writer of handouts starts from.
#pragma once

#include <span>
#include <string>

#include "ohmfold/handout.h"
#include "ohmfold/trace.h"
#include "views/document.h"
#include "views/outline.h"

namespace ohmfold::handout {

/// What the document as a whole is called: the title of the only problem; of several "Worked
/// solutions", "Problems" or "Answers", by their content.
[[nodiscard]] std::string booklet_title(std::span<const Trace> traces, Content content);

/// The outlines one after the other, in the order given. A heading of level 1 begins each problem,
/// and no other block has that level but the key's heading; where there are several problems, their
/// headings are numbered ("Problem 2: …"). With `answer_key` a last part of level 1 holds the
/// answers of all of them in one table. There are no contents: a writer that shows some makes them
/// from the headings, since only it knows how to lead to a place.
///
/// Every StepBegin is followed by its StepEnd before the next StepBegin, and no heading stands
/// within a step: steps can become elements that hold whole blocks.
[[nodiscard]] views::Document booklet(std::span<const Trace> traces,
                                      const views::OutlineOptions& options, bool answer_key);

}  // namespace ohmfold::handout

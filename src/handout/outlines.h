// Solved problems as one document, for writers that make one text of them.
#pragma once

#include <span>

#include "ohmfold/handout.h"
#include "views/document.h"

namespace ohmfold::handout {

/// The booklet that the options ask for, with figures for paper.
[[nodiscard]] views::Document outline_of(std::span<const Trace> traces,
                                         const HandoutOptions& options);

}  // namespace ohmfold::handout

// Where a person stands in a case: their network, and what is answered.
#pragma once

#include <vector>

#include "coach/case_book.h"
#include "ohmfold/coach.h"

namespace ohmfold {

[[nodiscard]] CaseStanding standing_in(const CaseBook& book, const std::vector<Judgement>& lines,
                                       bool is_begun);

/// Does the line give the value that the question asks for? (Of a Thevenin equivalent: its voltage
/// or its resistance.)
[[nodiscard]] bool answers(const Judgement& line, const Question& question,
                           const CaseTrace& solved);

/// Does a work need as many right values as this for the question to be answered?
[[nodiscard]] int values_asked_by(const Question& question);

}  // namespace ohmfold

// Marks for judged work.
#pragma once

#include <vector>

#include "coach/case_book.h"
#include "ohmfold/coach.h"

namespace ohmfold {

/// Gives the marks of each line and of the whole. The scheme of a problem is the same for whoever
/// solves it and in whatever order: a method and an accuracy mark for each combination that the
/// solution makes, and for each value asked for. How a line earns or loses them: docs/errors.md.
/// `books`: by case, after all claims.
void give_marks(const Exercise& exercise, const std::vector<const CaseBook*>& books,
                const JudgeOptions& options, WorkJudgement& result);

}  // namespace ohmfold

// A judged work with all that was known of each case at its end.
#pragma once

#include <vector>

#include "coach/case_book.h"
#include "ohmfold/coach.h"

namespace ohmfold {

struct JudgedWork {
  WorkJudgement result;
  std::vector<CaseBook> books;  ///< by case
};

/// As judge_work, for hints: they go on from the books. Refers to the exercise.
[[nodiscard]] JudgedWork judge_with_books(const Exercise& exercise, const Work& work,
                                          const JudgeOptions& options);

}  // namespace ohmfold

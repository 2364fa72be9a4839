// What a judgement says as a whole.
#include <algorithm>

#include "ohmfold/coach.h"
#include "ohmfold/solve.h"

namespace ohmfold {

bool Judgement::holds() const {
  const bool step_holds = step != StepVerdict::refused && step != StepVerdict::cannot_tell;
  const bool value_holds = value != ValueVerdict::wrong && value != ValueVerdict::cut_off &&
                           value != ValueVerdict::cannot_tell;
  return step_holds && value_holds && hindrance == Hindrance::none && unit != UnitVerdict::wrong;
}

bool WorkJudgement::all_right() const {
  return std::all_of(lines.begin(), lines.end(), [](const Judgement& line) {
    return line.holds() && line.value != ValueVerdict::on_own &&
           line.step != StepVerdict::right_on_own;
  });
}

Exercise prepare(const Problem& problem) {
  Trace trace = solve(problem);
  std::shared_ptr<const Problem> solved = trace.problem;
  return {std::move(solved), std::move(trace)};
}

}  // namespace ohmfold

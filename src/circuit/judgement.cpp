// What a judgement, and a report of many, says as a whole.
#include <algorithm>

#include "ohmfold/class_report.h"
#include "ohmfold/coach.h"

namespace ohmfold {

bool Judgement::holds() const {
  const bool step_holds = step != StepVerdict::refused && step != StepVerdict::cannot_tell;
  const bool value_holds = value != ValueVerdict::wrong && value != ValueVerdict::cut_off &&
                           value != ValueVerdict::cannot_tell;
  return step_holds && value_holds && hindrance == Hindrance::none && unit != UnitVerdict::wrong;
}

LineVerdict verdict_of(const Judgement& line) {
  if (line.step == StepVerdict::refused || line.value == ValueVerdict::wrong ||
      line.value == ValueVerdict::cut_off || line.unit == UnitVerdict::wrong) {
    return LineVerdict::not_right;
  }
  if (line.hindrance != Hindrance::none || line.step == StepVerdict::cannot_tell ||
      line.value == ValueVerdict::cannot_tell) {
    return LineVerdict::cannot_tell;
  }
  if (line.value == ValueVerdict::rounded_early) return LineVerdict::rounded_early;
  if (line.value == ValueVerdict::on_own || line.step == StepVerdict::right_on_own) {
    return LineVerdict::follows;
  }
  const bool says_nothing = line.step == StepVerdict::none && line.value == ValueVerdict::none;
  return says_nothing ? LineVerdict::nothing : LineVerdict::right;
}

bool WorkJudgement::all_right() const {
  return std::all_of(lines.begin(), lines.end(), [](const Judgement& line) {
    return line.holds() && line.value != ValueVerdict::on_own &&
           line.step != StepVerdict::right_on_own;
  });
}

bool ClassReport::all_right() const {
  return std::ranges::all_of(works, &MarkedWork::all_right);
}

}  // namespace ohmfold

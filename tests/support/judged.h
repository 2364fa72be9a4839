// Works judged from their text, and what is found told line by line.
#pragma once

#include <gtest/gtest.h>

#include <string>
#include <string_view>

#include "ohmfold/coach.h"
#include "ohmfold/read.h"

namespace ohmfold::test {

struct JudgedText {
  Work work;
  WorkJudgement result;

  /// The first line that does not hold, or the number of lines.
  [[nodiscard]] std::size_t first_that_fails() const {
    std::size_t i = 0;
    while (i < result.lines.size() && result.lines[i].holds()) ++i;
    return i;
  }
  /// The line as it is written, with its verdicts as numbers: for messages.
  [[nodiscard]] std::string told(std::size_t line) const {
    const Judgement& judged = result.lines.at(line);
    std::string text = work.claims.at(line).text + "  [step " +
                       std::to_string(static_cast<int>(judged.step)) + ", value " +
                       std::to_string(static_cast<int>(judged.value)) + ", hindrance " +
                       std::to_string(static_cast<int>(judged.hindrance)) + " " + judged.name;
    if (judged.own) text += ", own " + judged.own->number.to_string();
    for (const Diagnosis& error : judged.errors) text += ", " + std::string(word_of(error.error));
    return text + "]";
  }
};

/// Reads and judges. Fails the test where the text cannot be read.
inline JudgedText judged(const Exercise& exercise, std::string text,
                         const JudgeOptions& options = {}) {
  const SourceText source{"test.work", std::move(text)};
  Outcome<Work> work = read_work(source, *exercise.problem);
  for (const Diagnostic& finding : work.diagnostics) {
    if (finding.severity == Severity::error) ADD_FAILURE() << render(finding, source);
  }
  if (!work) return {};
  WorkJudgement result = judge_work(exercise, *work.value, options);
  return {std::move(*work.value), std::move(result)};
}

}  // namespace ohmfold::test

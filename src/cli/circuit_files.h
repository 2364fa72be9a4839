// What the commands that read circuit files share: reading, choosing cases, going on after errors.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "cli/answers.h"
#include "cli/command.h"

namespace ohmfold {

/// What a command does with a problem: it adds an answer, and says how that went.
using AnswerProblem = std::function<ExitCode(const Problem&, Answers&)>;

/// The files of a command, the cases chosen in them, and where the answers go.
struct CircuitFiles {
  const std::vector<std::string>& files;
  const std::vector<std::string>& cases;  ///< labels; empty: all cases
  const OutputChoice& output;
};

/// Reads each file and has `answer` add what it finds of the problem, then delivers the answers. A
/// file that cannot be read does not keep the others from being answered. The heaviest exit code
/// counts.
[[nodiscard]] ExitCode answer_files(const CircuitFiles& given, const AnswerProblem& answer);

}  // namespace ohmfold

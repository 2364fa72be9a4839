// What the commands that read circuit files share: reading, choosing cases, going on after errors.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "cli/answers.h"
#include "cli/command.h"

namespace ohmfold {

/// Reads each file, has the cases with these labels (empty: all) chosen and `use` what it makes of
/// it. A file that cannot be read does not keep the others from being used. Nothing is done where
/// `output` is one of the files. The heaviest exit code counts.
[[nodiscard]] ExitCode use_files(const std::vector<std::string>& files,
                                 const std::vector<std::string>& cases, const std::string& output,
                                 const std::function<ExitCode(Problem&)>& use);

/// What a command does with a problem: it adds an answer, and says how that went.
using AnswerProblem = std::function<ExitCode(const Problem&, Answers&)>;

/// The files of a command, the cases chosen in them, and where the answers go.
struct CircuitFiles {
  const std::vector<std::string>& files;
  const std::vector<std::string>& cases;  ///< labels; empty: all cases
  const OutputChoice& output;
};

/// Uses each file so that `answer` adds what it finds of the problem, then delivers the answers.
[[nodiscard]] ExitCode answer_files(const CircuitFiles& given, const AnswerProblem& answer);

}  // namespace ohmfold

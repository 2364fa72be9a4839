// Problems to work on, and works on them, out of files, with every complaint on the way.
#pragma once

#include <optional>
#include <string>

#include "ohmfold/coach.h"
#include "ohmfold/work.h"

namespace ohmfold {

/// The problem of the file `name` ("-": standard input), solved. What is wrong with the file, a
/// case that contradicts itself and one beyond the budget for symbols are told on standard error;
/// then there is nothing.
[[nodiscard]] std::optional<Exercise> read_exercise(const std::string& name);

/// The claims of the file `name` ("-": standard input); what is wrong is told on standard error.
[[nodiscard]] std::optional<Work> read_work_file(const std::string& name, const Problem& problem);

}  // namespace ohmfold

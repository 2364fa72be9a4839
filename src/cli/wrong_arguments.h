// What to say of arguments that make no sense.
#pragma once

#include <string>
#include <vector>

#include "cli/command.h"

namespace ohmfold {

/// "-o", "--width"; not "-", which stands for standard input.
[[nodiscard]] bool is_option(const std::string& word);

/// Where there is no such option: the near one, or those that there are. `options`: "--case", …
[[nodiscard]] std::string no_such_option(const std::string& word,
                                         const std::vector<std::string>& options);

/// Where the words begin with no command: what was probably meant.
[[nodiscard]] std::string no_such_command(const std::vector<std::string>& words,
                                          const std::vector<std::string>& commands,
                                          const std::vector<std::string>& options);

// Options that each make sense but do not go together; empty where they do. `given`: the long names
// of the options that were written.
[[nodiscard]] std::string misfit(const SolveCommand& command,
                                 const std::vector<std::string>& given);
[[nodiscard]] std::string misfit(const DrawCommand& command, const std::vector<std::string>& given);

}  // namespace ohmfold

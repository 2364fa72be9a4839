// How a run ends, as other programs see it.
#pragma once

#include <algorithm>

namespace ohmfold {

/// In the order of their weight: of several things that went wrong, the heaviest decides.
enum class ExitCode : int {
  solved = 0,           ///< done; of judged work: all of it is right
  mistakes = 1,         ///< judged work has mistakes, or a work of several could not be read
  wrong_use = 2,        ///< the command line itself
  wrong_input = 3,      ///< a file; a circuit that contradicts itself or is too large; the output
  internal_fault = 70,  ///< ours
};

[[nodiscard]] constexpr ExitCode heavier(ExitCode a, ExitCode b) {
  return std::max(a, b);
}

}  // namespace ohmfold

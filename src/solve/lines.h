// What a way costs: the lines that somebody writes who goes it.
#pragma once

#include "ohmfold/trace.h"

namespace ohmfold {

/// Lines of working, and the bits of the fractions in them.
struct Cost {
  std::size_t lines = 0;
  std::size_t bits = 0;

  friend auto operator<=>(const Cost&, const Cost&) = default;
};

/// Of steps in `log` made on a network that looked from its port like `network`: a line for each
/// value made, and one for a step that makes none; where a battery `drives` it, also one for each
/// voltage or current found on the way back that is not simply that of the part made.
[[nodiscard]] Cost cost_of_steps(const StepLog& log, const Network& network, bool drives);

/// Of node-voltage analysis with so many unknown potentials among `parts` resistors: the equations,
/// their elimination (u (u - 1) / 2 lines) and the potentials; then voltage and current of each
/// part, or, where nothing drives it, the currents at a terminal, their sum and the quotient.
[[nodiscard]] std::size_t lines_of_analysis(std::size_t unknowns, std::size_t parts,
                                            std::size_t at_terminal, bool drives);

}  // namespace ohmfold

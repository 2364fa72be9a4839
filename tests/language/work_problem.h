// The problem that the tests of work files read claims about.
#pragma once

#include <stdexcept>

#include "language/findings_of.h"

namespace ohmfold {

/// Points A, B, T, G, N, AB, BA; N is a part, too, and so is V_T.
inline const Problem& problem_of_works() {
  static const Outcome<Problem> kProblem =
      read_circuit(circuit_text("symbol r\n"
                                "symbol U\n"
                                "battery E = 18 V from G to T\n"
                                "resistor R1 = 4 ohm from T to A\n"
                                "resistor R2 = 2 ohm from A to G\n"
                                "resistor R3 = 6 ohm from T to B\n"
                                "resistor R4 = 6 ohm from B to G\n"
                                "resistor R5 = 2 r from A to B\n"
                                "resistor R6 = 1 ohm from T to N\n"
                                "resistor N = 1 ohm from N to AB\n"
                                "resistor R_8 = 1 ohm from AB to BA\n"
                                "resistor V_T = 1 ohm from BA to G\n"
                                "battery F = 2 U from BA to G\n"));
  if (!kProblem) throw std::runtime_error(message(kProblem.diagnostics.front()));
  return *kProblem.value;
}

inline SourceText work_text(std::string_view text) {
  return {.name = "a.work", .text = std::string(text)};
}

}  // namespace ohmfold

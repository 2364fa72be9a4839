// Reading the languages at the edge of the program.
#pragma once

#include "ohmfold/problem.h"
#include "ohmfold/source.h"

namespace ohmfold {

/// Reads a circuit file. All findings of the file are reported in one run; there is a problem
/// exactly where none of them is an error. Any bytes are accepted as input; cost is linear in them,
/// but for the digits of long numbers.
[[nodiscard]] Outcome<Problem> read_circuit(const SourceText& source);

/// Reads a network written as one expression ("4 + 6 || 3", "R1:4 + R2:6 || R3:3"): `+` joins in
/// series,
/// `||` (also `|` and `∥`) in parallel and binds tighter, round brackets group. The network lies
/// between points A and B; with `across` a battery E of that voltage feeds it and everything is
/// asked for, otherwise the resistance between A and B is.
[[nodiscard]] Outcome<Problem> read_expression(const SourceText& source,
                                               const std::optional<Number>& across);

/// Reads a voltage as a circuit file writes it ("12V", "12 V", "1.5 kV", "12").
[[nodiscard]] Outcome<Number> read_voltage(const SourceText& source);

}  // namespace ohmfold

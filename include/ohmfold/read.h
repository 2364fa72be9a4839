// Reading the languages at the edge of the program.
#pragma once

#include "ohmfold/problem.h"
#include "ohmfold/source.h"
#include "ohmfold/work.h"

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

/// Reads a work file: claims about a problem, in the order of their lines. The names of the
/// problem, and those that claims before bring in, tell what a short form such as `V_AB` means;
/// whether a name names anything is for the judge. A wrong unit is no error here, either. All
/// findings are reported in one run; there is a work exactly where none of them is an error. Cost
/// as for read_circuit.
[[nodiscard]] Outcome<Work> read_work(const SourceText& source, const Problem& problem);

/// Reads one more claim, of one line, after those of `before`; nothing and no finding for an empty
/// line or a comment.
[[nodiscard]] Outcome<Claim> read_claim(const SourceText& line, const Problem& problem,
                                        const Work& before);

}  // namespace ohmfold

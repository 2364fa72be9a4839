// The proof that series and parallel had to come to an end, where they did.
#pragma once

#include "ohmfold/trace.h"

namespace ohmfold {

/// Proves that `start`, a network as a case sets it, is not series-parallel as seen by its sources;
/// nothing where it is. What is returned has been verified (InternalError where it does not hold).
[[nodiscard]] std::optional<Certificate> proven_bridge(const Network& start);

/// Fills in `bridge` and `standstill` of a case whose main reduction is there: from its start and
/// from its steps by series and parallel, whatever other steps may follow them.
void prove(CaseTrace& trace);

}  // namespace ohmfold

// Sources of current whose current has no way back.
#pragma once

#include <optional>

#include "ohmfold/trace.h"

namespace ohmfold {

/// A piece of the circuit into which sources of current bring more than they take out of it, if
/// there is one. Within a piece all points hang together by parts that conduct; sources of current
/// are all that joins one piece to another. The current law has a solution exactly where there is
/// no such piece. Cost: linear.
[[nodiscard]] std::optional<Contradiction> find_blocked_current(const Network& start);

}  // namespace ohmfold

// What the terminal that we write to can show.
#pragma once

#include "cli/command.h"
#include "ohmfold/render.h"

namespace ohmfold {

/// How to write text for this choice: colour and Unicode letters only where standard output shows
/// them. A file gets Unicode without colour, so that its bytes do not depend on who makes it.
[[nodiscard]] TextOptions text_options(const OutputChoice& choice);

}  // namespace ohmfold

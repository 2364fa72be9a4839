// What goes to standard error.
#pragma once

#include <string_view>

#include "ohmfold/source.h"

namespace ohmfold {

/// Shows the findings of a text, in their order.
void complain(const Diagnostics& findings, const SourceText& source);

/// "ohmfold: …", for what has no place in a text.
void complain(std::string_view what);

}  // namespace ohmfold

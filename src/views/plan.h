// What a reduction is going to do, said before its first number.
#pragma once

#include "views/chapter.h"

namespace ohmfold::views {

/// One to three sentences: tidying up, the combinations in their order, and the way back.
[[nodiscard]] Words plan(const Scene& scene);

}  // namespace ohmfold::views

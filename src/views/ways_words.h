// The way that is taken where series and parallel stop, the others, and why this one.
#pragma once

#include "views/chapter.h"

namespace ohmfold::views {

/// What leads on, what each way costs, and which is taken. Requires a choice that was made.
[[nodiscard]] Words choice_words(const Scene& scene);

/// "by turning deltas into stars and stars into deltas", …: the way that is taken.
[[nodiscard]] Words way_taken(const Reduction& reduction);

/// "series-parallel", "delta-star", …: the method as other programs read it.
[[nodiscard]] std::string_view method_word(Method method);

}  // namespace ohmfold::views

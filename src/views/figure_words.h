// Figures in words: the line below one, and all of it for those who do not see it.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "views/chapter.h"

namespace ohmfold::views {

/// "The circuit as stated", "Redraw 2: R12 has come; next R5 and R6." `marks`: with what has come
/// and what is next. `case_name`: of several cases, otherwise empty.
[[nodiscard]] Words figure_caption(const Scene& scene, const std::string& case_name,
                                   std::size_t steps, bool marks);

/// One line: "Porch bell: redraw 2".
[[nodiscard]] std::string figure_title(const Scene& scene, const std::string& case_name,
                                       std::size_t steps);

/// Sentences about the network after so many steps: first what there is, in at most 250
/// characters; then point by point which parts meet there, from the source on; then each part from
/// its first to its second point, the source first. Nothing about how parts combine. `values`: by
/// PartId, what stands beside each part; may be empty. Cost: linear in the network and the steps.
[[nodiscard]] std::string figure_description(const Scene& scene, std::size_t steps,
                                             const std::vector<std::string>& values);

}  // namespace ohmfold::views

// What a workbook asks before it shows a step, and what the steps of a reduction are called.
#pragma once

#include <vector>

#include "views/chapter.h"

namespace ohmfold::views {

/// "Step 3: combine R1 and R2": what it is about, but neither how they lie nor what comes of it.
[[nodiscard]] Words step_title(const Scene& scene, const Step& step);

// Each asks only for values that are numbers, not too long to type, and determined.

/// The values that a step makes.
[[nodiscard]] std::vector<Asked> asked_of_step(const Scene& scene, const Step& step);
/// The results of a group of lines of the way back, the first kMostAsked of them.
[[nodiscard]] std::vector<Asked> asked_of_returns(const Scene& scene,
                                                  const std::vector<const Return*>& items);
/// The potentials of the points at which parts are left.
[[nodiscard]] std::vector<Asked> asked_of_points(const Scene& scene, const CaseTrace& trace);
/// The resistance between the two terminals of the reduction.
[[nodiscard]] std::vector<Asked> asked_of_terminals(const Scene& scene, const Reading& resistance);
/// The answers that were told.
[[nodiscard]] std::vector<Asked> asked_of_answers(const Scene& scene,
                                                  const std::vector<const Answer*>& answers);

/// A step asks for no more values than this.
inline constexpr std::size_t kMostAsked = 12;

}  // namespace ohmfold::views

// Which steps the drawing after some steps speaks of.
#pragma once

#include <cstddef>

#include "ohmfold/trace.h"

namespace ohmfold::drawing {

/// Is after so many steps a drawing complete that one looks at: at the start, at the end, between
/// two stages?
[[nodiscard]] bool is_between_stages(const StepLog& steps, std::size_t after);

/// By number of steps made: those from came_begin to now made what has just come, those from now to
/// next_end take what goes next. All of the last and of the next stage; in the middle of a stage,
/// the last step and the next one.
struct Neighbours {
  std::size_t came_begin = 0, now = 0, next_end = 0;
};

/// Requires now <= steps.size().
[[nodiscard]] Neighbours neighbours_of(const StepLog& steps, std::size_t now);

/// How many parts a step makes; their ids count up from Step::makes.
[[nodiscard]] std::size_t parts_made(const Step& step);

}  // namespace ohmfold::drawing

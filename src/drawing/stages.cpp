// The stages around a drawing.
#include "drawing/stages.h"

#include <algorithm>

namespace ohmfold::drawing {

bool is_between_stages(const StepLog& steps, std::size_t after) {
  return after == 0 || after == steps.size() || steps[after - 1].stage != steps[after].stage;
}

Neighbours neighbours_of(const StepLog& steps, std::size_t now) {
  Neighbours near{now, now, now};
  const bool between = is_between_stages(steps, now);
  if (now < steps.size()) {
    do ++near.next_end;
    while (between && !is_between_stages(steps, near.next_end));
  }
  if (now > 0) {
    do --near.came_begin;
    while (between && !is_between_stages(steps, near.came_begin));
  }
  return near;
}

std::size_t parts_made(const Step& step) {
  return step.makes.exists() ? std::max<std::size_t>(1, step.adds.size()) : 0;
}

}  // namespace ohmfold::drawing

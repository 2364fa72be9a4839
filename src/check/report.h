// Words for what a check has found: the item, the remainder, and what it was compared with.
#pragma once

#include <string>

#include "ohmfold/ids.h"
#include "ohmfold/trace.h"

namespace ohmfold::check {

/// "part #4", "point #2": ids as they count, since a check knows no names.
[[nodiscard]] inline std::string name_of(PartId part) {
  return std::string("part #").append(std::to_string(part.index));
}
[[nodiscard]] inline std::string name_of(PointId point) {
  return std::string("point #").append(std::to_string(point.index));
}

/// Notes a failure in a check; the first one found keeps its words.
inline void fail(Check& check, const std::string& detail) {
  if (check.holds) check.detail = detail;
  check.holds = false;
}

}  // namespace ohmfold::check

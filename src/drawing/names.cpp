// How the name of a part or point is set.
#include "drawing/names.h"

#include <cstddef>

namespace ohmfold::drawing {

SplitName split_name(std::string_view name) {
  std::size_t begin = name.size();
  while (begin > 0 && name[begin - 1] >= '0' && name[begin - 1] <= '9') --begin;
  if (begin == 0) return {name, {}};
  const char before = name[begin - 1];
  const bool is_letter = (before >= 'a' && before <= 'z') || (before >= 'A' && before <= 'Z');
  if (!is_letter || name.find('_') != std::string_view::npos) return {name, {}};
  return {name.substr(0, begin), name.substr(begin)};
}

}  // namespace ohmfold::drawing

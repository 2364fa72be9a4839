// How the name of a part or point is set.
#pragma once

#include <string_view>

namespace ohmfold::drawing {

struct SplitName {
  std::string_view stem;    ///< "R" of "R12"
  std::string_view digits;  ///< "12" of "R12": set as a subscript; may be empty
};

/// Splits digits from the end of a name; none from a name that has nothing else ("12"), nor from
/// one whose digits follow something other than a letter ("a-1", "R_1_2").
[[nodiscard]] SplitName split_name(std::string_view name);

}  // namespace ohmfold::drawing

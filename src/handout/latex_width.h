// About how wide text is on paper, for deciding where lines break before LaTeX sees them.
#pragma once

#include <string_view>

namespace ohmfold::handout {

/// What a formula, a table or a note has of a line: on the page of a document of our own, and in a
/// fragment, which fits whatever page the article class makes.
inline constexpr int kOwnLineWidth = 3650;
inline constexpr int kFragmentLineWidth = 3150;

/// In hundredths of an em, on the safe side for the roman and italic faces that LaTeX usually has.
/// Cost: linear.
[[nodiscard]] int text_width(std::string_view text);

/// The same as a subscript.
[[nodiscard]] int script_width(std::string_view text);

}  // namespace ohmfold::handout

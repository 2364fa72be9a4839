// About how wide text is on paper, for deciding where lines break before LaTeX sees them.
#pragma once

#include <string_view>

namespace ohmfold::handout {

/// Of a line of text, and of a formula, with an indent: what the article class leaves at its
/// narrowest, so that a fragment fits wherever it is put.
inline constexpr int kLineWidth = 3150;

/// In hundredths of an em, on the safe side for the roman and italic faces that LaTeX usually has.
/// Cost: linear.
[[nodiscard]] int text_width(std::string_view text);

/// The same as a subscript.
[[nodiscard]] int script_width(std::string_view text);

}  // namespace ohmfold::handout

// Text within LaTeX.
#pragma once

#include <string>
#include <string_view>

namespace ohmfold::drawing {

/// The text for the text mode of LaTeX (also within moving and optional arguments and nodes of
/// TikZ), such that it is set as it stands: nothing in it is a command, a comment, a ligature of
/// hyphens, or the end of a paragraph. Characters that pdfLaTeX does not set without packages
/// become a visible stand-in such as [U+05D0], so that any text compiles. Broken UTF-8 passes as
/// [U+FFFD].
[[nodiscard]] std::string latex_text(std::string_view text);

/// The name of a part or point for text mode: digits at its end are set as a subscript.
[[nodiscard]] std::string latex_name(std::string_view name);

}  // namespace ohmfold::drawing

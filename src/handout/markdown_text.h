// Text within CommonMark.
#pragma once

#include <string>
#include <string_view>

namespace ohmfold::handout {

/// The text on one line, such that a parser of CommonMark gives it back as it stands: no emphasis,
/// link, code, markup, entity, heading or list comes of it, wherever a line begins with it. White
/// space at its ends is dropped, as parsers do.
[[nodiscard]] std::string markdown_text(std::string_view text);

/// Lines as a fenced block of code, whatever stands in them; each line ends with a line end.
[[nodiscard]] std::string fenced(const std::string& lines);

/// The name of a file as the destination of a link.
[[nodiscard]] std::string link_to(std::string_view name);

}  // namespace ohmfold::handout

// Text within XML and HTML.
#pragma once

#include <string>
#include <string_view>

namespace ohmfold::drawing {

/// The text as character data or within quotes, for XML 1.0 and HTML alike: markup characters
/// become references, characters that XML does not allow U+FFFD. Requires UTF-8.
[[nodiscard]] std::string xml_text(std::string_view text);

}  // namespace ohmfold::drawing

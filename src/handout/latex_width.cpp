// About how wide text is on paper.
#include "handout/latex_width.h"

#include <string>

#include "drawing/characters.h"
#include "drawing/latex.h"

namespace ohmfold::handout {

// The widest letters of Computer Modern, roman and italic, are below these.
int text_width(std::string_view text) {
  constexpr std::string_view kNarrow = "ijlt.,:;'!|()[]";
  constexpr int kStandIn = 520;  // [U+05D0]
  constexpr std::string_view kWide = "mwMW@%—…";
  int width = 0;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t begin = at;
    const std::uint32_t character = drawing::next_character(text, at);
    const std::string_view one = text.substr(begin, at - begin);
    if (character >= 0x80 && drawing::latex_text(one).starts_with("{[}U+")) {
      width += kStandIn;
    } else if (character >= 0x80 || kWide.find(one) != std::string_view::npos) {
      width += 100 * static_cast<int>(drawing::columns_of(character));
    } else if (character == ' ' || kNarrow.find(one) != std::string_view::npos) {
      width += 38;
    } else if (character >= 'A' && character <= 'Z') {
      width += 80;
    } else {
      width += 54;
    }
  }
  return width;
}

int script_width(std::string_view text) {
  constexpr int kPercent = 80;
  return text_width(text) * kPercent / 100;
}

}  // namespace ohmfold::handout

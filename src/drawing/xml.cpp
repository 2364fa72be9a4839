// Text within XML and HTML: what would be read as markup becomes a reference.
#include "drawing/xml.h"

namespace ohmfold::drawing {

namespace {

constexpr std::string_view kReplacement = "\xEF\xBF\xBD";  // U+FFFD

/// U+FFFE and U+FFFF, which XML 1.0 leaves out, in UTF-8.
bool is_no_character(std::string_view rest) {
  return rest.starts_with("\xEF\xBF\xBE") || rest.starts_with("\xEF\xBF\xBF");
}

}  // namespace

std::string xml_text(std::string_view text) {
  std::string written;
  written.reserve(text.size());
  for (std::size_t at = 0; at < text.size(); ++at) {
    const char c = text[at];
    const auto code = static_cast<unsigned char>(c);
    switch (c) {
      case '&':
        written += "&amp;";
        continue;
      case '<':
        written += "&lt;";
        continue;
      case '>':
        written += "&gt;";
        continue;
      case '"':
        written += "&quot;";
        continue;
      case '\'':
        written += "&#39;";
        continue;
      default:
        break;
    }
    const bool control = (code < 0x20 && c != '\t' && c != '\n') || code == 0x7F;
    if (control) {
      written += kReplacement;
    } else if (is_no_character(text.substr(at))) {
      written += kReplacement;
      at += 2;
    } else {
      written += c;
    }
  }
  return written;
}

}  // namespace ohmfold::drawing

// Text within CommonMark: what a parser would take for a sign of structure is escaped.
#include "handout/markdown_text.h"

#include <algorithm>

namespace ohmfold::handout {

namespace {

bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

/// Within a line. The bar and the dollar are signs in common extensions.
bool is_sign(char c) {
  return std::string_view("\\`*_[]<>&~|$#").find(c) != std::string_view::npos;
}

/// The dot or bracket that would make a number at the start of a line that of a list.
std::size_t end_of_number(std::string_view line) {
  std::size_t end = 0;
  while (end < line.size() && is_digit(line[end])) ++end;
  const bool sign = end > 0 && end < line.size() && (line[end] == '.' || line[end] == ')');
  return sign ? end : std::string_view::npos;
}

/// One line without control characters, which no parser has to keep.
std::string on_one_line(std::string_view text) {
  std::string line;
  for (const char c : text) {
    const auto code = static_cast<unsigned char>(c);
    if (c == '\n' || c == '\r' || c == '\t' || c == ' ') {
      line += ' ';
    } else if (code < 0x20 || code == 0x7F) {
      line += "\uFFFD";
    } else {
      line += c;
    }
  }
  line.erase(0, std::min(line.find_first_not_of(' '), line.size()));
  line.erase(line.find_last_not_of(' ') + 1);
  return line;
}

}  // namespace

std::string markdown_text(std::string_view text) {
  const std::string line = on_one_line(text);
  const std::size_t number = end_of_number(line);
  std::string written;
  for (std::size_t at = 0; at < line.size(); ++at) {
    const char c = line[at];
    const bool begins = at == 0 && (c == '+' || c == '-' || c == '=');
    // Some parsers make dashes of hyphens and one character of three dots.
    const bool again = at > 0 && line[at - 1] == c && (c == '-' || c == '.');
    if (is_sign(c) || begins || again || at == number) written += '\\';
    written += c;
  }
  return written;
}

std::string fenced(const std::string& lines) {
  std::size_t longest = 2;
  for (std::size_t at = lines.find('`'); at != std::string::npos; at = lines.find('`', at)) {
    const std::size_t end = std::min(lines.find_first_not_of('`', at), lines.size());
    longest = std::max(longest, end - at);
    at = end;
  }
  const std::string fence(longest + 1, '`');
  return fence + "text\n" + lines + fence + "\n";
}

std::string link_to(std::string_view name) {
  constexpr std::string_view kDigits = "0123456789ABCDEF";
  std::string link;
  for (const char c : name) {
    const auto code = static_cast<unsigned char>(c);
    const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || is_digit(c) ||
                       c == '-' || c == '.' || c == '_' || c == '~';
    if (plain) {
      link += c;
    } else {
      link += '%';
      link += kDigits[code / 16];
      link += kDigits[code % 16];
    }
  }
  return link;
}

}  // namespace ohmfold::handout

// Characters on a terminal: width, ASCII stand-ins, line breaks.
#include "views/lettering.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <utility>

#include "drawing/characters.h"

namespace ohmfold::views {

namespace {

/// How many bytes from `at` on are printable ASCII: most text is, and needs no decoding.
std::size_t plain_length(std::string_view text, std::size_t at) {
  std::size_t end = at;
  while (end < text.size() && text[end] >= ' ' && text[end] <= '~') ++end;
  return end - at;
}

std::string_view ascii_for(std::string_view character) {
  using Pair = std::pair<std::string_view, std::string_view>;
  constexpr std::array<Pair, 39> kPairs{{
      {"Ω", "ohm"},   {"\u2126", "ohm"}, {"µ", "u"},           {"\u03BC", "u"}, {"∥", "||"},
      {"≈", "~"},     {"−", "-"},        {"·", "*"},           {"×", "x"},      {"→", "->"},
      {"…", "..."},   {"–", "-"},        {"—", "-"},           {"‘", "'"},      {"’", "'"},
      {"“", "\""},    {"”", "\""},       {"²", "^2"},          {"°", " deg"},   {"•", "*"},
      {"─", "-"},     {"═", "="},        {"\u00A0", "\u00A0"}, {"½", "1/2"},    {"¼", "1/4"},
      {"¾", "3/4"},   {"≤", "<="},       {"≥", ">="},          {"³", "^3"},     {"⁴", "^4"},
      {"⁵", "^5"},    {"⁶", "^6"},       {"⁷", "^7"},          {"⁸", "^8"},     {"⁹", "^9"},
      {"√", "sqrt "}, {"±", "+-"},       {"✓", "+"},           {"✗", "x"},
  }};
  for (const auto& [from, to] : kPairs) {
    if (character == from) return to;
  }
  return "?";
}

}  // namespace

std::size_t display_width(std::string_view text) {
  std::size_t width = 0;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t plain = plain_length(text, at);
    width += plain;
    at += plain;
    if (at < text.size()) width += drawing::columns_of(drawing::next_character(text, at));
  }
  return width;
}

std::string lettered(std::string_view text, Letters letters) {
  std::string result;
  result.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t plain = plain_length(text, at);
    result.append(text, at, plain);
    at += plain;
    if (at == text.size()) break;
    const std::size_t begin = at;
    const std::uint32_t character = drawing::next_character(text, at);
    const std::string_view written = text.substr(begin, at - begin);
    if (drawing::is_control(character)) {
      result += '?';
    } else if (character < 0x80 || letters == Letters::unicode) {
      result += written;
    } else {
      result += ascii_for(written);
    }
  }
  return result;
}

std::string spaced(std::string_view text) {
  constexpr std::string_view kNoBreakSpace = "\u00A0";
  std::string result;
  result.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t space = std::min(text.find(kNoBreakSpace, at), text.size());
    result.append(text, at, space - at);
    if (space == text.size()) break;
    result += ' ';
    at = space + kNoBreakSpace.size();
  }
  return result;
}

std::vector<std::string> wrapped(std::string_view text, std::size_t width, std::size_t first,
                                 std::size_t hanging) {
  std::vector<std::string> lines;
  std::string line(first, ' ');
  std::size_t used = first;
  bool is_empty = true;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t begin = text.find_first_not_of(' ', at);
    if (begin == std::string_view::npos) break;
    const std::size_t end = std::min(text.find(' ', begin), text.size());
    const std::string_view word = text.substr(begin, end - begin);
    const std::size_t columns = display_width(word);
    if (!is_empty && used + 1 + columns > width) {
      lines.push_back(std::move(line));
      line = std::string(hanging, ' ');
      used = hanging;
      is_empty = true;
    }
    if (!is_empty) {
      line += ' ';
      ++used;
    }
    line += spaced(word);
    used += columns;
    is_empty = false;
    at = end;
  }
  lines.push_back(std::move(line));
  return lines;
}

}  // namespace ohmfold::views

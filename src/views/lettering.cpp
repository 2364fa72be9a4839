// Characters on a terminal: width, ASCII stand-ins, line breaks.
#include "views/lettering.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <utility>

namespace ohmfold::views {

namespace {

/// The character at `at`, which moves behind it. A broken sequence counts as one character each
/// byte.
std::uint32_t next_character(std::string_view text, std::size_t& at) {
  const auto byte = [&](std::size_t i) {
    return static_cast<std::uint32_t>(static_cast<unsigned char>(text[i]));
  };
  const std::uint32_t lead = byte(at);
  std::size_t length = 1;
  if (lead >= 0xF0) {
    length = 4;
  } else if (lead >= 0xE0) {
    length = 3;
  } else if (lead >= 0xC0) {
    length = 2;
  }
  if (length == 1 || at + length > text.size()) {
    ++at;
    return lead;
  }
  std::uint32_t character = lead & (0xFFU >> (length + 1));
  for (std::size_t i = 1; i < length; ++i) character = (character << 6U) | (byte(at + i) & 0x3FU);
  at += length;
  return character;
}

/// How many bytes from `at` on are printable ASCII: most text is, and needs no decoding.
std::size_t plain_length(std::string_view text, std::size_t at) {
  std::size_t end = at;
  while (end < text.size() && text[end] >= ' ' && text[end] <= '~') ++end;
  return end - at;
}

bool is_control(std::uint32_t c) {
  const bool is_direction_mark = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
  return c < 0x20 || (c >= 0x7F && c < 0xA0) || is_direction_mark;
}

struct Range {
  std::uint32_t first, last;
};

template <std::size_t N>
bool within(std::uint32_t c, const std::array<Range, N>& ranges) {
  for (const Range& range : ranges) {
    if (c >= range.first && c <= range.last) return true;
  }
  return false;
}

std::size_t width_of(std::uint32_t c) {
  // Unicode Standard Annex 11, from memory: the blocks that matter in running text.
  constexpr std::array<Range, 4> kNone{
      {{0x300, 0x36F}, {0x200B, 0x200F}, {0x20D0, 0x20FF}, {0xFE00, 0xFE0F}}};
  constexpr std::array<Range, 7> kTwo{{{0x1100, 0x115F},
                                       {0x2E80, 0xA4CF},
                                       {0xAC00, 0xD7A3},
                                       {0xF900, 0xFAFF},
                                       {0xFE30, 0xFE6F},
                                       {0xFF00, 0xFF60},
                                       {0x1F300, 0x3FFFD}}};
  if (c < 0x300) return 1;
  if (within(c, kNone)) return 0;
  return within(c, kTwo) ? 2 : 1;
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
    if (at < text.size()) width += width_of(next_character(text, at));
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
    const std::uint32_t character = next_character(text, at);
    const std::string_view written = text.substr(begin, at - begin);
    if (is_control(character)) {
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

// Characters of UTF-8 text, and their width on a terminal.
#include "drawing/characters.h"

#include <algorithm>
#include <array>

namespace ohmfold::drawing {

namespace {

constexpr std::uint32_t kReplacement = 0xFFFD;

struct Range {
  std::uint32_t first, last;
};

template <std::size_t N>
bool within(std::uint32_t c, const std::array<Range, N>& ranges) {
  return std::any_of(ranges.begin(), ranges.end(),
                     [c](const Range& range) { return c >= range.first && c <= range.last; });
}

/// How many bytes follow a first byte; 0 where it can begin no longer sequence.
std::size_t following(std::uint32_t lead) {
  if (lead >= 0xF0 && lead <= 0xF4) return 3;
  if (lead >= 0xE0 && lead < 0xF0) return 2;
  if (lead >= 0xC2 && lead < 0xE0) return 1;
  return 0;
}

}  // namespace

std::uint32_t next_character(std::string_view text, std::size_t& at) {
  const auto byte = [&](std::size_t i) {
    return static_cast<std::uint32_t>(static_cast<unsigned char>(text[i]));
  };
  const std::uint32_t lead = byte(at);
  const std::size_t more = following(lead);
  if (more == 0 || at + more >= text.size()) {
    ++at;
    return lead < 0x80 ? lead : kReplacement;
  }
  std::uint32_t character = lead & (0x3FU >> more);
  for (std::size_t i = 1; i <= more; ++i) {
    if ((byte(at + i) & 0xC0U) != 0x80U) {
      ++at;
      return kReplacement;
    }
    character = (character << 6U) | (byte(at + i) & 0x3FU);
  }
  at += more + 1;
  return character;
}

std::size_t columns_of(std::uint32_t character) {
  // Unicode Standard Annex 11, from memory: the blocks that matter in running text.
  constexpr std::array<Range, 6> kNone{{{0x300, 0x36F},
                                        {0x591, 0x5BD},
                                        {0x64B, 0x65F},
                                        {0x200B, 0x200F},
                                        {0x20D0, 0x20FF},
                                        {0xFE00, 0xFE0F}}};
  constexpr std::array<Range, 7> kTwo{{{0x1100, 0x115F},
                                       {0x2E80, 0xA4CF},
                                       {0xAC00, 0xD7A3},
                                       {0xF900, 0xFAFF},
                                       {0xFE30, 0xFE6F},
                                       {0xFF00, 0xFF60},
                                       {0x1F300, 0x3FFFD}}};
  if (character < 0x300) return 1;
  if (within(character, kNone)) return 0;
  return within(character, kTwo) ? 2 : 1;
}

bool is_control(std::uint32_t character) {
  constexpr std::array<Range, 6> kControl{{{0x0, 0x1F},
                                           {0x7F, 0x9F},
                                           {0x200E, 0x200F},
                                           {0x2028, 0x202E},
                                           {0x2066, 0x2069},
                                           {0xFEFF, 0xFEFF}}};
  return within(character, kControl);
}

}  // namespace ohmfold::drawing

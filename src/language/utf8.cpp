// Characters of UTF-8 text.

#include "language/utf8.h"

namespace ohmfold {
namespace {

constexpr Character kInvalid{0, 1, false};

constexpr bool is_within(char32_t code, char32_t first, char32_t last) {
  return code >= first && code <= last;
}

/// Bytes that a leading byte announces, 0 where it cannot lead.
std::uint32_t announced_length(unsigned char lead) {
  if (lead < 0x80) return 1;
  if (lead >= 0xC2 && lead <= 0xDF) return 2;
  if (lead >= 0xE0 && lead <= 0xEF) return 3;
  if (lead >= 0xF0 && lead <= 0xF4) return 4;
  return 0;
}

}  // namespace

Character character_at(std::string_view text, std::size_t at) {
  const auto lead = static_cast<unsigned char>(text[at]);
  const std::uint32_t length = announced_length(lead);
  if (length == 1) return {lead, 1, true};
  if (length == 0 || text.size() - at < length) return kInvalid;
  char32_t code = lead & (0x7FU >> length);
  for (const char follow : text.substr(at + 1, length - 1)) {
    const auto byte = static_cast<unsigned char>(follow);
    if ((byte & 0xC0U) != 0x80U) return kInvalid;
    code = (code << 6U) | (byte & 0x3FU);
  }
  const bool overlong = (length == 3 && code < 0x800) || (length == 4 && code < 0x10000);
  if (overlong || is_within(code, 0xD800, 0xDFFF) || code > 0x10FFFF) return kInvalid;
  return {code, length, true};
}

bool is_stray(char32_t code) {
  if (code < 0x20) return code != '\t';
  return is_within(code, 0x7F, 0x9F) || is_within(code, 0x200E, 0x200F) ||
         is_within(code, 0x2028, 0x202E) || is_within(code, 0x2066, 0x2069) || code == 0xFEFF;
}

bool is_unusual_space(char32_t code) {
  return code == 0xA0 || is_within(code, 0x2000, 0x200A) || code == 0x202F || code == 0x205F ||
         code == 0x3000;
}

std::string shown(std::string_view text) {
  constexpr std::string_view kReplacement = "\xEF\xBF\xBD";
  std::string result;
  for (std::size_t at = 0; at < text.size();) {
    const Character character = character_at(text, at);
    if (!character.valid || is_stray(character.code)) {
      result += kReplacement;
    } else if (character.code == '\t') {
      result += ' ';
    } else {
      result += text.substr(at, character.length);
    }
    at += character.length;
  }
  return result;
}

}  // namespace ohmfold

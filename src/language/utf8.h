// Characters of UTF-8 text.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace ohmfold {

struct Character {
  char32_t code = 0;
  std::uint32_t length = 1;  ///< bytes
  bool valid = true;         ///< false: one byte that does not belong to UTF-8
};

/// The character that begins at byte `at`. Requires at < text.size(). Overlong forms, surrogates
/// and code points beyond U+10FFFF are not valid (RFC 3629).
[[nodiscard]] Character character_at(std::string_view text, std::size_t at);

/// Characters that a text must not hold: controls other than the tab, marks that turn the direction
/// of writing, line separators. A terminal that shows them may be made to lie.
[[nodiscard]] bool is_stray(char32_t code);

/// A space that is wider, narrower or more sticky than the plain one.
[[nodiscard]] bool is_unusual_space(char32_t code);

/// The text with every byte that is not UTF-8 and every stray character as U+FFFD, a tab as one
/// space: each character takes one place.
[[nodiscard]] std::string shown(std::string_view text);

}  // namespace ohmfold

// Characters of UTF-8 text: one after another, and how many columns each takes on a terminal.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace ohmfold::drawing {

/// The character at `at`, which moves behind it. A broken sequence counts as one U+FFFD each byte.
/// Requires at < text.size().
[[nodiscard]] std::uint32_t next_character(std::string_view text, std::size_t& at);

/// 0 for combining marks and other characters without a width, 2 for East Asian wide ones, else 1.
[[nodiscard]] std::size_t columns_of(std::uint32_t character);

/// Does nothing but steer: control characters and those that turn the direction of the text.
[[nodiscard]] bool is_control(std::uint32_t character);

}  // namespace ohmfold::drawing

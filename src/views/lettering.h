// Characters on a terminal: how wide they are, what stands for them in ASCII, which never pass.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "ohmfold/decimal.h"

namespace ohmfold::views {

/// Columns that UTF-8 text takes: combining marks none, East Asian wide characters two.
[[nodiscard]] std::size_t display_width(std::string_view text);

/// The text as it may be sent to a terminal: control characters become "?", and with Letters::ascii
/// every other character a plain one ("Ω" is "ohm", "∥" is "||"). U+00A0 stays, for wrapped().
[[nodiscard]] std::string lettered(std::string_view text, Letters letters);

/// The text with plain spaces in place of U+00A0.
[[nodiscard]] std::string spaced(std::string_view text);

/// Lines of at most `width` columns, broken at spaces only; the first begins after `first` columns,
/// the others after `hanging`. A word that is wider stands on a line of its own. U+00A0 holds words
/// together and is written as a space.
[[nodiscard]] std::vector<std::string> wrapped(std::string_view text, std::size_t width,
                                               std::size_t first = 0, std::size_t hanging = 0);

}  // namespace ohmfold::views

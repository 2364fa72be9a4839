// Exponents as running text writes them: "r²".
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace ohmfold::handout {

/// Raised digits that the text begins with: as plain digits, and how many bytes they take.
struct Raised {
  std::string digits;
  std::size_t bytes = 0;
};
[[nodiscard]] Raised raised_digits(std::string_view text);

}  // namespace ohmfold::handout

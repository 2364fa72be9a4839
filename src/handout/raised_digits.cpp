// Exponents as running text writes them.
#include "handout/raised_digits.h"

#include <array>

namespace ohmfold::handout {

Raised raised_digits(std::string_view text) {
  constexpr std::array<std::string_view, 10> kRaised{"⁰", "¹", "²", "³", "⁴",
                                                     "⁵", "⁶", "⁷", "⁸", "⁹"};
  Raised raised;
  for (bool found = true; found;) {
    found = false;
    for (std::size_t digit = 0; digit < kRaised.size(); ++digit) {
      if (!text.substr(raised.bytes).starts_with(kRaised.at(digit))) continue;
      raised.digits += std::to_string(digit);
      raised.bytes += kRaised.at(digit).size();
      found = true;
    }
  }
  return raised;
}

}  // namespace ohmfold::handout

// A polynomial as its terms, for who evaluates or writes it.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <vector>

#include "ohmfold/value.h"

namespace ohmfold {

/// coefficient * symbols[0]^powers[0] * symbols[1]^powers[1] …
struct Term {
  Number coefficient;
  std::vector<std::size_t> powers;
};

/// The terms in falling order: by degree, then by the powers, the first symbol counting most. A
/// single term of coefficient 0 for zero. Requires a denominator free of the symbols.
[[nodiscard]] std::vector<Term> terms_of(const Number& polynomial,
                                         std::span<const std::string> symbols);

}  // namespace ohmfold

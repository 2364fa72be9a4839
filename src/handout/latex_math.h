// Names, amounts and formulas for the math mode of LaTeX, and about how wide they are.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "views/formula.h"

namespace ohmfold::handout {

/// Widths are in hundredths of an em: estimates on the safe side for the usual faces.
struct MathText {
  std::string code;
  int width = 0;
};

/// "R12" as R with the subscript 12; a name of several letters as one word.
[[nodiscard]] MathText math_name(std::string_view name);

/// The symbol with its subscript upright: it is the name of a part, of points, or a word.
[[nodiscard]] MathText math_symbol(const views::Symbol& symbol);

/// A decimal with siunitx, a fraction with a bar.
[[nodiscard]] MathText math_amount(const views::Amount& amount);

/// The same for text mode, with fractions on the line: "18/5 Ω".
[[nodiscard]] MathText text_amount(const views::Amount& amount);

/// The formula in rows of at most `room` as far as it can be broken: between terms and factors,
/// before the sign; within fractions and brackets by stacking. No row begins with a bracket that
/// LaTeX could take for an option.
[[nodiscard]] std::vector<MathText> math_rows(const views::Expression& expression, int room);

}  // namespace ohmfold::handout

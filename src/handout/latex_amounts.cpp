// Amounts for LaTeX: decimals with siunitx, fractions, and quotients of polynomials.
#include <algorithm>
#include <array>
#include <utility>

#include "drawing/latex.h"
#include "handout/latex_math.h"
#include "handout/latex_polynomial.h"
#include "handout/latex_width.h"
#include "ohmfold/symbolic.h"
#include "views/amounts.h"

namespace ohmfold::handout {

namespace {

constexpr std::string_view kNoBreakSpace = "\u00A0";
constexpr std::string_view kMinus = "\u2212";

struct Macro {
  std::string_view sign, macro;
};
constexpr std::array<Macro, 5> kUnits{
    {{"Ω", "\\ohm"}, {"V", "\\volt"}, {"A", "\\ampere"}, {"W", "\\watt"}, {"S", "\\siemens"}}};
constexpr std::array<Macro, 8> kPrefixes{{{"", ""},
                                          {"p", "\\pico"},
                                          {"n", "\\nano"},
                                          {"µ", "\\micro"},
                                          {"m", "\\milli"},
                                          {"k", "\\kilo"},
                                          {"M", "\\mega"},
                                          {"G", "\\giga"}}};

/// "kΩ" as macros of siunitx.
std::string unit_macros(std::string_view text) {
  for (const Macro& unit : kUnits) {
    for (const Macro& prefix : kPrefixes) {
      if (text.size() == prefix.sign.size() + unit.sign.size() && text.starts_with(prefix.sign) &&
          text.ends_with(unit.sign)) {
        return std::string(prefix.macro).append(unit.macro);
      }
    }
  }
  throw InternalError("a unit without a macro");
}

/// What the views write, taken apart again: they decide on form, rounding and prefix.
struct Pieces {
  std::string number;  ///< with a plain hyphen for minus
  std::string unit;    ///< as macros
  int width = 0;       ///< of it on one line
};

Pieces pieces_of(const views::Amount& amount) {
  const std::string text = views::amount_text(amount, Letters::unicode);
  // A described amount has a plain space before its unit.
  std::size_t space = text.rfind(kNoBreakSpace);
  std::size_t length = kNoBreakSpace.size();
  if (const std::size_t plain = text.rfind(' ');
      plain != std::string::npos && (space == std::string::npos || plain > space)) {
    space = plain;
    length = 1;
  }
  ensure(space != std::string::npos, "an amount has a unit");
  Pieces pieces{text.substr(0, space), unit_macros(text.substr(space + length)), text_width(text)};
  if (pieces.number.starts_with(kMinus)) pieces.number.replace(0, kMinus.size(), "-");
  return pieces;
}

bool is_decimal(std::string_view number) {
  return number.find_first_not_of("-0123456789.e") == std::string_view::npos;
}

std::string quantity_macro(const Pieces& pieces) {
  return "\\qty{" + pieces.number + "}{" + pieces.unit + "}";
}

std::string with_unit(const std::string& number, const Pieces& pieces) {
  return number + "\\,\\unit{" + pieces.unit + "}";
}

constexpr int kUnitWidth = 200;

}  // namespace

MathText math_amount(const views::Amount& amount) {
  const Pieces pieces = pieces_of(amount);
  if (is_decimal(pieces.number)) return {quantity_macro(pieces), pieces.width};
  const Number& number = amount.quantity.number;
  if (views::is_too_long_to_show(number)) {
    return {with_unit("\\text{" + drawing::latex_text(pieces.number) + "}", pieces), pieces.width};
  }
  const MathText written = math_number(number);
  return {with_unit(written.code, pieces), written.width + kUnitWidth};
}

MathText text_amount(const views::Amount& amount) {
  const Pieces pieces = pieces_of(amount);
  if (is_decimal(pieces.number)) return {quantity_macro(pieces), pieces.width};
  const Number& number = amount.quantity.number;
  if (views::is_too_long_to_show(number)) {
    return {drawing::latex_text(pieces.number) + "~\\unit{" + pieces.unit + "}", pieces.width};
  }
  const std::string line = number.is_symbolic()
                               ? polynomial_line(bracketed_line(number, Letters::unicode))
                               : pieces.number;
  return {"$" + with_unit(line, pieces) + "$", pieces.width};
}

}  // namespace ohmfold::handout

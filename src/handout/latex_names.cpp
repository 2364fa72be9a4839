// Names and symbols of quantities for the math mode of LaTeX.
#include <algorithm>

#include "drawing/latex.h"
#include "drawing/names.h"
#include "handout/latex_math.h"
#include "handout/latex_width.h"
#include "handout/raised_digits.h"

namespace ohmfold::handout {

namespace {

bool is_letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}
bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

/// Can all of it stand in math mode as it is, but for underscores?
bool is_plain(std::string_view text) {
  return !text.empty() && std::all_of(text.begin(), text.end(), [](char c) {
    return is_letter(c) || is_digit(c) || c == '_' || c == '(' || c == ')' || c == ',';
  });
}

/// The text in one of the alphabets of math mode, or as text where it has other characters.
std::string in_alphabet(std::string_view alphabet, std::string_view text) {
  if (text.size() == 1 && alphabet == "mathit" && is_letter(text.front())) return std::string(text);
  const std::string written = drawing::latex_text(text);
  const std::string_view command = is_plain(text) ? alphabet : "text";
  return std::string("\\").append(command) + "{" + written + "}";
}

/// "R3²", "R3^4": the name and its exponent.
struct Power {
  std::string_view name;
  std::string exponent;
};

Power split_power(std::string_view text) {
  const std::size_t hat = text.find('^');
  if (hat != std::string_view::npos) {
    return {text.substr(0, hat), std::string(text.substr(hat + 1))};
  }
  for (std::size_t at = 1; at < text.size(); ++at) {
    const Raised raised = raised_digits(text.substr(at));
    if (raised.bytes > 0) return {text.substr(0, at), raised.digits};
  }
  return {text, {}};
}

}  // namespace

MathText math_name(std::string_view name) {
  const Power power = split_power(name);
  if (power.name.starts_with("√")) {
    const std::string radicand = drawing::latex_text(power.name.substr(std::string("√").size()));
    return {"\\sqrt{" + radicand + "}", 100 + text_width(radicand)};
  }
  const auto [stem, digits] = drawing::split_name(power.name);
  MathText written{in_alphabet("mathit", stem), text_width(stem)};
  if (!digits.empty()) {
    written.code.append("_{").append(digits).append("}");
    written.width += script_width(digits);
  }
  if (!power.exponent.empty()) {
    written.code += "^{" + power.exponent + "}";
    if (digits.empty()) written.width += script_width(power.exponent);
  }
  return written;
}

MathText math_symbol(const views::Symbol& symbol) {
  MathText written = math_name(symbol.letter);
  if (symbol.subscript.empty()) return written;
  written.code += "_{" + in_alphabet("mathrm", symbol.subscript) + "}";
  written.width += script_width(symbol.subscript);
  return written;
}

}  // namespace ohmfold::handout

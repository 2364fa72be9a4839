// Numbers without a unit for the math mode of LaTeX.
#include "handout/latex_polynomial.h"

#include <algorithm>
#include <utility>

#include "handout/latex_width.h"
#include "handout/raised_digits.h"
#include "ohmfold/symbolic.h"

namespace ohmfold::handout {

namespace {

constexpr std::string_view kMinus = "\u2212";
constexpr std::string_view kNoBreakSpace = "\u00A0";
/// Above and below a bar no row is wider.
constexpr int kStackWidth = 2000;

bool is_word(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
}

/// The next piece: a word with what raises it to a power, or one other character.
std::string_view next_piece(std::string_view text) {
  std::size_t end = 0;
  while (end < text.size() && is_word(text[end])) ++end;
  if (end == 0) {
    end = 1;
    while (end < text.size() && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) ++end;
  }
  end += raised_digits(text.substr(end)).bytes;
  return text.substr(0, end);
}

/// A piece of a term in math mode.
MathText piece_math(std::string_view piece) {
  if (piece == kMinus || piece == "-") return {"-", 125};
  if (piece == "+") return {"+", 125};
  if (piece == " " || piece == kNoBreakSpace) return {"\\,", 17};
  if (piece == "(" || piece == "/") return {std::string(piece), 50};
  if (piece.starts_with(")")) {
    const std::string power = raised_digits(piece.substr(1)).digits;
    return {power.empty() ? ")" : ")^{" + power + "}", 50 + script_width(power)};
  }
  const bool digits = piece.find_first_not_of("0123456789") == std::string_view::npos;
  return digits ? MathText{std::string(piece), text_width(piece)} : math_name(piece);
}

/// The terms of a polynomial as text, each with its sign before it.
std::vector<MathText> terms(std::string_view text) {
  std::vector<MathText> found(1);
  int depth = 0;
  while (!text.empty()) {
    const std::string_view piece = next_piece(text);
    if (piece == "(") ++depth;
    if (piece.starts_with(")")) --depth;
    const bool sign = piece == "+" || piece == kMinus || piece == "-";
    if (sign && depth == 0 && !found.back().code.empty()) found.emplace_back();
    const bool space = piece == " " || piece == kNoBreakSpace;
    const std::string_view rest = text.substr(piece.size());
    const bool before_sign = rest.starts_with("+") || rest.starts_with(kMinus);
    const bool after_sign = found.back().code.ends_with("+") || found.back().code.ends_with("-");
    // Signs bring their own space.
    if (!space || (!before_sign && !after_sign)) {
      const MathText written = piece_math(piece);
      found.back().code += written.code;
      found.back().width += written.width;
    }
    text = rest;
  }
  return found;
}

/// A rational factor in front of a product of symbols gets a bar: "3/2 r".
std::vector<MathText> terms_with_bars(std::string_view text) {
  const std::size_t slash = text.find('/');
  const std::size_t end = text.find_first_not_of("0123456789", slash + 1);
  const std::size_t begin = text.starts_with(kMinus) ? kMinus.size() : 0;
  const bool leading =
      slash != std::string_view::npos &&
      text.substr(begin, slash - begin).find_first_not_of("0123456789") == std::string_view::npos;
  if (!leading) return terms(text);
  const std::string below(
      text.substr(slash + 1, end == std::string_view::npos ? end : end - slash - 1));
  MathText first{std::string(begin > 0 ? "-" : "") + "\\tfrac{" +
                     std::string(text.substr(begin, slash - begin)) + "}{" + below + "}",
                 text_width(text.substr(0, end))};
  std::vector<MathText> found{std::move(first)};
  if (end == std::string_view::npos) return found;
  const auto rest = terms(text.substr(end));
  found.front().code += rest.front().code;
  found.front().width += rest.front().width;
  found.insert(found.end(), rest.begin() + 1, rest.end());
  return found;
}

}  // namespace

MathText joined_or_stacked(const std::vector<MathText>& pieces, int room) {
  MathText whole;
  for (const MathText& piece : pieces) {
    whole.code += piece.code;
    whole.width += piece.width;
  }
  if (whole.width <= room || pieces.size() < 2) return whole;
  MathText stack{"\\begin{gathered}", 0};
  int row = 0;
  for (const MathText& piece : pieces) {
    if (row > 0 && row + piece.width > room) {
      stack.code += "\\\\{}";
      row = 0;
    }
    stack.code += piece.code;
    row += piece.width;
    stack.width = std::max(stack.width, row);
  }
  stack.code += "\\end{gathered}";
  return stack;
}

MathText bracketed(const MathText& inner) {
  const bool high = inner.code.find("frac{") != std::string::npos ||
                    inner.code.find("gathered") != std::string::npos;
  return {(high ? "\\left(" : "(") + inner.code + (high ? "\\right)" : ")"), inner.width + 100};
}

MathText math_number(const Number& number) {
  const FractionText text = fraction_text(number, Letters::unicode);
  const MathText above = joined_or_stacked(terms_with_bars(text.above), kStackWidth);
  if (text.below.empty()) return text.above_is_sum ? bracketed(above) : above;
  const MathText below = joined_or_stacked(terms(text.below), kStackWidth);
  const bool negative = !text.above_is_sum && above.code.starts_with("-");
  return {(negative ? "-\\frac{" + above.code.substr(1) : "\\frac{" + above.code) + "}{" +
              below.code + "}",
          std::max(above.width, below.width) + 25 + (negative ? 80 : 0)};
}

std::string polynomial_line(std::string_view text) {
  std::string line;
  for (const MathText& term : terms(text)) line += term.code;
  return line;
}

}  // namespace ohmfold::handout

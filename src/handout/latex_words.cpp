// Words for the text mode of LaTeX.
#include "drawing/characters.h"
#include "drawing/latex.h"
#include "handout/latex_math.h"
#include "handout/latex_width.h"
#include "handout/latex_working.h"

namespace ohmfold::handout {

namespace {

/// Text that may be broken within a word that would not fit a line: every few characters of it,
/// never before one that joins the character before.
std::string breakable_text(std::string_view text) {
  constexpr std::size_t kLongWord = 24;
  constexpr std::size_t kStep = 8;
  std::string written;
  std::size_t columns = 0;
  std::size_t begin = 0;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t before = at;
    const std::uint32_t character = drawing::next_character(text, at);
    const bool joins = drawing::columns_of(character) == 0;
    if (columns >= kLongWord && columns % kStep == 0 && !joins && character != ' ') {
      written += drawing::latex_text(text.substr(begin, before - begin)) + "\\allowbreak{}";
      begin = before;
    }
    columns = character == ' ' ? 0 : columns + 1;
  }
  return written + drawing::latex_text(text.substr(begin));
}

}  // namespace

TextOfWords latex_words(const views::Words& words) {
  struct Writer {
    TextOfWords operator()(const views::Plain& plain) const {
      return {breakable_text(plain.text), text_width(plain.text)};
    }
    TextOfWords operator()(const views::PartName& part) const {
      constexpr std::size_t kLongName = 40;
      // A part without a name is called by what it is: "wire 3".
      if (part.text.find(' ') != std::string::npos || part.text.size() > kLongName) {
        return {breakable_text(part.text), text_width(part.text)};
      }
      return in_math(math_name(part.text));
    }
    TextOfWords operator()(const views::PointName& point) const {
      return {breakable_text(point.text), text_width(point.text)};
    }
    TextOfWords operator()(const views::Symbol& symbol) const {
      return in_math(math_symbol(symbol));
    }
    TextOfWords operator()(const views::Amount& amount) const {
      const MathText text = text_amount(amount);
      return {text.code, text.width};
    }
    static TextOfWords in_math(const MathText& text) { return {"$" + text.code + "$", text.width}; }
  };
  TextOfWords text;
  for (const views::Run& run : words.runs()) {
    const TextOfWords one = std::visit(Writer{}, run);
    text.code += one.code;
    text.width += one.width;
  }
  return text;
}

}  // namespace ohmfold::handout

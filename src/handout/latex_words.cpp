// Words for the text mode of LaTeX.
#include "drawing/characters.h"
#include "drawing/latex.h"
#include "handout/latex_math.h"
#include "handout/latex_width.h"
#include "handout/latex_working.h"

namespace ohmfold::handout {

namespace {

/// Text that may be broken within a word that would not fit a line: every few columns of it, never
/// before a character that joins the one before.
std::string breakable_text(std::string_view text) {
  constexpr int kLongWord = 1200;
  constexpr int kStep = 400;
  std::string written;
  int word = 0;   // width of the word so far
  int piece = 0;  // of what cannot be broken
  std::size_t begin = 0;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t before = at;
    const std::uint32_t character = drawing::next_character(text, at);
    const int width = text_width(text.substr(before, at - before));
    if (word + width > kLongWord && piece >= kStep && drawing::columns_of(character) > 0) {
      written += drawing::latex_text(text.substr(begin, before - begin)) + "\\allowbreak{}";
      begin = before;
      piece = 0;
    }
    word = character == ' ' ? 0 : word + width;
    piece = character == ' ' ? 0 : piece + width;
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

// Words for the text mode of LaTeX.
#include <algorithm>

#include "drawing/characters.h"
#include "drawing/latex.h"
#include "handout/latex_math.h"
#include "handout/latex_width.h"
#include "handout/latex_working.h"

namespace ohmfold::handout {

namespace {

/// Text that may be broken within a word that would not fit a line: every few columns of it, never
/// before a character that joins the one before.
TextOfWords breakable_text(std::string_view text, int long_word) {
  constexpr int kStep = 400;
  TextOfWords written;
  int word = 0;   // width of the word so far
  int piece = 0;  // of what cannot be broken
  std::size_t begin = 0;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t before = at;
    const std::uint32_t character = drawing::next_character(text, at);
    const int width = text_width(text.substr(before, at - before));
    if (word + width > long_word && piece >= kStep && drawing::columns_of(character) > 0) {
      written.code += drawing::latex_text(text.substr(begin, before - begin)) + "\\allowbreak{}";
      begin = before;
      piece = 0;
    }
    word = character == ' ' ? 0 : word + width;
    piece = character == ' ' ? 0 : piece + width;
    written.width += width;
    written.least = std::max(written.least, piece);
  }
  written.code += drawing::latex_text(text.substr(begin));
  return written;
}

}  // namespace

TextOfWords latex_words(const views::Words& words, int long_word) {
  struct Writer {
    int long_word;

    TextOfWords operator()(const views::Plain& plain) const {
      return breakable_text(plain.text, long_word);
    }
    TextOfWords operator()(const views::PartName& part) const {
      // A part without a name is called by what it is: "wire 3".
      const bool words = part.text.find(' ') != std::string::npos;
      if (words || text_width(part.text) > long_word) return breakable_text(part.text, long_word);
      return in_math(math_name(part.text));
    }
    TextOfWords operator()(const views::PointName& point) const {
      return breakable_text(point.text, long_word);
    }
    TextOfWords operator()(const views::Symbol& symbol) const {
      return in_math(math_symbol(symbol));
    }
    TextOfWords operator()(const views::Amount& amount) const {
      const MathText text = text_amount(amount);
      return {text.code, text.width, text.width};
    }
    static TextOfWords in_math(const MathText& text) {
      return {"$" + text.code + "$", text.width, text.width};
    }
  };
  TextOfWords text;
  for (const views::Run& run : words.runs()) {
    const TextOfWords one = std::visit(Writer{long_word}, run);
    text.code += one.code;
    text.width += one.width;
    text.least = std::max(text.least, one.least);
  }
  return text;
}

}  // namespace ohmfold::handout

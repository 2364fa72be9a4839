// Words within a page.
#include "handout/html_words.h"

#include "drawing/names.h"
#include "drawing/xml.h"

namespace ohmfold::handout {

namespace {

struct RunWriter {
  std::string operator()(const views::Plain& plain) const { return drawing::xml_text(plain.text); }
  std::string operator()(const views::PartName& part) const { return part_name(part.text); }
  std::string operator()(const views::PointName& point) const { return name(point.text); }
  std::string operator()(const views::Symbol& symbol) const {
    if (symbol.subscript.empty()) return part_name(symbol.letter);
    return "<span class=\"symbol\"><var>" + drawing::xml_text(symbol.letter) + "</var><sub>" +
           drawing::xml_text(symbol.subscript) + "</sub></span>";
  }
  std::string operator()(const views::Amount& amount) const {
    return drawing::xml_text(views::amount_text(amount, Letters::unicode));
  }

 private:
  static std::string name(const std::string& text) {
    return "<bdi>" + drawing::xml_text(text) + "</bdi>";
  }
  /// As in the figures: the digits of R12 stand lower.
  static std::string part_name(const std::string& text) {
    const drawing::SplitName split = drawing::split_name(text);
    if (split.digits.empty()) return name(text);
    return "<bdi>" + drawing::xml_text(split.stem) + "<sub>" + drawing::xml_text(split.digits) +
           "</sub></bdi>";
  }
};

}  // namespace

std::string html_words(const views::Words& words) {
  std::string text;
  for (const views::Run& run : words.runs()) text += std::visit(RunWriter{}, run);
  return text;
}

std::string html_plain(const views::Words& words) {
  return drawing::xml_text(views::plain_text(words));
}

}  // namespace ohmfold::handout

// Sentences in typed pieces: putting them together, and writing them on one line.
#include "views/words.h"

#include <array>

#include "ohmfold/symbolic.h"
#include "views/amounts.h"

namespace ohmfold::views {

namespace {

constexpr std::string_view kNoBreakSpace = "\u00A0";
constexpr std::string_view kMinus = "\u2212";
/// A given value is shown as a decimal if it has no more figures than this.
constexpr int kMostGivenFigures = 12;

void replace_all(std::string& text, std::string_view what, std::string_view by) {
  for (std::size_t at = text.find(what); at != std::string::npos;
       at = text.find(what, at + by.size())) {
    text.replace(at, what.size(), by);
  }
}

/// Where no line may break, unless the text is so long that it has to.
std::string unbroken(std::string text) {
  constexpr std::size_t kMostUnbroken = 56;
  if (text.size() > kMostUnbroken) return text;
  replace_all(text, " ", kNoBreakSpace);
  return text;
}

std::string with_unit(std::string number, Unit unit, Letters letters) {
  number += kNoBreakSpace;
  number += symbol(unit, letters);
  return number;
}

std::string exact_amount(const Quantity& quantity, Letters letters) {
  const Number& number = quantity.number;
  if (number.is_symbolic()) {
    const bool shown = !is_too_long_to_show(number);
    return with_unit(shown ? unbroken(bracketed_line(number, letters))
                           : "(an expression of " + digits_text(number) + ")",
                     quantity.unit, letters);
  }
  if (!is_too_long_to_show(number)) return with_unit(number.to_string(), quantity.unit, letters);
  return std::string("(a ") + (number.is_integer() ? "number" : "fraction") + " of " +
         digits_text(number) + ") " + std::string(symbol(quantity.unit, letters));
}

std::string decimal_or_fraction(const Amount& amount, int most_figures, Letters letters) {
  const Quantity& quantity = amount.quantity;
  if (!is_too_long_to_show(quantity.number)) {
    if (const auto decimal = terminating_decimal(quantity.number, most_figures)) {
      return with_unit(*decimal, quantity.unit, letters);
    }
  }
  return exact_amount(quantity, letters);
}

/// Rounded, with a prefix; an exact decimal loses its trailing zeros ("6.00 mA" is "6 mA") and has
/// no prefix where it reads as well without ("0.75 A").
std::string decimal_amount(const Amount& amount, Letters letters) {
  if (amount.quantity.number.is_symbolic()) return exact_amount(amount.quantity, letters);
  const Number size = abs(amount.quantity.number);
  const bool is_exact = decimal_beside(amount.quantity, amount.figures) != Beside::rounded;
  if (is_exact && size < Number(1) && size * Number(10) >= Number(1)) {
    return decimal_or_fraction(amount, amount.figures, letters);
  }
  std::string text = rounded_text(amount.quantity, amount.figures, letters);
  const std::size_t space = text.find(' ');
  if (space == std::string::npos) return text;
  std::string number = text.substr(0, space);
  if (is_exact && number.find('.') != std::string::npos && number.find('e') == std::string::npos) {
    number.erase(number.find_last_not_of('0') + 1);
    if (number.back() == '.') number.pop_back();
  }
  return number + std::string(kNoBreakSpace) + text.substr(space + 1);
}

std::string run_text(const Run& run, Letters letters) {
  struct Writer {
    Letters letters;
    std::string operator()(const Plain& plain) const { return plain.text; }
    std::string operator()(const PartName& part) const { return part.text; }
    std::string operator()(const PointName& point) const { return point.text; }
    std::string operator()(const Symbol& symbol) const { return symbol_text(symbol); }
    std::string operator()(const Amount& amount) const { return amount_text(amount, letters); }
  };
  return std::visit(Writer{letters}, run);
}

}  // namespace

void Words::add(std::string_view text) {
  if (text.empty()) return;
  if (!runs_.empty()) {
    if (auto* plain = std::get_if<Plain>(&runs_.back())) {
      plain->text += text;
      return;
    }
  }
  runs_.emplace_back(Plain{std::string(text)});
}

void Words::add(const Words& words) {
  for (const Run& run : words.runs_) {
    if (const auto* plain = std::get_if<Plain>(&run)) {
      add(std::string_view(plain->text));
    } else {
      runs_.push_back(run);
    }
  }
}

Words Words::capitalised() const {
  Words words = *this;
  if (words.runs_.empty()) return words;
  const auto capitalise = [](std::string& text) {
    char& first = text.front();
    if (first >= 'a' && first <= 'z') first = static_cast<char>(first - 'a' + 'A');
  };
  if (auto* plain = std::get_if<Plain>(&words.runs_.front())) capitalise(plain->text);
  // A part without a name in the file is called by what it is: "wire 3".
  if (auto* part = std::get_if<PartName>(&words.runs_.front())) {
    if (part->text.find(' ') != std::string::npos) capitalise(part->text);
  }
  return words;
}

Words sentence(const Words& phrase) {
  return say(phrase.capitalised(), ".");
}

Words listed(const std::vector<Words>& phrases, std::size_t most) {
  Words words;
  const bool elided = phrases.size() > most;
  for (std::size_t i = 0; i < phrases.size(); ++i) {
    const bool last = i + 1 == phrases.size();
    if (elided && !last && i + 2 >= most) {
      words.add(", …");
      i = phrases.size() - 2;
      continue;
    }
    if (i > 0) words.add(last ? " and " : ", ");
    words.add(phrases[i]);
  }
  return words;
}

std::string symbol_text(const Symbol& symbol) {
  if (symbol.subscript.empty()) return symbol.letter;
  return symbol.letter + "_" + symbol.subscript;
}

std::string amount_text(const Amount& amount, Letters letters) {
  std::string text;
  switch (amount.form) {
    case Form::given:
      text = decimal_or_fraction(amount, kMostGivenFigures, letters);
      break;
    case Form::compact:
      text = decimal_or_fraction(amount, amount.figures, letters);
      break;
    case Form::exact:
      text = exact_amount(amount.quantity, letters);
      break;
    case Form::decimal:
      text = decimal_amount(amount, letters);
      break;
  }
  if (letters == Letters::unicode && !text.empty() && text.front() == '-') {
    text.replace(0, 1, kMinus);
  }
  return text;
}

std::string count_word(int count) {
  constexpr std::array<std::string_view, 10> kWords{"no",   "one", "two",   "three", "four",
                                                    "five", "six", "seven", "eight", "nine"};
  const auto index = static_cast<std::size_t>(count);
  return index < kWords.size() ? std::string(kWords.at(index)) : std::to_string(count);
}

Words value_words(const Quantity& quantity, int figures) {
  Words written = say(Amount{quantity, Form::exact, figures});
  const Beside beside = decimal_beside(quantity, figures);
  if (beside == Beside::nothing) return written;
  return say(written, beside == Beside::equal ? " =\u00A0" : " ≈\u00A0",
             Amount{quantity, Form::decimal, figures});
}

std::string line_text(const Words& words, Letters letters) {
  std::string text;
  for (const Run& run : words.runs()) text += run_text(run, letters);
  return text;
}

std::string plain_text(const Words& words, Letters letters) {
  std::string text = line_text(words, letters);
  replace_all(text, kNoBreakSpace, " ");
  return text;
}

}  // namespace ohmfold::views

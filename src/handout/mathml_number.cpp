// Numbers and amounts as MathML Core: what is written on one line, taken apart again.
#include "handout/mathml_number.h"

#include <string_view>

#include "drawing/xml.h"
#include "handout/raised_digits.h"
#include "ohmfold/symbolic.h"
#include "views/amounts.h"

namespace ohmfold::handout {

namespace {

constexpr std::string_view kNoBreakSpace = "\u00A0";
constexpr std::string_view kMinus = "\u2212";

std::string element(std::string_view name, std::string_view text) {
  return "<" + std::string(name) + ">" + drawing::xml_text(text) + "</" + std::string(name) + ">";
}

bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

/// Part of a name: a letter, a digit, an underscore, or a byte of a letter beyond ASCII.
bool is_name_part(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || is_digit(c) || c == '_' ||
         static_cast<unsigned char>(c) >= 0x80;
}

/// The sum of products that fraction_text() writes: "r (r + 6)", "2 r² − 3". A space between
/// factors is a product.
class SumReader {
 public:
  explicit SumReader(std::string_view text) : rest_(text) {}

  std::string read() {
    while (!rest_.empty()) read_next();
    flush();
    return "<mrow>" + written_ + "</mrow>";
  }

 private:
  void read_next() {
    if (take_power()) return;
    flush();
    if (take(" + ")) return put_operator("+");
    if (take(" − ") || take(" - ")) return put_operator("−");
    if (take(" ")) return put_operator("\u2062");
    if (take("/")) return put_operator("/");
    if (take("(") || take(")")) {
      last_ = element("mo", std::string_view(&taken_, 1));
      return;
    }
    if (take(kMinus) || take("-")) {
      written_ += "<mo form=\"prefix\">−</mo>";
      return;
    }
    take_word();
  }

  bool take(std::string_view what) {
    if (!rest_.starts_with(what)) return false;
    taken_ = what.front();
    rest_.remove_prefix(what.size());
    return true;
  }

  /// "²", which belongs to the token before it.
  bool take_power() {
    const Raised power = raised_digits(rest_);
    if (power.bytes == 0) return false;
    rest_.remove_prefix(power.bytes);
    last_ = "<msup>" + last_ + element("mn", power.digits) + "</msup>";
    return true;
  }

  void take_word() {
    std::size_t size = 0;
    const bool number = is_digit(rest_.front());
    while (size < rest_.size() && is_name_part(rest_[size]) && !begins_power(size) &&
           (!number || is_digit(rest_[size]))) {
      ++size;
    }
    if (size == 0) size = 1;
    const std::string_view word = rest_.substr(0, size);
    last_ = number ? element("mn", word) : element("mi", word);
    rest_.remove_prefix(size);
  }

  [[nodiscard]] bool begins_power(std::size_t at) const {
    return raised_digits(rest_.substr(at)).bytes > 0;
  }

  void put_operator(std::string_view sign) { written_ += element("mo", sign); }

  void flush() {
    written_ += last_;
    last_.clear();
  }

  std::string_view rest_;
  std::string written_, last_;
  char taken_ = 0;
};

std::string symbolic(const Number& number) {
  const FractionText text = fraction_text(number, Letters::unicode);
  const std::string above = SumReader(text.above).read();
  if (text.below.empty()) return above;
  return "<mfrac>" + above + SumReader(text.below).read() + "</mfrac>";
}

/// "18/5", "-4.7", "1.2e21", with either minus sign; anything else as text.
std::string plain_number(std::string_view text) {
  std::string sign;
  for (const std::string_view minus : {kMinus, std::string_view("-")}) {
    if (!sign.empty() || !text.starts_with(minus)) continue;
    text.remove_prefix(minus.size());
    sign = "<mo form=\"prefix\">−</mo>";
  }
  if (text.find_first_not_of("0123456789./e-") != std::string_view::npos) {
    return sign + element("mtext", text);
  }
  std::string number;
  if (const std::size_t slash = text.find('/'); slash != std::string_view::npos) {
    number = "<mfrac>" + element("mn", text.substr(0, slash)) +
             element("mn", text.substr(slash + 1)) + "</mfrac>";
  } else if (const std::size_t e = text.find('e'); e != std::string_view::npos) {
    number = element("mn", text.substr(0, e)) + "<mo>×</mo><msup><mn>10</mn><mrow>" +
             plain_number(text.substr(e + 1)) + "</mrow></msup>";
  } else {
    number = element("mn", text);
  }
  return sign + number;
}

}  // namespace

bool number_is_sum(const Number& number) {
  if (!number.is_symbolic()) return false;
  const FractionText text = fraction_text(number, Letters::unicode);
  return text.below.empty() && text.above_is_sum;
}

std::string mathml_number(const Number& number) {
  if (views::is_too_long_to_show(number)) {
    return element("mtext", "(" + views::digits_text(number) + ")");
  }
  if (number.is_symbolic()) return symbolic(number);
  return "<mrow>" + plain_number(number.to_string()) + "</mrow>";
}

std::string mathml_amount(const views::Amount& amount) {
  const Quantity& quantity = amount.quantity;
  if (quantity.number.is_symbolic() && !views::is_too_long_to_show(quantity.number)) {
    std::string number = symbolic(quantity.number);
    if (number_is_sum(quantity.number)) number = "<mo>(</mo>" + number + "<mo>)</mo>";
    const std::string unit(symbol(quantity.unit, Letters::unicode));
    return "<mrow>" + number + element("mtext", std::string(kNoBreakSpace) + unit) + "</mrow>";
  }
  const std::string text = views::amount_text(amount, Letters::unicode);
  // Without U+00A0 it is a description: "(a fraction of 86 digits) Ω".
  const std::size_t space = text.rfind(kNoBreakSpace);
  if (space == std::string::npos) return element("mtext", text);
  return "<mrow>" + plain_number(std::string_view(text).substr(0, space)) +
         element("mtext", std::string_view(text).substr(space)) + "</mrow>";
}

}  // namespace ohmfold::handout

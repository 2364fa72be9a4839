// Formulas as MathML Core: tokens, fractions, brackets.
#include "handout/mathml.h"

#include <span>
#include <string_view>

#include "drawing/names.h"
#include "drawing/xml.h"
#include "handout/mathml_number.h"

namespace ohmfold::handout {

namespace {

using namespace views;

/// A sum, or parts in parallel, with more bytes on one line are broken into pieces.
constexpr std::size_t kMostBytesInPiece = 20;

std::string token(std::string_view name, std::string_view text) {
  return "<" + std::string(name) + ">" + drawing::xml_text(text) + "</" + std::string(name) + ">";
}

std::string row(const std::string& inside) {
  return "<mrow>" + inside + "</mrow>";
}

std::string bracketed(const std::string& inside, bool brackets) {
  return brackets ? row("<mo>(</mo>" + inside + "<mo>)</mo>") : inside;
}

/// How tightly an expression holds together; a stacked fraction needs no brackets.
enum class Bond { sum, parallel, product, atom };

Bond bond(const Expression& expression) {
  struct Reader {
    Bond operator()(const Symbol&) const { return Bond::atom; }
    Bond operator()(const Amount&) const { return Bond::atom; }
    Bond operator()(const Count& count) const {
      return number_is_sum(count.number) ? Bond::sum : Bond::atom;
    }
    Bond operator()(const Sum&) const { return Bond::sum; }
    Bond operator()(const InParallel&) const { return Bond::parallel; }
    Bond operator()(const Product&) const { return Bond::product; }
    Bond operator()(const Quotient&) const { return Bond::atom; }
    Bond operator()(const Negative&) const { return Bond::sum; }
    Bond operator()(const Ellipsis&) const { return Bond::atom; }
  };
  return std::visit(Reader{}, expression.node);
}

/// Does it begin with a minus sign of its own?
bool is_signed(const Expression& expression) {
  if (const auto* amount = std::get_if<Amount>(&expression.node)) {
    return amount->quantity.number.is_negative();
  }
  const auto* count = std::get_if<Count>(&expression.node);
  return count != nullptr && count->number.is_negative();
}

class Writer {
 public:
  /// A letter is slanted, a name stands upright as everywhere else.
  std::string operator()(const Symbol& symbol) const {
    if (symbol.subscript.empty()) return part_name(symbol.letter);
    return "<msub>" + token("mi", symbol.letter) + token("mtext", symbol.subscript) + "</msub>";
  }
  /// As in the figures: the digits of R12 stand lower.
  static std::string part_name(const std::string& name) {
    const drawing::SplitName split = drawing::split_name(name);
    const std::string stem =
        "<mi mathvariant=\"normal\">" + drawing::xml_text(split.stem) + "</mi>";
    if (split.digits.empty()) return stem;
    return "<msub>" + stem + "<mn>" + drawing::xml_text(split.digits) + "</mn></msub>";
  }
  std::string operator()(const Amount& amount) const { return mathml_amount(amount); }
  std::string operator()(const Count& count) const { return mathml_number(count.number); }
  std::string operator()(const Ellipsis&) const { return "<mo>…</mo>"; }

  std::string operator()(const Negative& negative) const {
    const Expression& of = negative.of.front();
    return row("<mo form=\"prefix\">−</mo>" +
               bracketed(write(of), bond(of) == Bond::sum || is_signed(of)));
  }

  std::string operator()(const Sum& sum) const {
    std::string text;
    for (const std::string& term : terms(sum)) text += term;
    return row(text);
  }

  std::string operator()(const InParallel& parallel) const {
    std::string text;
    for (const std::string& term : terms(parallel)) text += term;
    return row(text);
  }
  std::string operator()(const Product& product) const {
    std::string text;
    for (const std::string& factor : operands(product.factors, "·", Bond::product)) text += factor;
    return row(text);
  }
  std::string operator()(const Quotient& quotient) const {
    return "<mfrac>" + write(quotient.above_below.front()) + write(quotient.above_below.back()) +
           "</mfrac>";
  }

  [[nodiscard]] std::string write(const Expression& expression) const {
    return std::visit(*this, expression.node);
  }

  /// Each with the sign before it.
  [[nodiscard]] std::vector<std::string> terms(const Sum& sum) const {
    std::vector<std::string> written;
    for (const Expression& term : sum.terms) {
      if (written.empty()) {
        written.push_back(bracketed(write(term), bond(term) == Bond::parallel));
        continue;
      }
      const auto* negative = std::get_if<Negative>(&term.node);
      const Expression& body = negative != nullptr ? negative->of.front() : term;
      const bool brackets = bond(body) <= Bond::parallel || is_signed(body);
      written.push_back(std::string(negative != nullptr ? kMinus : kPlus) +
                        bracketed(write(body), brackets));
    }
    return written;
  }

  [[nodiscard]] std::vector<std::string> terms(const InParallel& parallel) const {
    return operands(parallel.terms, "∥", Bond::parallel);
  }

 private:
  static constexpr std::string_view kPlus = "<mo form=\"infix\">+</mo>";
  static constexpr std::string_view kMinus = "<mo form=\"infix\">−</mo>";

  /// Each after the first with the operator before it.
  [[nodiscard]] std::vector<std::string> operands(const std::vector<Expression>& terms,
                                                  std::string_view sign, Bond least) const {
    std::vector<std::string> written;
    for (const Expression& term : terms) {
      std::string before;
      if (!written.empty()) before = "<mo form=\"infix\">" + std::string(sign) + "</mo>";
      written.push_back(before + bracketed(write(term), bond(term) < least || is_signed(term)));
    }
    return written;
  }
};

/// The expression in pieces, the first of them after what stands before it.
void append_pieces(std::string before, const Expression& expression,
                   std::vector<std::string>& pieces) {
  const Writer writer;
  const bool whole = formula_text(expression, Letters::ascii).size() <= kMostBytesInPiece;
  std::vector<std::string> terms;
  if (const auto* sum = std::get_if<Sum>(&expression.node)) terms = writer.terms(*sum);
  if (const auto* parallel = std::get_if<InParallel>(&expression.node)) {
    terms = writer.terms(*parallel);
  }
  if (whole || terms.empty()) terms = {writer.write(expression)};
  for (const std::string& term : terms) {
    pieces.push_back(before + term);
    before.clear();
  }
}

}  // namespace

std::string mathml(const Expression& expression) {
  return Writer().write(expression);
}

std::vector<std::string> mathml_pieces(const Equation& equation) {
  std::vector<std::string> pieces;
  append_pieces({}, equation.left, pieces);
  for (std::size_t i = 0; i < equation.links.size(); ++i) {
    const Link& link = equation.links[i];
    const bool about = link.relation == Relation::about;
    std::string before = std::string("<mo form=\"infix\">") + (about ? "≈" : "=") + "</mo>";
    // The left side stays with what it is equal to, unless it is in pieces itself.
    if (i == 0 && pieces.size() == 1) {
      before.insert(0, pieces.front());
      pieces.clear();
    }
    append_pieces(before, link.right, pieces);
  }
  for (std::string& piece : pieces) piece = "<math>" + row(piece) + "</math>";
  return pieces;
}

}  // namespace ohmfold::handout

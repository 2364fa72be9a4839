// Formulas for the math mode of LaTeX, broken into rows where they are too wide.
#include <algorithm>
#include <utility>

#include "handout/latex_math.h"
#include "handout/latex_polynomial.h"
#include "handout/latex_width.h"

namespace ohmfold::handout {

namespace {

using views::Expression;

constexpr int kSignWidth = 130;  // with the space on both sides
constexpr int kMinusWidth = 80;

/// How tightly an expression holds together; a quotient has a bar and needs no brackets.
enum class Bond { sum, parallel, product, atom };

Bond bond(const Expression& expression) {
  struct Reader {
    Bond operator()(const views::Symbol&) const { return Bond::atom; }
    Bond operator()(const views::Amount&) const { return Bond::atom; }
    Bond operator()(const views::Count&) const { return Bond::atom; }
    Bond operator()(const views::Sum&) const { return Bond::sum; }
    Bond operator()(const views::InParallel&) const { return Bond::parallel; }
    Bond operator()(const views::Product&) const { return Bond::product; }
    Bond operator()(const views::Quotient&) const { return Bond::atom; }
    Bond operator()(const views::Negative&) const { return Bond::sum; }
    Bond operator()(const views::Ellipsis&) const { return Bond::atom; }
  };
  return std::visit(Reader{}, expression.node);
}

bool is_signed(const MathText& text) {
  return text.code.starts_with("-") || text.code.starts_with("\\qty{-");
}

MathText written(const Expression& expression, int room);

MathText in_brackets_if(bool brackets, const MathText& text) {
  return brackets ? bracketed(text) : text;
}

/// The terms or factors with the sign between them in front of each but the first.
std::vector<MathText> pieces(const std::vector<Expression>& terms, std::string_view between,
                             Bond least, int room) {
  std::vector<MathText> found;
  for (const Expression& term : terms) {
    MathText one = written(term, room);
    one = in_brackets_if(bond(term) < least || is_signed(one), one);
    if (!found.empty()) {
      one.code.insert(0, " " + std::string(between) + " ");
      one.width += kSignWidth;
    }
    found.push_back(std::move(one));
  }
  return found;
}

std::vector<MathText> sum_pieces(const views::Sum& sum, int room) {
  std::vector<MathText> found;
  for (const Expression& term : sum.terms) {
    const auto* negative = std::get_if<views::Negative>(&term.node);
    if (found.empty()) {
      found.push_back(in_brackets_if(bond(term) == Bond::parallel, written(term, room)));
      continue;
    }
    const Expression& body = negative != nullptr ? negative->of.front() : term;
    MathText one = written(body, room);
    one = in_brackets_if(bond(body) <= Bond::parallel || is_signed(one), one);
    found.push_back({(negative != nullptr ? " - " : " + ") + one.code, one.width + kSignWidth});
  }
  return found;
}

class Writer {
 public:
  explicit Writer(int room) : room_(room) {}

  MathText operator()(const views::Symbol& symbol) const { return math_symbol(symbol); }
  MathText operator()(const views::Amount& amount) const { return math_amount(amount); }
  MathText operator()(const views::Count& count) const { return math_number(count.number); }
  MathText operator()(const views::Ellipsis&) const { return {"\\dots", 120}; }
  MathText operator()(const views::Negative& negative) const {
    const Expression& of = negative.of.front();
    const MathText text = written(of, room_ - kMinusWidth);
    const MathText body = in_brackets_if(bond(of) == Bond::sum || is_signed(text), text);
    return {"-" + body.code, body.width + kMinusWidth};
  }
  MathText operator()(const views::Sum& sum) const {
    return joined_or_stacked(sum_pieces(sum, room_), room_);
  }
  MathText operator()(const views::InParallel& parallel) const {
    return joined_or_stacked(pieces(parallel.terms, "\\mathbin{\\parallel}", Bond::parallel, room_),
                             room_);
  }
  MathText operator()(const views::Product& product) const {
    return joined_or_stacked(pieces(product.factors, "\\cdot", Bond::product, room_), room_);
  }
  MathText operator()(const views::Quotient& quotient) const {
    const MathText above = written(quotient.above_below.front(), room_);
    const MathText below = written(quotient.above_below.back(), room_);
    return {"\\frac{" + above.code + "}{" + below.code + "}",
            std::max(above.width, below.width) + 25};
  }

 private:
  int room_;
};

MathText written(const Expression& expression, int room) {
  return std::visit(Writer(room), expression.node);
}

}  // namespace

std::vector<MathText> math_rows(const Expression& expression, int room) {
  std::vector<MathText> terms;
  if (const auto* sum = std::get_if<views::Sum>(&expression.node)) {
    terms = sum_pieces(*sum, room);
  } else if (const auto* parallel = std::get_if<views::InParallel>(&expression.node)) {
    terms = pieces(parallel->terms, "\\mathbin{\\parallel}", Bond::parallel, room);
  } else if (const auto* product = std::get_if<views::Product>(&expression.node)) {
    terms = pieces(product->factors, "\\cdot", Bond::product, room);
  } else {
    terms = {written(expression, room)};
  }
  std::vector<MathText> rows;
  for (MathText& term : terms) {
    if (!rows.empty() && rows.back().width + term.width <= room) {
      rows.back().code += term.code;
      rows.back().width += term.width;
    } else {
      if (!rows.empty()) term.code.insert(0, "{}");
      rows.push_back(std::move(term));
    }
  }
  return rows;
}

}  // namespace ohmfold::handout

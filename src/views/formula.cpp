// Formulas as small trees: building them, and writing them on one line.
#include "views/formula.h"

#include <algorithm>
#include <utility>

#include "ohmfold/symbolic.h"
#include "views/amounts.h"

namespace ohmfold::views {

namespace {

/// How tightly an expression holds together when it is written on one line.
enum class Bond { sum, parallel, product, atom };

Bond bond(const Expression& expression) {
  struct Reader {
    Bond operator()(const Symbol&) const { return Bond::atom; }
    Bond operator()(const Amount&) const { return Bond::atom; }
    Bond operator()(const Count&) const { return Bond::atom; }
    Bond operator()(const Sum&) const { return Bond::sum; }
    Bond operator()(const InParallel&) const { return Bond::parallel; }
    Bond operator()(const Product&) const { return Bond::product; }
    Bond operator()(const Quotient&) const { return Bond::product; }
    Bond operator()(const Negative&) const { return Bond::sum; }
    Bond operator()(const Ellipsis&) const { return Bond::atom; }
  };
  return std::visit(Reader{}, expression.node);
}

std::string bracketed(const std::string& text, bool brackets) {
  return brackets ? "(" + text + ")" : text;
}

bool is_signed(const std::string& text) {
  return text.starts_with("-") || text.starts_with("\u2212");
}

class Writer {
 public:
  explicit Writer(Letters letters) : letters_(letters) {}

  std::string operator()(const Symbol& symbol) const { return symbol_text(symbol); }
  std::string operator()(const Amount& amount) const { return amount_text(amount, letters_); }
  std::string operator()(const Count& count) const {
    return bracketed_line(count.number, letters_);
  }
  std::string operator()(const Ellipsis&) const { return "…"; }

  std::string operator()(const Negative& negative) const {
    const Expression& of = negative.of.front();
    const std::string text = write(of);
    return "−" + bracketed(text, bond(of) == Bond::sum || is_signed(text));
  }

  std::string operator()(const Sum& sum) const {
    std::string text;
    for (const Expression& term : sum.terms) {
      const auto* negative = std::get_if<Negative>(&term.node);
      if (text.empty()) {
        text = bracketed(write(term), bond(term) == Bond::parallel);
        continue;
      }
      const Expression& body = negative != nullptr ? negative->of.front() : term;
      const std::string written = write(body);
      text += negative != nullptr ? " − " : " + ";
      text += bracketed(written, bond(body) <= Bond::parallel || is_signed(written));
    }
    return text;
  }

  std::string operator()(const InParallel& parallel) const {
    return joined(parallel.terms, " ∥ ", Bond::parallel);
  }
  std::string operator()(const Product& product) const {
    return joined(product.factors, " · ", Bond::product);
  }

  std::string operator()(const Quotient& quotient) const {
    const Expression& above = quotient.above_below.front();
    const Expression& below = quotient.above_below.back();
    const bool tight = std::holds_alternative<Count>(above.node);
    return part_of_quotient(above, tight) + (tight ? "/" : " / ") + part_of_quotient(below, tight);
  }

  std::string write(const Expression& expression) const {
    return std::visit(*this, expression.node);
  }

 private:
  std::string joined(const std::vector<Expression>& terms, std::string_view between,
                     Bond least) const {
    std::string text;
    for (const Expression& term : terms) {
      const std::string written = write(term);
      if (!text.empty()) text += between;
      text += bracketed(written, bond(term) < least || is_signed(written));
    }
    return text;
  }

  /// "18 V / 4 Ω", but "1/(4 Ω)" and "18 V / (18/5 Ω)".
  std::string part_of_quotient(const Expression& part, bool tight) const {
    const std::string text = write(part);
    const bool amount = std::holds_alternative<Amount>(part.node);
    const bool symbols = amount && std::get<Amount>(part.node).quantity.number.is_symbolic();
    const bool split = amount && (tight || symbols || text.find('/') != std::string::npos);
    return bracketed(text, split || bond(part) != Bond::atom || is_signed(text));
  }

  Letters letters_;
};

std::vector<Expression> shortened(std::vector<Expression> terms) {
  if (terms.size() <= kMostTerms) return terms;
  terms.erase(terms.begin() + kMostTerms - 2, terms.end() - 1);
  terms.insert(terms.end() - 1, Expression{Ellipsis{}});
  return terms;
}

}  // namespace

Expression quotient(Expression above, Expression below) {
  return {Quotient{{std::move(above), std::move(below)}}};
}
Expression product(Expression first, Expression second) {
  return {Product{{std::move(first), std::move(second)}}};
}
Expression reciprocal(Expression below) {
  return quotient({Count{Number(1)}}, std::move(below));
}
Expression negative(Expression of) {
  return {Negative{{std::move(of)}}};
}

Expression sum(std::vector<Expression> terms) {
  if (terms.size() == 1) return std::move(terms.front());
  return {Sum{shortened(std::move(terms))}};
}

Expression in_parallel(std::vector<Expression> terms) {
  if (terms.size() == 1) return std::move(terms.front());
  return {InParallel{shortened(std::move(terms))}};
}

bool has_unwritten_amount(const Expression& expression) {
  struct Reader {
    static bool any(const std::vector<Expression>& terms) {
      return std::any_of(terms.begin(), terms.end(), has_unwritten_amount);
    }
    bool operator()(const Symbol&) const { return false; }
    bool operator()(const Amount& amount) const {
      return is_too_long_to_show(amount.quantity.number);
    }
    bool operator()(const Count& count) const { return is_too_long_to_show(count.number); }
    bool operator()(const Sum& sum) const { return any(sum.terms); }
    bool operator()(const InParallel& parallel) const { return any(parallel.terms); }
    bool operator()(const Product& product) const { return any(product.factors); }
    bool operator()(const Quotient& quotient) const { return any(quotient.above_below); }
    bool operator()(const Negative& negative) const { return any(negative.of); }
    bool operator()(const Ellipsis&) const { return false; }
  };
  return std::visit(Reader{}, expression.node);
}

void append_value(Equation& equation, const Quantity& value, int figures) {
  equation.links.push_back({Relation::equal, {Amount{value, Form::exact, figures}}});
  const Beside beside = decimal_beside(value, figures);
  if (beside == Beside::nothing) return;
  equation.links.push_back({beside == Beside::equal ? Relation::equal : Relation::about,
                            {Amount{value, Form::decimal, figures}}});
}

std::string formula_text(const Expression& expression, Letters letters) {
  return Writer(letters).write(expression);
}

Words formula_words(const Expression& expression) {
  if (const auto* symbol = std::get_if<Symbol>(&expression.node)) return say(Run(*symbol));
  const Words text = say(formula_text(expression, Letters::unicode));
  const auto* sum = std::get_if<Sum>(&expression.node);
  if (sum == nullptr) return text;
  Words words;
  for (const Expression& term : sum->terms) {
    const auto* subtracted = std::get_if<Negative>(&term.node);
    const Expression& of = subtracted == nullptr ? term : subtracted->of.front();
    const auto* symbol = std::get_if<Symbol>(&of.node);
    if (symbol == nullptr) return text;
    if (subtracted != nullptr) {
      words.add(words.empty() ? "−" : " − ");
    } else if (!words.empty()) {
      words.add(" + ");
    }
    words.add(Run(*symbol));
  }
  return words;
}

}  // namespace ohmfold::views

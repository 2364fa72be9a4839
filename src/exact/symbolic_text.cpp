// Numbers with symbols as text: terms in one order, factors in front, fractions on one line or two.
#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "exact/rational_function.h"
#include "exact/square_free.h"
#include "ohmfold/symbolic.h"

namespace ohmfold {
namespace {

/// "²", or "^2" in ASCII and for powers of two digits.
std::string power_text(unsigned exponent, Letters letters) {
  if (exponent == 1) return "";
  constexpr std::array<std::string_view, 8> kRaised{"²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"};
  const bool raised = letters == Letters::unicode && exponent < 2 + kRaised.size();
  return raised ? std::string(kRaised.at(exponent - 2)) : "^" + std::to_string(exponent);
}

class Writer {
 public:
  Writer(const std::vector<std::string>& names, Letters letters)
      : names_(names), letters_(letters) {}

  /// "r s²"; empty for 1.
  [[nodiscard]] std::string powers(const Monomial& monomial) const {
    std::string text;
    for (std::size_t i = 0; i < names_.size(); ++i) {
      if (monomial.exponents.at(i) == 0) continue;
      if (!text.empty()) text += ' ';
      text.append(names_[i]).append(power_text(monomial.exponents.at(i), letters_));
    }
    return text;
  }

  /// "5 r s", "r", "7": a product without its sign.
  [[nodiscard]] std::string product(const Polynomial::Term& term) const {
    const std::string symbols = powers(term.monomial);
    const std::string digits = Number(cln::cl_RA(cln::abs(term.coefficient))).to_string();
    if (symbols.empty()) return digits;
    return digits == "1" ? symbols : digits + " " + symbols;
  }

  /// "r² - 2 r + 6"; a negative first term goes to the end where another is positive: "6 - 2 r".
  [[nodiscard]] std::string sum(const Polynomial& polynomial) const {
    std::vector<const Polynomial::Term*> order;
    for (const Polynomial::Term& term : polynomial.terms()) order.push_back(&term);
    if (cln::minusp(order.front()->coefficient)) {
      std::stable_partition(order.begin(), order.end(), [](const Polynomial::Term* term) {
        return cln::plusp(term->coefficient);
      });
    }
    std::string text;
    for (const Polynomial::Term* term : order) {
      const bool negative = cln::minusp(term->coefficient);
      if (text.empty()) {
        text = negative ? minus() : "";
      } else {
        text += negative ? " " + minus() + " " : " + ";
      }
      text += product(*term);
    }
    return text;
  }

  /// The factors of a polynomial: "12", "r", "(r + 3)", "(s + 1)²". A whole number is a factor of
  /// its own where there are others besides one sum.
  [[nodiscard]] std::vector<std::string> factors(const Polynomial& polynomial) const {
    if (polynomial.terms().size() == 1) return {sum(polynomial)};
    const Monomial common = polynomial.common_monomial();
    const cln::cl_I content = polynomial.content();
    const std::vector<PolynomialPower> parts = square_free(polynomial.over(common).over(content));
    const bool is_power = parts.size() > 1 || parts.front().exponent > 1;
    if (!is_power && common.degree == 0) return {"(" + sum(polynomial) + ")"};
    std::vector<std::string> result;
    if (is_power && !cln::equal(content, 1)) {
      result.push_back(Number(cln::cl_RA(content)).to_string());
    }
    if (common.degree > 0) result.push_back(powers(common));
    for (const PolynomialPower& power : parts) {
      const Polynomial base = is_power ? power.base : power.base.times({{}, content});
      result.push_back("(" + sum(base) + ")" + power_text(power.exponent, letters_));
    }
    return result;
  }

  /// "r (r + 6)", or the sum where it is the only factor.
  [[nodiscard]] std::string factored(const Polynomial& polynomial) const {
    const std::vector<std::string> all = factors(polynomial);
    if (all.size() == 1 && !is_one_power(polynomial)) return sum(polynomial);
    std::string text;
    for (const std::string& factor : all) text += text.empty() ? factor : " " + factor;
    return text;
  }

  /// Does it stand without further brackets: (r + 3)², or a single term?
  [[nodiscard]] bool is_one_power(const Polynomial& polynomial) const {
    return factors(polynomial).size() == 1 && !factors(polynomial).front().ends_with(")");
  }

  [[nodiscard]] std::string minus() const { return letters_ == Letters::unicode ? "−" : "-"; }

 private:
  const std::vector<std::string>& names_;
  Letters letters_;
};

/// Of several factors, which a fraction on one line has to hold together.
bool is_product(const Writer& writer, const Polynomial& polynomial) {
  if (polynomial.terms().size() > 1) return !writer.is_one_power(polynomial);
  const Polynomial::Term& term = polynomial.terms().front();
  if (term.monomial.degree == 0) return false;
  const auto symbols = std::count_if(term.monomial.exponents.begin(), term.monomial.exponents.end(),
                                     [](std::uint16_t exponent) { return exponent > 0; });
  return symbols > 1 || !cln::equal(term.coefficient, 1);
}

}  // namespace

FractionText fraction_text(const Number& number, Letters letters) {
  if (!number.is_symbolic()) {
    const std::string above = Number(cln::cl_RA(number.numerator())).to_string();
    if (number.is_integer()) return {above, "", false, false};
    return {above, Number(cln::cl_RA(number.denominator())).to_string(), false, false};
  }
  const auto& [names, above, below] = number.function();
  const Writer writer(*names, letters);
  if (below.is_constant() && above.terms().size() == 1) {
    // A rational times symbols: "3/2 r".
    const Polynomial::Term& term = above.terms().front();
    const Number factor = Number::quotient(term.coefficient, below.constant());
    if (factor == 1) return {writer.powers(term.monomial), "", false, false};
    const std::string sign = factor.is_negative() ? writer.minus() : "";
    const std::string size = factor == -1 ? "" : abs(factor).to_string() + " ";
    return {sign + size + writer.powers(term.monomial), "", false, false};
  }
  const bool above_is_sum =
      above.terms().size() > 1 && writer.factors(above).size() == 1 && !writer.is_one_power(above);
  return {writer.factored(above), below.is_one() ? "" : writer.factored(below), above_is_sum,
          is_product(writer, below)};
}

std::string one_line(const Number& number, Letters letters) {
  const FractionText text = fraction_text(number, letters);
  if (text.below.empty()) return text.above;
  std::string line = text.above_is_sum ? "(" + text.above + ")" : text.above;
  return line + "/" + (text.below_is_product ? "(" + text.below + ")" : text.below);
}

std::string bracketed_line(const Number& number, Letters letters) {
  const FractionText text = fraction_text(number, letters);
  const bool sum = text.below.empty() && text.above_is_sum;
  return sum ? "(" + text.above + ")" : one_line(number, letters);
}

}  // namespace ohmfold

// Elimination of unknowns from polynomial equations, and the roots of the last one.
#include "solve/equations.h"

#include <algorithm>
#include <utility>

#include "exact/rational_function.h"
#include "ohmfold/error.h"
#include "ohmfold/symbolic.h"

namespace ohmfold {
namespace {

bool holds(const Number& polynomial, const std::string& symbol) {
  const std::vector<std::string> symbols = symbols_of(polynomial);
  return std::find(symbols.begin(), symbols.end(), symbol) != symbols.end();
}

bool has_one_sign(const Number& polynomial) {
  return polynomial.is_positive() || polynomial.is_negative();
}

/// Can c0 + c1 x = 0 hold for every x at some positive values of the other unknowns? Then solving
/// for x would lose that.
bool may_lose(const Number& c0, const Number& c1) {
  if (has_one_sign(c0) || has_one_sign(c1)) return false;
  const std::vector<std::string> others = symbols_of(c1);
  const bool alone = c0.is_zero() || symbols_of(c0) == others;
  if (others.size() > 1 || !alone) return true;
  // In one other unknown: both vanish at once where they have a common factor, which a quotient in
  // lowest terms has lost.
  const std::size_t before = coefficients(c1, others.front()).size();
  return coefficients(denominator_of(c0 / c1), others.front()).size() < before;
}

class Solver {
 public:
  Solver(std::vector<Number> equations, const std::vector<std::string>& unknowns)
      : equations_(std::move(equations)),
        used_(equations_.size(), false),
        unknowns_(unknowns),
        found_(unknowns.size(), false) {}

  EquationSolution run() {
    std::size_t left = unknowns_.size();
    while (left > 1) {
      if (has_ended()) return std::move(result_);
      if (!eliminate_one()) return std::move(result_);  // too entangled
      --left;
    }
    if (!has_ended()) find_roots();
    return std::move(result_);
  }

 private:
  /// An equation that cannot hold, or an unknown that no equation holds any more.
  bool has_ended() {
    for (std::size_t i = 0; i < equations_.size(); ++i) {
      if (used_[i] || equations_[i].is_symbolic() || equations_[i].is_zero()) continue;
      result_.end = EquationSolution::End::contradictory;
      result_.failed = i;
      return true;
    }
    for (std::size_t k = 0; k < unknowns_.size(); ++k) {
      if (!found_[k] && !is_held(k)) result_.free.push_back(k);
    }
    if (result_.free.empty()) return false;
    result_.end = EquationSolution::End::free;
    return true;
  }

  [[nodiscard]] bool is_held(std::size_t unknown) const {
    for (std::size_t i = 0; i < equations_.size(); ++i) {
      if (!used_[i] && holds(equations_[i], unknowns_[unknown])) return true;
    }
    return false;
  }

  /// From the equation with the fewest unknowns.
  bool eliminate_one() {
    std::vector<std::pair<std::size_t, std::size_t>> order;
    for (std::size_t i = 0; i < equations_.size(); ++i) {
      if (!used_[i]) order.emplace_back(symbols_of(equations_[i]).size(), i);
    }
    std::sort(order.begin(), order.end());
    for (const auto& [count, equation] : order) {
      for (std::size_t k = 0; k < unknowns_.size(); ++k) {
        if (!found_[k] && eliminate(equation, k)) return true;
      }
    }
    return false;
  }

  bool eliminate(std::size_t equation, std::size_t unknown) {
    const std::string& symbol = unknowns_[unknown];
    const std::vector<Number> parts = coefficients(equations_[equation], symbol);
    if (parts.size() != 2 || may_lose(parts[0], parts[1])) return false;
    const SolvedFor step{unknown, equation, equations_[equation], -(parts[0] / parts[1])};
    used_[equation] = true;
    found_[unknown] = true;
    const std::vector<SymbolValue> put_in{{symbol, step.value}};
    for (std::size_t i = 0; i < equations_.size(); ++i) {
      if (used_[i] || !holds(equations_[i], symbol)) continue;
      const std::optional<Number> value = substitute(equations_[i], put_in);
      ensure(value.has_value(), "a polynomial has no denominator that could vanish");
      equations_[i] = collected(*value);
    }
    result_.eliminations.push_back(step);
    return true;
  }

  /// Of the equations that are left, that of the lowest degree gives the roots; the others are
  /// looked at for each root.
  void find_roots() {
    const auto last =
        static_cast<std::size_t>(std::find(found_.begin(), found_.end(), false) - found_.begin());
    std::size_t lowest = 0;
    for (std::size_t i = 0; i < equations_.size(); ++i) {
      if (used_[i] || !equations_[i].is_symbolic()) continue;
      const std::size_t degree = coefficients(equations_[i], unknowns_[last]).size() - 1;
      if (lowest != 0 && degree >= lowest) continue;
      lowest = degree;
      result_.last = SolvedFor{last, i, equations_[i], {}};
    }
    ensure(result_.last.has_value(), "no equation is left for the last unknown");
    std::vector<Number> parts = coefficients(result_.last->collected, unknowns_[last]);
    // A root of zero is none: such factors go before the degree is judged, but for the last one,
    // which tells that only zero would do.
    while (parts.size() > 3 && parts.front().is_zero()) parts.erase(parts.begin());
    if (parts.size() > 3) return;  // too entangled
    result_.end = EquationSolution::End::solved;
    for (const Surd& root : roots_of(parts)) add_root(last, root);
  }

  void add_root(std::size_t last, const Surd& root) {
    EquationSolution::Root result;
    std::vector<SurdValue> values{{unknowns_[last], root}};
    for (std::size_t i = result_.eliminations.size(); i-- > 0;) {
      const SolvedFor& step = result_.eliminations[i];
      const std::optional<Surd> value = value_at(step.value, values);
      if (!value) {
        result_.roots.push_back(std::move(result));
        return;
      }
      values.emplace_back(unknowns_[step.unknown], *value);
    }
    for (std::size_t i = 0; i < equations_.size() && !result.broken; ++i) {
      if (!used_[i] && !value_at(equations_[i], values)->is_zero()) result.broken = i;
    }
    result.values.resize(unknowns_.size());
    for (const auto& [symbol, value] : values) {
      const auto at = std::find(unknowns_.begin(), unknowns_.end(), symbol);
      result.values[static_cast<std::size_t>(at - unknowns_.begin())] = value;
    }
    result_.roots.push_back(std::move(result));
  }

  std::vector<Number> equations_;
  std::vector<bool> used_;  // by equation: an unknown was found from it
  const std::vector<std::string>& unknowns_;
  std::vector<bool> found_;
  EquationSolution result_;
};

}  // namespace

Number collected(const Number& number) {
  if (!number.is_symbolic()) return number.is_zero() ? Number(0) : Number(1);
  const Quotient parts = quotient_of(number);
  const cln::cl_I content = parts.numerator.content();
  const bool falls = cln::minusp(parts.numerator.leading());
  return from_polynomial(parts.names, parts.numerator.over(falls ? -content : content));
}

EquationSolution solve_equations(std::vector<Number> equations,
                                 const std::vector<std::string>& unknowns) {
  return Solver(std::move(equations), unknowns).run();
}

std::vector<Surd> roots_of(const std::vector<Number>& coefficients) {
  ensure(coefficients.size() == 2 || coefficients.size() == 3, "no linear or quadratic equation");
  const Number& c0 = coefficients[0];
  const Number& c1 = coefficients[1];
  if (coefficients.size() == 2) return {Surd(-(c0 / c1))};
  const Number& c2 = coefficients[2];
  const Number discriminant = c1 * c1 - Number(4) * c0 * c2;
  if (discriminant.is_negative()) return {};
  const Surd root = Surd::root_of(discriminant);
  const Surd twice(Number(2) * abs(c2));
  const Surd middle(c2.is_negative() ? c1 : -c1);
  if (root.is_zero()) return {middle / twice};
  return {(middle - root) / twice, (middle + root) / twice};
}

}  // namespace ohmfold

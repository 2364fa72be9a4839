// Formulas as small trees, never simplified: what stands in a line is what a person would write.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "views/words.h"

namespace ohmfold::views {

struct Expression;

/// A number without a unit: the 1 of 1/R.
struct Count {
  Number number;
};
/// A sum; a Negative among its terms is subtracted.
struct Sum {
  std::vector<Expression> terms;
};
/// "R1 ∥ R2": the value of parts in parallel.
struct InParallel {
  std::vector<Expression> terms;
};
struct Product {
  std::vector<Expression> factors;
};
/// Two entries: what stands above and what stands below.
struct Quotient {
  std::vector<Expression> above_below;
};
/// One entry.
struct Negative {
  std::vector<Expression> of;
};
/// Terms that are left out because there are too many to write.
struct Ellipsis {};

/// The depth of a tree never depends on the size of a network.
struct Expression {
  std::variant<Symbol, Amount, Count, Sum, InParallel, Product, Quotient, Negative, Ellipsis> node;
};

enum class Relation { equal, about };

struct Link {
  Relation relation = Relation::equal;
  Expression right;
};

/// A line of working: left = right = … ≈ …, and in a few words why it holds.
struct Equation {
  Expression left;
  std::vector<Link> links;
  Words note;
};

/// A sum, or another list of terms, has at most so many; beyond, the middle is left out.
inline constexpr std::size_t kMostTerms = 12;

[[nodiscard]] Expression quotient(Expression above, Expression below);
[[nodiscard]] Expression product(Expression first, Expression second);
[[nodiscard]] Expression reciprocal(Expression below);
[[nodiscard]] Expression negative(Expression of);
/// A single term stands for itself; of more than kMostTerms the middle is left out.
[[nodiscard]] Expression sum(std::vector<Expression> terms);
[[nodiscard]] Expression in_parallel(std::vector<Expression> terms);

/// Is there an amount in it that is described rather than written? Such a line is left out.
[[nodiscard]] bool has_unwritten_amount(const Expression& expression);

/// The exact value, and the decimal where that says more.
void append_value(Equation& equation, const Quantity& value, int figures);

/// One line, with U+00A0 wherever no line may break.
[[nodiscard]] std::string formula_text(const Expression& expression, Letters letters);

/// The same within a sentence: a symbol, or a sum of symbols, stays what it is, so that writers can
/// set it; of any other expression its text.
[[nodiscard]] Words formula_words(const Expression& expression);

}  // namespace ohmfold::views

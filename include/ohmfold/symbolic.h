// Asking numbers with symbols: which symbols, what for given values, what as text, and how much
// work they may make.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "ohmfold/decimal.h"
#include "ohmfold/value.h"

namespace ohmfold {

/// Thrown where numbers with symbols grow beyond what can be worked with in seconds: more than
/// kMostSymbols symbols in one number, or more work than the WorkLimit in force allows. It is no
/// fault of ours and none of the file: what can be said without symbols has to be said without.
class BeyondBudget : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

/// The most symbols that one number can hold.
inline constexpr std::size_t kMostSymbols = 12;

/// As long as it lives, arithmetic with symbols in this thread may take so much work; beyond it,
/// BeyondBudget is thrown. One unit is about as much as multiplying two machine words. Limits nest:
/// the work within an inner one counts for the outer one, too. Without a limit, only single
/// operations are bounded.
class WorkLimit {
 public:
  explicit WorkLimit(std::uint64_t units);
  WorkLimit(const WorkLimit&) = delete;
  WorkLimit& operator=(const WorkLimit&) = delete;
  ~WorkLimit();

 private:
  std::uint64_t outside_;  // what was left of the limit around this one
  std::uint64_t granted_;
};

/// The names of the symbols in a number, in the order of bytes; none for a rational.
[[nodiscard]] std::vector<std::string> symbols_of(const Number& number);

/// Numerator and denominator, each a polynomial with whole coefficients; for a rational its own.
[[nodiscard]] Number numerator_of(const Number& number);
[[nodiscard]] Number denominator_of(const Number& number);

/// The coefficients of a polynomial in one symbol, from that of its power 0 up to the highest that
/// is there; they hold the other symbols. For a number without the symbol only itself; never empty.
/// Requires a denominator free of the symbol.
[[nodiscard]] std::vector<Number> coefficients(const Number& polynomial, std::string_view symbol);

/// A symbol and what it stands for.
using SymbolValue = std::pair<std::string, Number>;

/// The number with values put in for some of its symbols, one after the other; nothing where a
/// denominator vanishes.
[[nodiscard]] std::optional<Number> substitute(const Number& number,
                                               std::span<const SymbolValue> values);

/// A number as a fraction in text: "24" over "5 r"; the lower part is empty where it would be 1. A
/// rational factor of a single product stays in front: "3/2 r" has no lower part. Factors that are
/// powers of symbols stand before a bracket, and powers of sums are seen: "r (r + 6)", "(r + 3)²".
/// The order of terms is by falling degree, then by the names; powers are "r²", or "r^2" in ASCII.
struct FractionText {
  std::string above, below;
  bool above_is_sum = false;      ///< a factor beside `above` needs brackets round it
  bool below_is_product = false;  ///< … round `below` in a fraction on one line
};
[[nodiscard]] FractionText fraction_text(const Number& number, Letters letters);

/// The same on one line: "24/(5 r)", "(r + 6)/2", "3/2 r", "r (r + 6)/(2 r + 6)". In unicode the
/// minus sign is "−" where symbols are in play.
[[nodiscard]] std::string one_line(const Number& number, Letters letters);

/// The same with brackets round a sum, so that a unit can follow: "(r + 3)".
[[nodiscard]] std::string bracketed_line(const Number& number, Letters letters);

/// How many terms numerator and denominator have together.
[[nodiscard]] std::size_t count_terms(const Number& number);

/// A polynomial as two sums without minus signs whose difference it is: "r s" and "8" for r s - 8.
/// Requires a denominator of 1.
[[nodiscard]] std::pair<Number, Number> positive_and_negative_terms(const Number& polynomial);

}  // namespace ohmfold

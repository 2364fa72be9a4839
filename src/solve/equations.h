// Solving the equations that given facts make: polynomials in the unknowns, each to be zero.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "ohmfold/surd.h"

namespace ohmfold {

/// Unknown number `unknown` found from equation number `equation`, which then was `collected` = 0.
struct SolvedFor {
  std::size_t unknown = 0, equation = 0;
  Number collected;
  Number value;  ///< in the unknowns that are still left
};

/// The way of the solution. Solutions are not sifted: some may be negative, or vanish from the
/// circuit.
struct EquationSolution {
  enum class End {
    solved,
    contradictory,  ///< an equation without unknowns does not hold: `failed`
    free,           ///< an unknown is in no equation that is left
    too_entangled
  };
  struct Root {
    std::vector<Surd> values;           ///< by unknown; empty where an elimination divides by zero
    std::optional<std::size_t> broken;  ///< an equation that does not hold there
  };

  End end = End::too_entangled;
  std::vector<SolvedFor> eliminations;
  std::optional<SolvedFor> last;  ///< the equation that `roots` are from; `value` is not used
  std::vector<Root> roots;        ///< in rising order of the last unknown
  std::vector<std::size_t> free;  ///< unknowns that every value fits
  std::size_t failed = 0;
};

/// The number as a polynomial with whole coefficients, that of the highest term positive: what is
/// to be zero where the number is.
[[nodiscard]] Number collected(const Number& number);

/// Eliminates unknowns that an equation holds in the first power, one after the other; the last one
/// comes from a linear or a quadratic equation. No positive solution is lost: an equation is solved
/// for an unknown only where its factor cannot vanish with the rest of it. Throws BeyondBudget.
[[nodiscard]] EquationSolution solve_equations(std::vector<Number> equations,
                                               const std::vector<std::string>& unknowns);

/// The roots of c0 + c1 x + c2 x² in rising order; of a double root one. Requires two or three
/// coefficients, the last of them not zero.
[[nodiscard]] std::vector<Surd> roots_of(const std::vector<Number>& coefficients);

}  // namespace ohmfold

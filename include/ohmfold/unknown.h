// How the values of unknown parts were found: the equations that the given facts make, the steps
// of solving them, and what became of each solution.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "ohmfold/surd.h"
#include "ohmfold/trace.h"

namespace ohmfold {

/// How the search for unknown values ended.
enum class UnknownOutcome : std::uint8_t {
  found,               ///< one or more solutions fit
  no_value,            ///< the givens contradict the circuit: no positive value fits
  any_value,           ///< an unknown is not determined: every value of it fits
  too_entangled,       ///< the equations cannot be solved in closed form
  too_long,            ///< the equations would be too long
  case_contradicts,    ///< the case in which something is given contradicts itself
  given_undetermined,  ///< the circuit does not fix a quantity that is given
  ideal_loop           ///< a loop of ideal parts would fix an unknown battery
};

/// A given as an equation: form = value.
struct UnknownEquation {
  std::size_t given = 0;    ///< index into Problem::givens
  std::size_t form_in = 0;  ///< index into UnknownSolution::forms
  Reading form;             ///< the quantity with the unknowns as symbols
  /// form − value over one denominator: its numerator, which has to be zero. Whole coefficients.
  Number collected;
};

/// An equation that holds an unknown only in the first power was solved for it.
struct Elimination {
  PartId unknown;
  std::size_t equation = 0;  ///< index into UnknownSolution::equations
  Number collected;          ///< = 0: the equation with what was found before put in
  Number value;              ///< of the unknown, in those that are still left
};

/// What became of one solution of the equations.
enum class RootFate : std::uint8_t {
  fits,
  not_positive,    ///< it makes a resistance zero or negative
  turned_round,    ///< it makes a battery's voltage negative, and another solution does not
  other_given,     ///< another given does not hold with it
  does_not_exist,  ///< there is no such value: a denominator vanishes
};

struct UnknownRoot {
  std::vector<Surd> values;  ///< by UnknownSolution::unknowns; empty with RootFate::does_not_exist
  RootFate fate = RootFate::fits;
  PartId blamed;             ///< with not_positive and turned_round: the unknown
  std::size_t equation = 0;  ///< with other_given: index into UnknownSolution::equations
};

/// The last equation, in one unknown: linear or quadratic.
struct LastEquation {
  PartId unknown;
  std::size_t equation = 0;  ///< index into UnknownSolution::equations
  Number collected;          ///< = 0: a polynomial in the unknown
};

/// One search for unknown values. The symbol of an unknown is the name of its part; it counts in
/// ohm, for a battery in volt.
struct UnknownSolution {
  std::vector<PartId> unknowns;
  std::vector<CaseTrace> forms;  ///< the circuit solved with symbols, for each case with a given
  std::vector<UnknownEquation> equations;
  std::vector<Elimination> eliminations;  ///< in the order made
  std::optional<LastEquation> last;
  std::vector<UnknownRoot> roots;  ///< in rising order of the last unknown
  std::vector<PartId> free;        ///< with any_value: the unknowns that every value fits
  std::size_t failed = 0;          ///< with no_value and no root: the equation that cannot hold;
                                   ///< with given_undetermined: the one whose form has no value
  /// With no_value and one unknown resistance: with a gap in its place the given would hold.
  bool gap_would_do = false;
  UnknownOutcome outcome = UnknownOutcome::found;
};

}  // namespace ohmfold

// Equations as sums of terms by point, compared term by term.
#include "check/node_elimination.h"

#include <algorithm>
#include <map>
#include <set>
#include <string>

#include "check/report.h"

namespace ohmfold {
namespace {

using check::fail;
using check::name_of;

/// Terms by point on the left, a constant on the right; terms of 0 are left out.
struct Linear {
  std::map<PointId, Number> terms;
  Number constant;

  void add(PointId point, const Number& coefficient) {
    const auto at = terms.try_emplace(point, 0).first;
    at->second += coefficient;
    if (at->second.is_zero()) terms.erase(at);
  }
  void add(const PotentialEquation& equation, const Number& factor) {
    for (const PotentialTerm& term : equation.terms) add(term.point, factor * term.coefficient);
    constant += factor * equation.constant.number;
  }
  friend bool operator==(const Linear&, const Linear&) = default;
};

class EliminationCheck {
 public:
  explicit EliminationCheck(const CaseTrace& results)
      : results_(results), written_(results.elimination), end_(results.main.end) {}

  Check run() {
    check_.law = CheckLaw::elimination;
    check_.holds = true;
    check_.places = written_.equations.size();
    for (const FixedPotential& fixed : written_.fixed) check_fixed(fixed);
    for (std::size_t i = 0; i < written_.equations.size(); ++i) {
      check_follows(i);
      check_holds(i);
    }
    check_found();
    return check_;
  }

 private:
  void note(std::size_t index, const std::string& what) {
    fail(check_, "equation #" + std::to_string(index) + " " + what);
  }

  [[nodiscard]] std::optional<Number> potential(PointId point) const {
    if (point.index >= results_.nodes.size()) return std::nullopt;
    const Reading& reading = results_.nodes[point.index].potential;
    return reading.value ? std::optional(reading.value->number) : std::nullopt;
  }

  void check_fixed(const FixedPotential& fixed) {
    const auto high = potential(fixed.point);
    const auto low = potential(fixed.base);
    if (high && low && *high - *low == fixed.rise.number) return;
    fail(check_, name_of(fixed.point) + " is not above " + name_of(fixed.base) + " by " +
                     fixed.rise.number.to_string());
  }

  void check_holds(std::size_t index) {
    const PotentialEquation& equation = written_.equations[index];
    Number sum;
    for (const PotentialTerm& term : equation.terms) {
      const auto value = potential(term.point);
      if (!value) return note(index, "asks for a potential that is not stated");
      sum += term.coefficient * *value;
    }
    if (!(sum == equation.constant.number)) note(index, "does not hold");
  }

  void check_follows(std::size_t index) {
    const PotentialEquation& equation = written_.equations[index];
    Linear stated;
    stated.add(equation, equation.divisor);
    if (equation.divisor.is_zero() || equation.factor.is_zero()) {
      return note(index, "is multiplied or divided by 0");
    }
    if (equation.origin == EquationOrigin::current_law) {
      if (!(stated == law_at(equation))) note(index, "is not the current law there");
      return;
    }
    Linear sum;
    for (const EquationShare& share : equation.from) {
      if (share.equation >= index) return note(index, "follows from a later one");
      sum.add(written_.equations[share.equation], share.factor);
    }
    if (!(stated == sum)) note(index, "is not the sum that it says");
    const bool is_there = stated.terms.contains(equation.unknown);
    const bool is_solved = equation.origin == EquationOrigin::solved;
    if (is_there != is_solved) note(index, "eliminates or finds another potential than it says");
    if (is_solved &&
        (stated.terms.size() != 1 || equation.terms.front().coefficient != Number(1))) {
      note(index, "is not solved");
    }
  }

  // The currents that leave the points through what is left, with fixed potentials put in.
  [[nodiscard]] Linear law_at(const PotentialEquation& equation) const {
    Linear law;
    const std::set<PointId> inside(equation.points.begin(), equation.points.end());
    for (const PartId part : results_.main.left) {
      const PointId from = end_.from(part);
      const PointId to = end_.to(part);
      if (inside.contains(from) == inside.contains(to)) continue;
      const bool is_battery = end_.kind(part) == ElementKind::battery;
      const Number resistance =
          is_battery ? end_.battery(part).internal.number : end_.resistance(part).lowest_terms();
      if (resistance.is_zero()) continue;  // the stated law would miss a battery: it cannot agree
      const Number share =
          (inside.contains(from) ? equation.factor : -equation.factor) / resistance;
      law.add(from, share);
      law.add(to, -share);
      if (is_battery) law.constant -= share * end_.battery(part).emf.number;
    }
    for (const FixedPotential& fixed : written_.fixed) {
      const auto at = law.terms.find(fixed.point);
      if (at == law.terms.end()) continue;
      const Number coefficient = at->second;
      law.add(fixed.point, -coefficient);
      law.add(fixed.base, coefficient);
      law.constant -= coefficient * fixed.rise.number;
    }
    law.terms.erase(written_.ground);
    return law;
  }

  void check_found() {
    const auto ground = potential(written_.ground);
    if (!ground || !ground->is_zero()) fail(check_, "the ground is not at 0 V");
    for (const PointId unknown : written_.unknowns) {
      const bool found = std::any_of(
          written_.equations.begin(), written_.equations.end(), [&](const PotentialEquation& one) {
            return one.origin == EquationOrigin::solved && one.unknown == unknown;
          });
      if (!found) fail(check_, "the potential of " + name_of(unknown) + " is not found");
    }
  }

  const CaseTrace& results_;
  const NodeElimination& written_;
  const Network& end_;
  Check check_;
};

}  // namespace

std::optional<Check> check_elimination(const CaseTrace& results) {
  if (results.elimination.equations.empty()) return std::nullopt;
  return EliminationCheck(results).run();
}

}  // namespace ohmfold

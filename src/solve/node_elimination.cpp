// Current laws in whole numbers, Gauss's method in file order, and putting back in.
#include "solve/node_elimination.h"

#include <algorithm>
#include <map>

#include "solve/ideal_currents.h"

namespace ohmfold {
namespace {

// Values of more bits than this together are not worked with on paper.
constexpr std::size_t kMostBits = 4000;

Number whole(const cln::cl_I& number) {
  return Number(cln::cl_RA(number));
}

Number common_factor(const PotentialEquation& equation) {
  cln::cl_I factor = equation.constant.number.numerator();
  for (const PotentialTerm& term : equation.terms) {
    factor = cln::gcd(factor, term.coefficient.numerator());
  }
  return whole(factor);
}

Number coefficient(const PotentialEquation& equation, PointId point) {
  for (const PotentialTerm& term : equation.terms) {
    if (term.point == point) return term.coefficient;
  }
  return 0;
}

class Elimination {
 public:
  Elimination(const Network& network, const std::vector<PartId>& left, PointId ground)
      : network_(network), left_(left), ground_(network.representative(ground)) {}

  NodeElimination run() {
    result_.ground = ground_;
    join_points();
    if (!offset_.contains(ground_) || is_beyond() || !is_one_piece()) return {};
    for (const auto& [point, offset] : offset_) {
      if (point == ground_) continue;
      if (offset.base == point) {
        result_.unknowns.push_back(point);
      } else {
        result_.fixed.push_back({point, offset.base, {offset.rise}});
      }
    }
    if (result_.unknowns.size() > kMostWrittenUnknowns || bits() > kMostBits) {
      return std::move(result_);
    }
    for (const PointId unknown : result_.unknowns) write_law(unknown);
    for (std::size_t i = 0; i + 1 < result_.unknowns.size(); ++i) eliminate(i);
    for (std::size_t i = result_.unknowns.size(); i-- > 0;) put_back(i);
    return std::move(result_);
  }

 private:
  struct Offset {
    PointId base;
    Number rise;
  };
  // What a part says of the current that leaves a point: conductance * (V(here) - V(there) + emf).
  struct Branch {
    PointId there;
    Number conductance, emf;
  };

  [[nodiscard]] bool is_ideal(PartId part) const {
    return network_.kind(part) == ElementKind::battery && network_.battery(part).internal.is_zero();
  }

  // Equations in whole numbers, for resistors and batteries alone.
  [[nodiscard]] bool is_beyond() const {
    return std::any_of(left_.begin(), left_.end(), [&](PartId part) {
      const ElementKind kind = network_.kind(part);
      const bool known = kind == ElementKind::resistor || kind == ElementKind::battery;
      return !known || network_.is_symbolic(part);
    });
  }

  [[nodiscard]] std::size_t bits() const {
    std::size_t sum = 0;
    for (const PartId part : left_) sum += network_.value_bits(part);
    return sum;
  }

  // Points that ideal batteries join get one base: the ground, or else the first in the file.
  void join_points() {
    std::vector<PartId> ideal;
    for (const PartId part : left_) {
      offset_[network_.from(part)];
      offset_[network_.to(part)];
      if (is_ideal(part)) ideal.push_back(part);
    }
    for (auto& [point, offset] : offset_) offset.base = point;
    for (const auto& branch : ideal_forest(network_, ideal).branches) {
      const Number& emf = network_.battery(branch.part).emf.number;
      const Offset& above = offset_[branch.above];
      const bool rises = network_.from(branch.part) == branch.above;
      offset_[branch.below] = {above.base, rises ? above.rise + emf : above.rise - emf};
    }
    std::map<PointId, PointId> chosen;  // by the root of the tree
    for (const auto& [point, offset] : offset_) chosen.try_emplace(offset.base, point);
    if (const auto at = offset_.find(ground_); at != offset_.end()) {
      chosen[at->second.base] = ground_;
    }
    std::map<PointId, Number> shift;
    for (const auto& [root, point] : chosen) shift[root] = offset_[point].rise;
    for (auto& [point, offset] : offset_) {
      offset.rise -= shift[offset.base];
      offset.base = chosen[offset.base];
    }
  }

  [[nodiscard]] bool is_one_piece() const {
    std::vector<PointId> reached{ground_};
    std::map<PointId, bool> seen{{ground_, true}};
    while (!reached.empty()) {
      const PointId point = reached.back();
      reached.pop_back();
      network_.for_each_at(point, [&](PartId part) {
        const PointId other = network_.across(part, point);
        if (seen.try_emplace(other, true).second) reached.push_back(other);
      });
    }
    return seen.size() == offset_.size();
  }

  [[nodiscard]] Branch branch(PartId part, PointId here) const {
    const PointId there = network_.across(part, here);
    if (network_.kind(part) != ElementKind::battery) {
      return {there, Number(1) / network_.resistance(part).lowest_terms(), 0};
    }
    const BatteryData& battery = network_.battery(part);
    const bool drives = network_.from(part) == here;  // from its negative terminal out at the other
    return {there, Number(1) / battery.internal.number,
            drives ? battery.emf.number : -battery.emf.number};
  }

  void write_law(PointId unknown) {
    PotentialEquation law;
    law.origin = EquationOrigin::current_law;
    law.number = static_cast<std::uint32_t>(result_.equations.size() + 1);
    std::map<PointId, Number> coefficients;
    cln::cl_I multiple = 1;
    for (const auto& [point, offset] : offset_) {
      if (offset.base != unknown) continue;
      law.points.push_back(point);
      for (const PartId part : left_) {
        if (network_.from(part) != point && network_.to(part) != point) continue;
        const auto [there, conductance, emf] = branch_or_none(part, point);
        const Offset& other = offset_.at(there);
        if (other.base == unknown) continue;
        const Number constant = conductance * (other.rise - offset.rise - emf);
        coefficients[unknown] += conductance;
        if (other.base != ground_) coefficients[other.base] -= conductance;
        law.constant.number += constant;
        multiple = cln::lcm(cln::lcm(multiple, conductance.denominator()), constant.denominator());
      }
    }
    law.factor = whole(multiple);
    for (const auto& [point, value] : coefficients) {
      law.terms.push_back({point, value * law.factor});
    }
    law.constant.number = law.constant.number * law.factor;
    finish(std::move(law));
  }

  // A part whose ends ideal batteries join drives no current that the equations ask for.
  [[nodiscard]] Branch branch_or_none(PartId part, PointId here) const {
    if (offset_.at(network_.from(part)).base == offset_.at(network_.to(part)).base) {
      return {network_.across(part, here), 0, 0};
    }
    return branch(part, here);
  }

  // In lowest terms; but where that would be the solution, as in 17 V = 102 V, it is left to the
  // last step.
  void finish(PotentialEquation equation) {
    const Number common = common_factor(equation);
    const bool would_solve =
        equation.terms.size() == 1 && equation.terms.front().coefficient == common;
    if (!would_solve && common != Number(1)) {
      equation.divisor = common;
      for (PotentialTerm& term : equation.terms) term.coefficient = term.coefficient / common;
      equation.constant.number = equation.constant.number / common;
    }
    latest_[equation.number] = result_.equations.size();
    result_.equations.push_back(std::move(equation));
  }

  void add_share(PotentialEquation& sum, std::size_t index, const Number& factor) const {
    sum.from.push_back({index, factor});
    for (const PotentialTerm& term : result_.equations[index].terms) {
      const auto at = std::find_if(sum.terms.begin(), sum.terms.end(),
                                   [&](const auto& own) { return own.point == term.point; });
      if (at == sum.terms.end()) {
        sum.terms.push_back({term.point, factor * term.coefficient});
      } else {
        at->coefficient += factor * term.coefficient;
      }
    }
    sum.constant.number += factor * result_.equations[index].constant.number;
  }

  static void tidy(PotentialEquation& sum) {
    std::erase_if(sum.terms, [](const PotentialTerm& term) { return term.coefficient.is_zero(); });
    std::sort(sum.terms.begin(), sum.terms.end(),
              [](const auto& a, const auto& b) { return a.point < b.point; });
  }

  [[nodiscard]] std::size_t latest(std::size_t unknown) const {
    return latest_.at(static_cast<std::uint32_t>(unknown + 1));
  }

  // The law of an unknown keeps a positive coefficient for it: others only ever feed it.
  void eliminate(std::size_t which) {
    const PointId unknown = result_.unknowns[which];
    const std::size_t pivot = latest(which);
    const Number own = coefficient(result_.equations[pivot], unknown);
    for (std::size_t later = which + 1; later < result_.unknowns.size(); ++later) {
      const std::size_t replaced = latest(later);
      const Number other = coefficient(result_.equations[replaced], unknown);
      if (other.is_zero()) continue;
      const Number common = whole(cln::gcd(own.numerator(), other.numerator()));
      PotentialEquation sum;
      sum.origin = EquationOrigin::combined;
      sum.number = result_.equations[replaced].number;
      sum.times = result_.equations[replaced].times + 1;
      sum.unknown = unknown;
      add_share(sum, replaced, own / common);
      add_share(sum, pivot, -(other / common));
      tidy(sum);
      finish(std::move(sum));
    }
  }

  void put_back(std::size_t which) {
    PotentialEquation sum;
    sum.origin = EquationOrigin::solved;
    sum.unknown = result_.unknowns[which];
    const PotentialEquation equation = result_.equations[latest(which)];
    add_share(sum, latest(which), 1);
    for (const PotentialTerm& term : equation.terms) {
      if (term.point != sum.unknown) add_share(sum, solved_.at(term.point), -term.coefficient);
    }
    tidy(sum);
    sum.divisor = coefficient(equation, sum.unknown);
    sum.terms = {{sum.unknown, 1}};
    sum.constant.number = sum.constant.number / sum.divisor;
    solved_[sum.unknown] = result_.equations.size();
    result_.equations.push_back(std::move(sum));
  }

  const Network& network_;
  const std::vector<PartId>& left_;
  PointId ground_;
  NodeElimination result_;
  std::map<PointId, Offset> offset_;
  std::map<std::uint32_t, std::size_t> latest_;  // by number: index of the equation
  std::map<PointId, std::size_t> solved_;        // by unknown
};

}  // namespace

NodeElimination write_elimination(const Network& network, const std::vector<PartId>& left,
                                  PointId ground) {
  return Elimination(network, left, ground).run();
}

}  // namespace ohmfold

// Modified node-voltage analysis in a matrix of GiNaC.
#include "check/matrix_solution.h"

#include <ginac/ginac.h>

#include <exception>
#include <string>

#include "circuit/disjoint_sets.h"
#include "ohmfold/error.h"

namespace ohmfold::check {
namespace {

constexpr std::uint32_t kGround = UINT32_MAX;

bool is_living(const Network& network, PartId part) {
  return network.is_alive(part) && network.kind(part) != ElementKind::port;
}

// Which unknown stands for each point, and which for the current of each battery.
struct Unknowns {
  std::vector<std::uint32_t> of_point;  // kGround where the potential is zero
  std::vector<PartId> batteries;  // with a current of their own, numbered after the potentials
  std::uint32_t potentials = 0;

  explicit Unknowns(const Network& network) : of_point(network.point_count(), kGround) {
    DisjointSets wired(network.point_count());
    DisjointSets joined(network.point_count());
    for (std::uint32_t i = 0; i < network.part_count(); ++i) {
      const PartId part{i};
      const ElementKind kind = network.kind(part);
      if (!is_living(network, part) || is_gap(kind)) continue;
      if (kind == ElementKind::current_source) continue;
      joined.join(network.from(part).index, network.to(part).index);
      if (is_wire(kind)) wired.join(network.from(part).index, network.to(part).index);
    }
    // Wires and the batteries that do not close a loop with those before them.
    DisjointSets ideal = wired;
    for (const BatteryData& battery : network.batteries()) {
      if (!is_living(network, battery.part) || !battery.internal.is_zero()) continue;
      if (ideal.join(network.from(battery.part).index, network.to(battery.part).index)) {
        batteries.push_back(battery.part);
      }
    }
    std::vector<std::uint32_t> of_set(of_point.size(), kGround);
    for (std::uint32_t i = 0; i < of_point.size(); ++i) {
      const std::uint32_t set = wired.find(i);
      if (set == wired.find(joined.find(i))) continue;  // the set that grounds its piece
      if (of_set[set] == kGround) of_set[set] = potentials++;
      of_point[i] = of_set[set];
    }
  }

  [[nodiscard]] std::uint32_t count() const {
    return potentials + static_cast<std::uint32_t>(batteries.size());
  }
};

GiNaC::numeric to_ginac(const Number& number) {
  return GiNaC::numeric(cln::cl_N(number.raw()));
}

Number from_ginac(const GiNaC::ex& value) {
  ensure(GiNaC::is_exactly_a<GiNaC::numeric>(value), "node equations without a unique solution");
  const auto& number = GiNaC::ex_to<GiNaC::numeric>(value);
  ensure(number.is_rational(), "node equations with a solution that is no rational");
  return Number(cln::the<cln::cl_RA>(number.to_cl_N()));
}

// The current law at each unknown potential, and the voltage of each battery that has a current.
class Equations {
 public:
  Equations(const Network& network, const Unknowns& unknowns)
      : network_(network),
        unknowns_(unknowns),
        left_(unknowns.count(), unknowns.count()),
        right_(unknowns.count(), 1) {
    for (std::uint32_t i = 0; i < network.part_count(); ++i) {
      const PartId part{i};
      if (!is_living(network, part)) continue;
      if (network.kind(part) == ElementKind::resistor) {
        add_conductance(part, Number(1) / network.resistance(part).lowest_terms(), Number(0));
      } else if (network.kind(part) == ElementKind::current_source) {
        const GiNaC::numeric current = to_ginac(network.driven_current(part).number);
        inject(network.from(part), -current);
        inject(network.to(part), current);
      } else if (network.kind(part) == ElementKind::battery) {
        const BatteryData& battery = network.battery(part);
        if (battery.internal.is_zero()) continue;
        add_conductance(part, Number(1) / battery.internal.number, battery.emf.number);
      }
    }
    for (std::uint32_t i = 0; i < unknowns.batteries.size(); ++i) {
      add_battery(unknowns.batteries[i], unknowns.potentials + i);
    }
  }

  void inject(PointId point, const GiNaC::numeric& ampere) {
    const std::uint32_t row = unknowns_.of_point[point.index];
    if (row != kGround) right_(row, 0) += ampere;
  }

  [[nodiscard]] GiNaC::matrix solve() const {
    GiNaC::matrix names(unknowns_.count(), 1);
    for (unsigned i = 0; i < unknowns_.count(); ++i) names(i, 0) = GiNaC::symbol();
    return left_.solve(names, right_);
  }

 private:
  // Current out of the first point: conductance * (V_first - V_second + emf).
  void add_conductance(PartId part, const Number& conductance, const Number& emf) {
    const std::uint32_t from = unknowns_.of_point[network_.from(part).index];
    const std::uint32_t to = unknowns_.of_point[network_.to(part).index];
    const GiNaC::numeric g = to_ginac(conductance);
    const GiNaC::numeric drive = to_ginac(conductance * emf);
    if (from != kGround) {
      left_(from, from) += g;
      right_(from, 0) -= drive;
    }
    if (to != kGround) {
      left_(to, to) += g;
      right_(to, 0) += drive;
    }
    if (from != kGround && to != kGround) {
      left_(from, to) -= g;
      left_(to, from) -= g;
    }
  }

  // Its current runs from its negative terminal, through it, out of its positive one.
  void add_battery(PartId part, std::uint32_t own) {
    const std::uint32_t from = unknowns_.of_point[network_.from(part).index];
    const std::uint32_t to = unknowns_.of_point[network_.to(part).index];
    if (from != kGround) {
      left_(from, own) += 1;
      left_(own, from) -= 1;
    }
    if (to != kGround) {
      left_(to, own) -= 1;
      left_(own, to) += 1;
    }
    right_(own, 0) = to_ginac(network_.battery(part).emf.number);
  }

  const Network& network_;
  const Unknowns& unknowns_;
  GiNaC::matrix left_, right_;
};

}  // namespace

std::size_t count_unknowns(const Network& network) {
  return Unknowns(network).count();
}

std::vector<Number> matrix_potentials(const Network& network,
                                      const std::optional<Injection>& injection) {
  const Unknowns unknowns(network);
  std::vector<Number> potential(network.point_count());
  if (unknowns.count() == 0) return potential;
  try {
    Equations equations(network, unknowns);
    if (injection) {
      equations.inject(injection->in, 1);
      equations.inject(injection->out, -1);
    }
    const GiNaC::matrix solution = equations.solve();
    for (std::size_t i = 0; i < potential.size(); ++i) {
      const std::uint32_t row = unknowns.of_point[i];
      if (row != kGround) potential[i] = from_ginac(solution(row, 0));
    }
  } catch (const InternalError&) {
    throw;
  } catch (const std::exception& error) {
    throw InternalError(std::string("node equations could not be solved: ") + error.what());
  }
  return potential;
}

}  // namespace ohmfold::check

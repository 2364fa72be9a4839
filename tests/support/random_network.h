// Seeded random circuits for property tests: series-parallel trees, and multigraphs of any parts.
#pragma once

#include <cstdint>
#include <random>
#include <string>

#include "circuit/set_case.h"
#include "ohmfold/problem.h"

namespace ohmfold::support {

/// How many parts of each kind a random multigraph has. Ideal batteries and wires may contradict
/// each other; with Internal::all they cannot.
struct Multigraph {
  enum class Internal { none, some, all };

  std::size_t points = 6;
  std::size_t resistors = 8;
  std::size_t wires = 0;
  std::size_t open_switches = 0;
  std::size_t voltmeters = 0;
  std::size_t batteries = 1;
  std::size_t current_sources = 0;  ///< may lack a way back for their current where not connected
  Internal internal = Internal::none;
  bool connected = false;  ///< the first resistors form a tree over all points
};

/// Draws circuits. Equal seeds give equal circuits on every machine.
class RandomCircuits {
 public:
  explicit RandomCircuits(std::uint64_t seed) : random_(seed) {}

  /// A number below `end`.
  std::size_t below(std::size_t end) { return static_cast<std::size_t>(random_() % end); }

  /// A resistance from 1 to 12 ohm; one in four is a fraction.
  Number resistance() {
    const int whole = static_cast<int>(below(12)) + 1;
    if (below(4) > 0) return whole;
    return Number::quotient(whole, static_cast<int>(below(5)) + 2);
  }

  /// A battery E between points T (plus) and G, fed into `resistors` resistors that a random
  /// sequence of series and parallel splits makes from one. `series` of 100 splits are in series.
  /// Requires at least one resistor.
  Problem series_parallel(std::size_t resistors, std::size_t series = 50) {
    Problem problem = empty(2);
    problem.points = {"G", "T"};
    add(problem, PartKind::battery, PointId{0}, PointId{1}, static_cast<int>(below(24)) + 1);
    add(problem, PartKind::resistor, PointId{1}, PointId{0}, resistance());
    while (problem.parts.size() < resistors + 1) {
      Part& split = problem.parts[1 + below(problem.parts.size() - 1)];
      const PointId from = split.from;
      const PointId to = split.to;
      if (below(100) >= series) {
        add(problem, PartKind::resistor, from, to, resistance());
        continue;
      }
      const PointId middle = new_point(problem);
      split.to = middle;
      add(problem, PartKind::resistor, middle, to, resistance());
    }
    return problem;
  }

  /// Parts between random pairs of different points. Requires at least two points.
  Problem multigraph(const Multigraph& wanted) {
    Problem problem = empty(wanted.points);
    for (std::size_t i = 0; i < wanted.batteries; ++i) {
      add_anywhere(problem, PartKind::battery, static_cast<int>(below(24)) + 1);
      const bool is_ideal = wanted.internal == Multigraph::Internal::none ||
                            (wanted.internal == Multigraph::Internal::some && below(2) == 0);
      if (!is_ideal) problem.parts.back().internal = resistance();
    }
    for (std::size_t i = 0; i < wanted.resistors; ++i) {
      if (wanted.connected && i + 1 < wanted.points) {
        const auto point = static_cast<std::uint32_t>(i + 1);
        const auto other = static_cast<std::uint32_t>(below(point));
        add(problem, PartKind::resistor, PointId{point}, PointId{other}, resistance());
      } else {
        add_anywhere(problem, PartKind::resistor, resistance());
      }
    }
    for (std::size_t i = 0; i < wanted.current_sources; ++i) {
      add_anywhere(problem, PartKind::current_source, static_cast<int>(below(9)) - 4);
    }
    for (std::size_t i = 0; i < wanted.wires; ++i) add_anywhere(problem, PartKind::wire, 0);
    for (std::size_t i = 0; i < wanted.voltmeters; ++i) {
      add_anywhere(problem, PartKind::voltmeter, 0);
    }
    for (std::size_t i = 0; i < wanted.open_switches; ++i) {
      add_anywhere(problem, PartKind::knife_switch, 0);
      const auto last = static_cast<std::uint32_t>(problem.parts.size() - 1);
      problem.cases.front().settings.push_back({PartId{last}, SettingKind::open, 0});
    }
    return problem;
  }

 private:
  static Problem empty(std::size_t points) {
    Problem problem;
    problem.source_name = "random";
    problem.cases.push_back({"", {}});
    for (std::size_t i = 0; i < points; ++i) new_point(problem);
    return problem;
  }

  static PointId new_point(Problem& problem) {
    const auto index = static_cast<std::uint32_t>(problem.points.size());
    problem.points.push_back("P" + std::to_string(index));
    return PointId{index};
  }

  static void add(Problem& problem, PartKind kind, PointId from, PointId to, const Number& value) {
    Part part;
    part.name = "X" + std::to_string(problem.parts.size());
    part.kind = kind;
    part.from = from;
    part.to = to;
    part.value = value;
    problem.parts.push_back(part);
  }

  void add_anywhere(Problem& problem, PartKind kind, const Number& value) {
    const std::size_t from = below(problem.points.size());
    const std::size_t step = 1 + below(problem.points.size() - 1);
    const std::size_t to = (from + step) % problem.points.size();
    add(problem, kind, PointId{static_cast<std::uint32_t>(from)},
        PointId{static_cast<std::uint32_t>(to)}, value);
  }

  std::mt19937_64 random_;
};

/// The network of the problem's first case.
inline Network network_of(const Problem& problem) {
  return set_case(problem, problem.cases.front());
}

}  // namespace ohmfold::support

// Laws and node voltages modulo the primes of a solution.
#include "check/modular.h"

#include <string>

#include "check/arithmetic.h"
#include "check/flow.h"
#include "check/node_comparison.h"
#include "check/node_equations.h"

namespace ohmfold {
namespace {

using check::Flow;
using check::Wiring;

// What reduces has no core but in dead ends: not worth more than an instant for each prime.
constexpr std::size_t kMostCore = 300;

std::string fault_in(const ModularSolution& solution, std::size_t parts) {
  if (!PrimeField::accepts(solution.prime)) {
    return std::to_string(solution.prime) + " is no prime between 2^60 and 2^61";
  }
  if (solution.current.size() < parts || solution.voltage.size() < parts) {
    return "a current or voltage is missing";
  }
  for (std::size_t i = 0; i < parts; ++i) {
    if (solution.current[i] >= solution.prime || solution.voltage[i] >= solution.prime) {
      return check::name_of(PartId{static_cast<std::uint32_t>(i)}) + " has no residues";
    }
  }
  return {};
}

Flow<PrimeField> flow_of(const ModularSolution& solution, const Network& start,
                         const Wiring& wiring) {
  Flow<PrimeField> flow;
  flow.current.resize(start.part_count());
  flow.voltage.resize(start.part_count());
  for (const PartId part : wiring.conducting) {
    if (!wiring.is_open[part.index]) flow.current[part.index] = solution.current[part.index];
    flow.voltage[part.index] = solution.voltage[part.index];
  }
  for (const PartId drive : wiring.drives)
    flow.current[drive.index] = solution.current[drive.index];
  for (const PartId gap : wiring.gaps) flow.current[gap.index] = solution.current[gap.index];
  return flow;
}

std::vector<Check> check_solution(const PrimeField& field, const Network& start,
                                  const Wiring& wiring, const ModularSolution& solution) {
  const Flow<PrimeField> flow = flow_of(solution, start, wiring);
  std::vector<Check> checks = check::check_flow(field, start, wiring, flow, 0);
  const auto potential = check::node_potentials(field, start, wiring, std::nullopt, kMostCore);
  if (potential) checks.push_back(check::compare_flow(field, start, wiring, flow, *potential));
  return checks;
}

}  // namespace

std::vector<Check> check_modular(const Reduction& reduction,
                                 const std::vector<ModularSolution>& solutions) {
  const Network& start = reduction.start;
  const Wiring wiring(start);
  std::vector<Check> checks;
  for (std::size_t i = 0; i < solutions.size(); ++i) {
    const ModularSolution& solution = solutions[i];
    std::string fault = fault_in(solution, start.part_count());
    for (std::size_t k = 0; k < i; ++k) {
      if (solutions[k].prime == solution.prime) fault = "a prime is used twice";
    }
    if (!fault.empty()) {
      return {{CheckLaw::current, false, 0, {}, {}, 1, static_cast<int>(solutions.size()), fault}};
    }
    const PrimeField field(solution.prime);
    check::add_prime(checks, check_solution(field, start, wiring, solution));
  }
  return checks;
}

}  // namespace ohmfold

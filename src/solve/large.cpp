// The backward loop modulo random primes, for the checks.
#include "solve/large.h"

#include <algorithm>
#include <iterator>

#include "check/modular.h"
#include "check/step.h"
#include "exact/prime_field.h"
#include "solve/ideal_currents.h"
#include "solve/unfold.h"

namespace ohmfold {
namespace {

// Each prime lets a wrong value of a million bits pass with a chance of less than 10^-12.
constexpr int kPrimes = 3;

ModularSolution solution_modulo(const PrimeField& field, const Reduction& main,
                                const Flow<ExactField>& left) {
  Flow<PrimeField> flow(field, main.end.part_count());
  for (const PartId part : main.left) {
    flow.current[part.index] = field.from(left.current[part.index]);
    flow.voltage[part.index] = field.from(left.voltage[part.index]);
    flow.open_share[part.index] = left.open_share[part.index];
  }
  unfold(main, field, resistances(main, field), flow, [](Law, PartId, const Step&) {});
  const IdealForest forest = ideal_forest(main.start, ideal_parts(main.start, flow));
  find_ideal_currents(main.start, forest, field, flow);
  flow.current.resize(main.start.part_count());
  flow.voltage.resize(main.start.part_count());
  return {field.prime(), std::move(flow.current), std::move(flow.voltage)};
}

}  // namespace

std::vector<Check> check_large(const CaseTrace& result, const Flow<ExactField>& left) {
  std::vector<Check> checks = check_steps(result.main);
  std::vector<ModularSolution> solutions;
  solutions.reserve(kPrimes);
  for (int i = 0; i < kPrimes; ++i) {
    solutions.push_back(solution_modulo(PrimeField::random(), result.main, left));
  }
  std::vector<Check> laws = check_modular(result.main, solutions);
  checks.insert(checks.end(), std::make_move_iterator(laws.begin()),
                std::make_move_iterator(laws.end()));
  return checks;
}

}  // namespace ohmfold

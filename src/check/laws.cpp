// Choosing exact numbers or primes for the laws.
#include "check/laws.h"

#include "check/flow.h"
#include "check/rationals.h"
#include "check/wiring.h"

namespace ohmfold {
namespace {

using check::Arithmetic;

// Adding fractions costs the square of their bits; this is about a second's worth.
constexpr std::size_t kMostSquaredBits = 500'000'000'000;

bool is_quick(const CaseTrace& results) {
  std::size_t cost = 0;
  const auto add = [&](const Reading& reading) {
    if (!reading.value) return;
    const std::size_t bits = reading.value->number.bits();
    cost += bits < 1'000'000 ? bits * bits : kMostSquaredBits;
  };
  for (const BranchResult& branch : results.branches) {
    add(branch.current);
    add(branch.voltage);
    add(branch.power);
    if (cost > kMostSquaredBits) return false;
  }
  return true;
}

}  // namespace

std::vector<Check> check_laws(const Network& start, const CaseTrace& results,
                              std::size_t most_single, Arithmetic arithmetic) {
  const check::Wiring wiring(start);
  const bool exact =
      arithmetic == Arithmetic::exact || (arithmetic == Arithmetic::by_size && is_quick(results));
  const auto run = [&](const auto& field) {
    const auto flow = check::state_flow(field, results, start);
    return check::check_flow(field, start, wiring, flow, most_single);
  };
  if (exact) return run(check::Rationals{});
  std::vector<Check> checks;
  for (const PrimeField& field : check::random_fields()) check::add_prime(checks, run(field));
  return checks;
}

}  // namespace ohmfold

// Drawing primes, and folding the checks over them.
#include "check/arithmetic.h"

#include <algorithm>
#include <utility>

#include "check/report.h"
#include "ohmfold/error.h"

namespace ohmfold::check {

std::vector<PrimeField> random_fields(int count) {
  std::vector<PrimeField> fields;
  while (static_cast<int>(fields.size()) < count) {
    const PrimeField field = PrimeField::random();
    const bool is_new = std::none_of(fields.begin(), fields.end(), [&](const PrimeField& other) {
      return other.prime() == field.prime();
    });
    if (is_new) fields.push_back(field);
  }
  return fields;
}

void add_prime(std::vector<Check>& checks, std::vector<Check> more) {
  if (checks.empty()) {
    checks = std::move(more);
    for (Check& check : checks) check.primes = 1;
    return;
  }
  ensure(checks.size() == more.size(), "other checks were made modulo another prime");
  for (std::size_t i = 0; i < checks.size(); ++i) {
    ++checks[i].primes;
    if (!more[i].holds) fail(checks[i], more[i].detail);
  }
}

}  // namespace ohmfold::check

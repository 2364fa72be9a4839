// Whether a check is made exactly or modulo primes, and the checks over several primes as one.
#pragma once

#include <vector>

#include "exact/prime_field.h"
#include "ohmfold/trace.h"

namespace ohmfold::check {

/// What numbers are compared as.
enum class Arithmetic {
  by_size,  ///< exact while that is quick, modular beyond
  exact,
  modular,  ///< modulo kPrimes random primes
};

inline constexpr int kPrimes = 3;

/// Different random primes.
[[nodiscard]] std::vector<PrimeField> random_fields(int count = kPrimes);

/// Adds the same checks, made modulo one more prime: each holds where it holds modulo all of them.
/// Requires lists of the same checks, or none so far.
void add_prime(std::vector<Check>& checks, std::vector<Check> more);

}  // namespace ohmfold::check

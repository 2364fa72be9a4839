// Random primes, residues of long numbers, and division modulo a prime.
#include "exact/prime_field.h"

#include <algorithm>
#include <array>
#include <bit>
#include <random>

#include "exact/polynomial.h"
#include "exact/rational_function.h"
#include "ohmfold/error.h"

namespace ohmfold {
namespace {

cln::cl_I whole(std::uint64_t number) {
  static_assert(sizeof(unsigned long long) == sizeof(std::uint64_t));
  return {static_cast<unsigned long long>(number)};
}

constexpr std::array<std::uint64_t, 12> kSmallPrimes = {2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37};

// Miller and Rabin's test of an odd number between PrimeField's limits, whose arithmetic does not
// ask whether its modulus is prime.
bool passes(const PrimeField& ring, std::uint64_t base) {
  const std::uint64_t last = ring.prime() - 1;
  const int twos = std::countr_zero(last);
  std::uint64_t power = 1;
  for (int bit = 60; bit >= twos; --bit) {
    power = ring.multiply(power, power);
    if (((last >> bit) & 1U) != 0) power = ring.multiply(power, base);
  }
  if (power == 1) return true;
  for (int i = 0; i < twos; ++i) {
    if (power == last) return true;
    power = ring.multiply(power, power);
  }
  return false;
}

// Below 3.3 * 10^24 the bases up to 37 leave no doubt (Sorenson and Webster, Math. Comp. 86 (2017)
// 985, from memory).
bool is_prime(std::uint64_t number) {
  const auto divides = [&](std::uint64_t small) { return number % small == 0; };
  if (std::any_of(kSmallPrimes.begin(), kSmallPrimes.end(), divides)) return false;
  const PrimeField ring(number);
  return std::all_of(kSmallPrimes.begin(), kSmallPrimes.end(),
                     [&](std::uint64_t base) { return passes(ring, base); });
}

}  // namespace

PrimeField::PrimeField(std::uint64_t prime)
    : prime_(prime),
      reciprocal_(prime > kLeast ? static_cast<std::uint64_t>((static_cast<Wide>(1) << 124) / prime)
                                 : 0) {
  ensure(prime > kLeast && prime < kMost, "a prime outside the range");
}

PrimeField PrimeField::random() {
  std::random_device entropy;
  while (true) {
    const std::uint64_t bits = (std::uint64_t{entropy()} << 32) | entropy();
    const std::uint64_t candidate = (kLeast + bits % kLeast) | 1U;
    if (accepts(candidate)) return PrimeField(candidate);
  }
}

bool PrimeField::accepts(std::uint64_t prime) {
  return prime > kLeast && prime < kMost && is_prime(prime);
}

PrimeField::Value PrimeField::from(const cln::cl_I& whole_number) const {
  return cln::cl_I_to_UQ(cln::mod(whole_number, whole(prime_)));
}

PrimeField::Value PrimeField::from(const Polynomial& polynomial,
                                   const std::vector<Value>& symbols) const {
  Value sum = 0;
  for (const Polynomial::Term& term : polynomial.terms()) {
    Value product = from(term.coefficient);
    for (std::size_t i = 0; i < symbols.size(); ++i) {
      product = multiply(product, power_of(symbols[i], term.monomial.exponents.at(i)));
    }
    sum = add(sum, product);
  }
  return sum;
}

PrimeField::Value PrimeField::power_of(Value base, unsigned exponent) const {
  Value result = 1;
  for (; exponent > 0; exponent /= 2, base = multiply(base, base)) {
    if (exponent % 2 == 1) result = multiply(result, base);
  }
  return result;
}

// A residue for each name that has nothing to do with those of others, and that nobody can foresee
// since the prime is random. The constants mix bits well (Steele, Lea and Flood, OOPSLA 2014, 453).
PrimeField::Value PrimeField::residue_of(std::string_view symbol) const {
  std::uint64_t mixed = reciprocal_;
  for (const char letter : symbol) {
    mixed += 0x9e3779b97f4a7c15U + static_cast<unsigned char>(letter);
    mixed = (mixed ^ (mixed >> 30)) * 0xbf58476d1ce4e5b9U;
    mixed = (mixed ^ (mixed >> 27)) * 0x94d049bb133111ebU;
    mixed ^= mixed >> 31;
  }
  return mixed % prime_;
}

PrimeField::Value PrimeField::from(const RationalFunction& function) const {
  std::vector<Value> symbols;
  for (const std::string& name : *function.names) symbols.push_back(residue_of(name));
  return divide(from(function.numerator, symbols), from(function.denominator, symbols));
}

PrimeField::Value PrimeField::from(const Number& number) const {
  if (number.is_symbolic()) return from(number.function());
  const Value numerator = from(number.numerator());
  return number.is_integer() ? numerator : divide(numerator, from(number.denominator()));
}

PrimeField::Value PrimeField::from(const Ratio& ratio) const {
  if (ratio.is_symbolic()) return from(ratio.lowest_terms());
  return divide(from(ratio.p()), from(ratio.q()));
}

PrimeField::Value PrimeField::divide(Value a, Value b) const {
  ensure(b != 0, "a division by zero modulo a prime");
  // Euclid's algorithm: throughout, rest = factor * b modulo the prime.
  Value rest = b;
  Value factor = 1;
  Value last_rest = prime_;
  Value last_factor = 0;
  while (rest != 1) {
    const Value times = last_rest / rest;
    const Value next_rest = last_rest - times * rest;
    const Value next_factor = subtract(last_factor, multiply(times, factor));
    last_rest = rest;
    last_factor = factor;
    rest = next_rest;
    factor = next_factor;
    ensure(rest != 0, "the modulus is no prime");
  }
  return multiply(a, factor);
}

std::string PrimeField::text(Value value) const {
  return std::to_string(value) + " modulo " + std::to_string(prime_);
}

}  // namespace ohmfold

// Arithmetic modulo a random prime of 61 bits: large equations are checked with it in linear time.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "ohmfold/value.h"

namespace ohmfold {

class Polynomial;

/// The integers modulo a prime between 2^60 and 2^61. Values are residues from 0 to prime - 1.
///
/// A wrong equation between rationals of b bits holds modulo the prime only where the prime divides
/// a number of about b bits: at most b/60 of the more than 10^16 primes in the range do. The prime
/// is drawn from the system's entropy, so that no input can be made to fit it. The same chance is
/// that of a division by zero where there is none among the rationals (InternalError).
class PrimeField {
 public:
  using Value = std::uint64_t;

  static constexpr std::uint64_t kLeast = std::uint64_t{1} << 60;
  static constexpr std::uint64_t kMost = std::uint64_t{1} << 61;

  /// Requires a prime between kLeast and kMost (of which only the range is checked; all but
  /// division is right for any number there).
  explicit PrimeField(std::uint64_t prime);

  /// A field of a random prime. Cost: some tens of microseconds.
  [[nodiscard]] static PrimeField random();
  /// Is this a prime between kLeast and kMost?
  [[nodiscard]] static bool accepts(std::uint64_t prime);

  [[nodiscard]] std::uint64_t prime() const { return prime_; }

  /// The residue. Cost: linear in the bits.
  [[nodiscard]] Value from(const cln::cl_I& whole) const;
  /// The residue of a word.
  [[nodiscard]] Value from_word(std::int64_t word) const {
    const auto prime = static_cast<std::int64_t>(prime_);
    if (word >= prime || word < -prime) word %= prime;
    return static_cast<Value>(word < 0 ? word + prime : word);
  }
  /// The residue as a number between -prime / 2 and prime / 2.
  [[nodiscard]] std::int64_t balanced(Value value) const {
    const auto word = static_cast<std::int64_t>(value);
    return value > prime_ / 2 ? word - static_cast<std::int64_t>(prime_) : word;
  }
  /// Requires a denominator that the prime does not divide. Each symbol is taken at a residue of
  /// its own, so that a wrong equation of degree d holds with a chance of d in 2^60 at most.
  [[nodiscard]] Value from(const Number& number) const;
  [[nodiscard]] Value from(const Ratio& ratio) const;

  [[nodiscard]] Value add(Value a, Value b) const {
    const Value sum = a + b;
    return sum < prime_ ? sum : sum - prime_;
  }
  [[nodiscard]] Value subtract(Value a, Value b) const { return a < b ? a + (prime_ - b) : a - b; }
  [[nodiscard]] Value multiply(Value a, Value b) const {
    // Barrett's method: reciprocal_ is 2^124 / prime rounded down, so that `times` is the quotient
    // or at most two less.
    const Wide product = static_cast<Wide>(a) * b;
    const auto head = static_cast<std::uint64_t>(product >> 60);
    const auto times = static_cast<std::uint64_t>((static_cast<Wide>(head) * reciprocal_) >> 64);
    std::uint64_t rest = static_cast<std::uint64_t>(product) - times * prime_;
    if (rest >= prime_) rest -= prime_;
    return rest < prime_ ? rest : rest - prime_;
  }
  /// start + factor * value, summed over `terms` (pairs of an index and a factor), where the value
  /// is values[index]. Cheaper than term after term: only the sum is reduced modulo the prime.
  template <class Terms>
  [[nodiscard]] Value sum_of_products(Value start, const Terms& terms, const Value* values) const {
    const Wide many = static_cast<Wide>(prime_) << 63;
    Wide sum = start;
    for (const auto& [index, factor] : terms) {
      sum += static_cast<Wide>(factor) * values[index];
      if (sum >= many) sum -= many;
    }
    // As in multiply; below 2^124 the quotient is at most three less.
    const auto head = static_cast<std::uint64_t>(sum >> 60);
    const auto times = static_cast<std::uint64_t>((static_cast<Wide>(head) * reciprocal_) >> 64);
    std::uint64_t rest = static_cast<std::uint64_t>(sum) - times * prime_;
    while (rest >= prime_) rest -= prime_;
    return rest;
  }
  /// Requires b other than zero (InternalError otherwise).
  [[nodiscard]] Value divide(Value a, Value b) const;

  /// "5 modulo 1152921504606847009", for reports.
  [[nodiscard]] std::string text(Value value) const;

 private:
  __extension__ using Wide = unsigned __int128;

  [[nodiscard]] Value from(const RationalFunction& function) const;
  [[nodiscard]] Value from(const Polynomial& polynomial, const std::vector<Value>& symbols) const;
  [[nodiscard]] Value power_of(Value base, unsigned exponent) const;
  [[nodiscard]] Value residue_of(std::string_view symbol) const;

  std::uint64_t prime_;
  std::uint64_t reciprocal_;
};

}  // namespace ohmfold

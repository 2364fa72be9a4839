// Euclid's algorithm to half of the length, with Lehmer's many steps at a time.
#include "exact/fraction.h"

#include <cstdint>
#include <utility>

namespace ohmfold {
namespace {

constexpr std::size_t kWord = 62;  // leading bits that the steps are taken from

// Several steps of Euclid's algorithm at once: (u, v) becomes (a u + b v, c u + d v).
struct Steps {
  std::int64_t a = 1, b = 0, c = 0, d = 1;
};

// The steps that the leading bits alone are sure of.
Steps sure_steps(std::int64_t u, std::int64_t v) {
  Steps s;
  while (v + s.c != 0 && v + s.d != 0) {
    const std::int64_t q = (u + s.a) / (v + s.c);
    if (q != (u + s.b) / (v + s.d)) break;
    s = {s.c, s.d, s.a - q * s.c, s.b - q * s.d};
    u = std::exchange(v, u - q * v);
  }
  return s;
}

cln::cl_I times(std::int64_t factor, const cln::cl_I& number) {
  return cln::cl_I(static_cast<long>(factor)) * number;
}

void combine(const Steps& s, cln::cl_I& first, cln::cl_I& second) {
  cln::cl_I next = times(s.a, first) + times(s.b, second);
  second = times(s.c, first) + times(s.d, second);
  first = std::move(next);
}

}  // namespace

std::optional<WholeFraction> fraction_of_residue(const cln::cl_I& residue, const cln::cl_I& modulus,
                                                 std::size_t spare) {
  const std::size_t bits = cln::integer_length(modulus);
  const std::size_t half = bits / 2;
  // Throughout, rest = factor * residue modulo the modulus, and so before.
  cln::cl_I before = modulus, rest = residue;
  cln::cl_I factor_before = 0, factor = 1;
  while (cln::integer_length(rest) > half) {
    const std::size_t length = cln::integer_length(before);
    Steps steps;
    // Near the end single steps only, so that none goes too far.
    if (cln::integer_length(rest) > half + kWord && length > kWord) {
      const auto shift = -static_cast<std::ptrdiff_t>(length - kWord);
      steps = sure_steps(cln::cl_I_to_Q(cln::ash(before, shift)),
                         cln::cl_I_to_Q(cln::ash(rest, shift)));
    }
    if (steps.b != 0) {
      combine(steps, before, rest);
      combine(steps, factor_before, factor);
      continue;
    }
    const cln::cl_I_div_t split = cln::floor2(before, rest);
    before = std::exchange(rest, split.remainder);
    cln::cl_I next = factor_before - split.quotient * factor;
    factor_before = std::exchange(factor, std::move(next));
  }
  if (cln::integer_length(rest) + cln::integer_length(factor) + spare > bits) return std::nullopt;
  if (cln::minusp(factor)) return WholeFraction{-rest, -factor};
  return WholeFraction{rest, factor};
}

}  // namespace ohmfold

// The fraction that a residue stands for: rational reconstruction.
#pragma once

#include <cln/integer.h>

#include <cstddef>
#include <optional>

namespace ohmfold {

/// numerator / denominator, the denominator positive.
struct WholeFraction {
  cln::cl_I numerator;
  cln::cl_I denominator;
};

/// The fraction n/d with n = d * residue modulo `modulus` whose parts are so short that chance
/// hardly finds one: together at least `spare` bits shorter than the modulus, and n below about its
/// square root. Nothing where there is none. Where the residue is that of a fraction with parts of
/// b bits each, it is the one found as soon as the modulus has about 2 b + spare bits; no bound on
/// b has to be known. A fraction found is a guess for whoever does not know such a bound, right but
/// for a chance of 1 in 2^spare or so. Requires 0 <= residue < modulus and spare >= 2.
///
/// Euclid's algorithm until half of the length is gone (Wang, Guy and Davenport, SIGSAM Bull. 16/2
/// (1982) 2; judging by the length of what is found: Monagan, ISSAC 2004), many steps at a time on
/// the leading words (Lehmer 1938; Knuth, The Art of Computer Programming 2, 4.5.2, algorithm L;
/// all from memory). Cost: quadratic in the length of the modulus.
[[nodiscard]] std::optional<WholeFraction> fraction_of_residue(const cln::cl_I& residue,
                                                               const cln::cl_I& modulus,
                                                               std::size_t spare);

}  // namespace ohmfold

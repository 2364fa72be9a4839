// A number cut to so many significant figures, as digits and a power of ten.
#pragma once

#include <cln/integer.h>

#include <string>

#include "ohmfold/value.h"

namespace ohmfold {

/// 10^exponent. Requires exponent >= 0. Table for what fits a machine word.
[[nodiscard]] cln::cl_I power_of_ten(long exponent);

/// number * 10^exponent, for an exponent of either sign.
[[nodiscard]] Number scaled(const Number& number, long exponent);

struct Rounded {
  bool negative = false;
  std::string digits;  ///< as many as figures were asked for; the first is not zero
  long exponent = 0;   ///< the power of ten of the first digit
  bool exact = false;  ///< nothing was lost
};

/// Half to even on the exact value. Requires a number other than zero and figures >= 1.
[[nodiscard]] Rounded rounded(const Number& number, int figures);

/// Plain decimal, or with an exponent where that would be long (see round_to_figures).
[[nodiscard]] std::string written(const Rounded& rounded);

}  // namespace ohmfold

// Whole numbers from their balanced digits in a base of one word, and back.
#pragma once

#include <cln/integer.h>

#include <cstdint>
#include <span>
#include <vector>

namespace ohmfold {

/// Writes whole numbers as sums of digit * base^i, the digits between -base/2 and base/2: every
/// whole number, negative ones too, has one such sum and only one.
class DigitBase {
 public:
  /// Requires an odd base of at least 3 and less than 2^62.
  explicit DigitBase(std::uint64_t base);

  /// The number with these digits, the lowest first. Halves are joined by one long multiplication,
  /// so that it costs what multiplying numbers of that length does.
  [[nodiscard]] cln::cl_I whole(std::span<const std::int64_t> digits);
  /// The digits of a number, the lowest first; none for 0. Cost: quadratic in their count.
  [[nodiscard]] std::vector<std::int64_t> digits(cln::cl_I number) const;
  /// base^exponent.
  [[nodiscard]] cln::cl_I power(std::size_t exponent);
  /// The number between -base^exponent / 2 and base^exponent / 2 that is equal to `number` modulo
  /// base^exponent.
  [[nodiscard]] cln::cl_I balanced(const cln::cl_I& number, std::size_t exponent);

 private:
  [[nodiscard]] const cln::cl_I& square(std::size_t times);

  std::vector<cln::cl_I> squares_;  // base^1, base^2, base^4, …
  std::vector<cln::cl_I> joining_;
};

}  // namespace ohmfold

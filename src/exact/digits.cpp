// Joining digits in pairs, pairs in fours, and so on, by powers that are kept.
#include "exact/digits.h"

#include "ohmfold/error.h"

namespace ohmfold {

DigitBase::DigitBase(std::uint64_t base)
    : squares_{cln::cl_I(static_cast<unsigned long long>(base))} {
  ensure(base % 2 == 1 && base >= 3 && base < (std::uint64_t{1} << 62), "no base for digits");
}

const cln::cl_I& DigitBase::square(std::size_t times) {
  while (squares_.size() <= times) squares_.push_back(cln::square(squares_.back()));
  return squares_[times];
}

cln::cl_I DigitBase::whole(std::span<const std::int64_t> digits) {
  if (digits.empty()) return 0;
  joining_.clear();
  for (const std::int64_t digit : digits) joining_.emplace_back(static_cast<long>(digit));
  std::size_t count = digits.size();
  for (std::size_t level = 0; count > 1; ++level) {
    const cln::cl_I& high = square(level);
    for (std::size_t i = 0; i + 1 < count; i += 2) {
      joining_[i / 2] = joining_[i] + joining_[i + 1] * high;
    }
    if (count % 2 == 1) joining_[count / 2] = joining_[count - 1];
    count = (count + 1) / 2;
  }
  return joining_.front();
}

std::vector<std::int64_t> DigitBase::digits(cln::cl_I number) const {
  const cln::cl_I& base = squares_.front();
  std::vector<std::int64_t> found;
  while (!cln::zerop(number)) {
    const cln::cl_I_div_t split = cln::round2(number, base);
    found.push_back(cln::cl_I_to_Q(split.remainder));
    number = split.quotient;
  }
  return found;
}

cln::cl_I DigitBase::power(std::size_t exponent) {
  cln::cl_I result = 1;
  for (std::size_t level = 0; exponent >> level != 0; ++level) {
    if (((exponent >> level) & 1U) != 0) result = result * square(level);
  }
  return result;
}

cln::cl_I DigitBase::balanced(const cln::cl_I& number, std::size_t exponent) {
  return cln::round2(number, power(exponent)).remainder;
}

}  // namespace ohmfold

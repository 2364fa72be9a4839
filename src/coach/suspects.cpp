// Collects the known errors that give just the number that was written.
#include "coach/suspects.h"

#include <algorithm>
#include <array>
#include <utility>

#include "exact/rounded.h"

namespace ohmfold {
namespace {

// IEC 60063, the series E24 in tenths; E12 is every second value of it (from memory).
constexpr std::array<int, 24> kPreferred{10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30,
                                         33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91};

constexpr int kFewestFigures = 2;

// The value of E24, or of E12, that is nearest by difference.
Number nearest_preferred(const Number& number, std::size_t every) {
  const long exponent = rounded(number, 2).exponent;
  std::optional<Number> best;
  for (long power = exponent - 1; power <= exponent + 1; ++power) {
    for (std::size_t i = 0; i < kPreferred.size(); i += every) {
      const Number value = scaled(Number(kPreferred.at(i)), power - 1);
      if (!best || abs(value - number) < abs(*best - number)) best = value;
    }
  }
  return *best;
}

}  // namespace

Suspects::Suspects(const WrittenValue& written, std::optional<Number> right, bool any_sign)
    : written_(written), right_(std::move(right)), any_sign_(any_sign) {}

bool Suspects::fits(const Number& number) const {
  if (number == written_.number) return true;
  return is_precise(written_, kFewestFigures) && agrees(written_, number);
}

void Suspects::try_number(const Number& given, const Diagnosis& error) {
  const std::optional<Number> through = through_ ? through_(given) : given;
  if (!through) return;
  const Number& number = *through;
  if (right_ && agrees(written_, *right_)) return;
  if (right_ && number == *right_) return;
  if (!fits(number) && !(any_sign_ && fits(-number))) return;
  const bool known = std::any_of(found_.begin(), found_.end(), [&](const Diagnosis& other) {
    return other.error == error.error;
  });
  if (!known) found_.push_back(error);
}

void Suspects::try_in_units(const Number& number, int power, const Diagnosis& error) {
  // In a unit of u ohm each value is smaller by u, and what comes out is read in that unit.
  for (const long thousand : {0L, 3L, 6L}) {
    const long shift = thousand * (1 - power);
    try_number(number.is_symbolic() || shift == 0 ? number : scaled(number, shift), error);
  }
}

void try_slips(Suspects& suspects, Unit unit) {
  const std::optional<Number>& right = suspects.right();
  if (!right || right->is_symbolic() || right->is_zero()) return;
  for (const long power : {3L, -3L, 6L, -6L}) {
    suspects.try_number(scaled(*right, power), {KnownError::prefix_slip, {}, {}, {}});
  }
  for (const long power : {1L, -1L, 2L, -2L}) {
    suspects.try_number(scaled(*right, power), {KnownError::decimal_point_slip, {}, {}, {}});
  }
  if (unit != Unit::ohm || right->is_negative()) return;
  for (const std::size_t every : {std::size_t{2}, std::size_t{1}}) {
    const Number preferred = nearest_preferred(*right, every);
    if (suspects.written().number != preferred) continue;
    suspects.try_number(preferred, {KnownError::preferred_value, {}, {}, {}});
  }
}

}  // namespace ohmfold

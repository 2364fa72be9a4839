// Digits of the potentials, until a denominator shows and until nothing is left over.
#include "solve/digit_lift.h"

#include <random>
#include <utility>

#include "exact/fraction.h"
#include "ohmfold/error.h"

namespace ohmfold {
namespace {

__extension__ using Wide = __int128;

// A factor q of the denominator cancels in a random sum with a chance of 1 in q or so, in all of
// them hardly ever.
constexpr std::size_t kSums = 8;
constexpr unsigned kMostWeight = 255;
// A denominator that shows by chance only costs time; 1 in 2^40 is rare enough.
constexpr std::size_t kSpare = 40;

}  // namespace

DigitLift::DigitLift(const PrimeField& field, NodeFactor& factor, WholeRows& rows,
                     std::vector<std::vector<unsigned>> weights)
    : field_(field),
      factor_(factor),
      rows_(rows),
      base_(field.prime()),
      currents_(factor.is_ground().size()),
      weights_(std::move(weights)) {}

bool DigitLift::spend(std::uint64_t amount, std::uint64_t& work) {
  if (amount > work) return false;
  work -= amount;
  return true;
}

void DigitLift::draw_weights() {
  std::random_device entropy;
  std::mt19937_64 random(entropy());
  weights_.assign(kSums, std::vector<unsigned>(currents_.size()));
  for (auto& weights : weights_) {
    for (unsigned& weight : weights) weight = static_cast<unsigned>(random() & kMostWeight);
  }
}

DigitLift::Digits DigitLift::next_digits(std::int64_t multiplier_digit) {
  rows_.remaining(multiplier_digit, currents_);
  factor_.solve(currents_);
  Digits potentials;
  potentials.reserve(currents_.size());
  for (const PrimeField::Value value : currents_) potentials.push_back(field_.balanced(value));
  rows_.take_off(multiplier_digit, potentials);
  return potentials;
}

void DigitLift::watch(const Digits& potentials) {
  const auto prime = static_cast<std::int64_t>(field_.prime());
  for (std::size_t i = 0; i < weights_.size(); ++i) {
    Wide sum = carries_[i];
    for (std::size_t node = 0; node < potentials.size(); ++node) {
      sum += static_cast<Wide>(potentials[node]) * weights_[i][node];
    }
    auto digit = static_cast<std::int64_t>(sum % prime);
    if (digit > prime / 2) digit -= prime;
    if (digit < -(prime / 2)) digit += prime;
    sums_[i].push_back(digit);
    carries_[i] = static_cast<std::int64_t>((sum - digit) / prime);
  }
}

// The denominator of the first sum; what is missing in it shows in the others, multiplied by it.
std::optional<cln::cl_I> DigitLift::denominator_shown() {
  const std::size_t count = sums_.front().size();
  const cln::cl_I modulus = base_.power(count);
  cln::cl_I denominator = 1;
  for (const Digits& sum : sums_) {
    const cln::cl_I residue = cln::mod(base_.whole(sum) * denominator, modulus);
    const cln::cl_I size = cln::min(residue, modulus - residue);
    if (2 * cln::integer_length(size) <= cln::integer_length(modulus)) continue;
    const auto fraction = fraction_of_residue(residue, modulus, kSpare);
    if (!fraction) return std::nullopt;
    denominator = denominator * fraction->denominator;
  }
  return denominator;
}

std::optional<cln::cl_I> DigitLift::find_denominator(std::uint64_t& work) {
  rows_.restart();
  sums_.assign(weights_.size(), {});
  carries_.assign(weights_.size(), 0);
  const std::uint64_t cost =
      2 * factor_.entries() + rows_.cost() + (weights_.size() + 4) * currents_.size();
  std::size_t next_look = 1;
  for (std::size_t count = 1;; ++count) {
    if (!spend(cost, work)) return std::nullopt;
    watch(next_digits(count == 1 ? 1 : 0));
    if (count < next_look) continue;
    next_look = count + 1 + count / 16;
    if (!spend(20 * count * count, work)) return std::nullopt;
    if (auto denominator = denominator_shown()) return denominator;
  }
}

bool DigitLift::find_numerators(const cln::cl_I& denominator, std::uint64_t& work) {
  rows_.restart();
  numerators_.clear();
  const Digits multiplier = base_.digits(denominator);
  // The numerator of a sum was shorter than the digits that showed it; its parts are, too, but for
  // what the weights make of them.
  const std::size_t most = sums_.front().size() + 2;
  const std::uint64_t cost = 2 * factor_.entries() + rows_.cost() + 5 * currents_.size();
  for (std::size_t count = 0; count < most; ++count) {
    if (!spend(cost, work)) return false;
    numerators_.push_back(next_digits(count < multiplier.size() ? multiplier[count] : 0));
    if (count + 1 >= multiplier.size() && rows_.is_nothing_left()) return true;
  }
  return false;
}

SharedFractions DigitLift::put_together(const cln::cl_I& denominator) {
  SharedFractions solution;
  solution.denominator = denominator * rows_.multiplier();
  solution.numerators.reserve(currents_.size());
  Digits digits(numerators_.size());
  for (std::size_t node = 0; node < currents_.size(); ++node) {
    for (std::size_t i = 0; i < digits.size(); ++i) digits[i] = numerators_[i][node];
    solution.numerators.push_back(base_.whole(digits));
  }
  return solution;
}

std::optional<SharedFractions> DigitLift::run(std::uint64_t& work) {
  while (true) {
    if (weights_.empty()) draw_weights();
    const auto denominator = find_denominator(work);
    if (!denominator) return std::nullopt;
    if (find_numerators(*denominator, work)) {
      const std::uint64_t length = numerators_.size();
      if (!spend(currents_.size() * length * (length + 20), work)) return std::nullopt;
      SharedFractions solution = put_together(*denominator);
      ensure(rows_.hold(solution), "lifted potentials do not satisfy the node equations");
      return solution;
    }
    weights_.clear();  // they hid a factor of the denominator, or chance showed a wrong one
  }
}

}  // namespace ohmfold

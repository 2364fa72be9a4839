// Choosing a prime, factoring once, and lifting for each set of currents.
#include "solve/lifting.h"

#include <utility>

#include "ohmfold/error.h"
#include "solve/digit_lift.h"

namespace ohmfold {
namespace {

// What it costs to make the equations whole, in multiplications of words: lengths grow to the sum
// of those in a row, and right-hand sides to that of all.
std::uint64_t cost_of_whole_rows(const Neighbours& neighbours, const std::vector<Number>& brought) {
  constexpr std::uint64_t kSquareOfWord = 4096;
  std::uint64_t cost = 0, right = 0;
  for (std::size_t node = 0; node < brought.size(); ++node) {
    std::uint64_t length = brought[node].bits();
    for (const auto& entry : neighbours.of(node)) length += entry.conductance.bits();
    if (!brought[node].is_zero()) right += length;
    cost += length * length / kSquareOfWord;
  }
  return cost + right * right / kSquareOfWord;
}

}  // namespace

NodeLifting::NodeLifting(std::size_t nodes, LiftingChoices choices)
    : nodes_(nodes), choices_(std::move(choices)) {}

PrimeField NodeLifting::next_field() {
  if (primes_tried_ < choices_.primes.size()) return PrimeField(choices_.primes[primes_tried_++]);
  return PrimeField::random();
}

// A prime that divides a pivot, or a denominator, is one of a few among more than 10^16: another
// one will do.
bool NodeLifting::factor(std::uint64_t& work) {
  if (!neighbours_) neighbours_.emplace(nodes_, joints_);
  factor_.reset();
  while (!factor_) {
    field_ = next_field();
    auto rows = modular_rows(*field_, *neighbours_);
    if (!rows) continue;
    NodeFactor factor(*field_);
    switch (factor.factor(std::move(*rows), work)) {
      case NodeFactor::Outcome::done:
        factor_ = std::move(factor);
        break;
      case NodeFactor::Outcome::bad_prime:
        break;
      case NodeFactor::Outcome::too_much_work:
        return false;
    }
  }
  return true;
}

void NodeLifting::demand_balance(const std::vector<Number>& brought) const {
  const std::vector<std::uint32_t> ground = factor_->grounds();
  std::vector<Number> sum(nodes_);
  for (std::size_t node = 0; node < nodes_; ++node) {
    if (!brought[node].is_zero()) sum[ground[node]] += brought[node];
  }
  for (const Number& left : sum) {
    ensure(left.is_zero(), "currents brought to a piece do not sum to zero");
  }
}

std::optional<SharedFractions> NodeLifting::solve(const std::vector<Number>& brought,
                                                  std::uint64_t most_work) {
  ensure(brought.size() == nodes_, "not one current for each node");
  std::uint64_t work = most_work;
  if (!factor_ && !factor(work)) return std::nullopt;
  demand_balance(brought);
  const std::uint64_t preparing = cost_of_whole_rows(*neighbours_, brought);
  if (preparing > work) return std::nullopt;
  work -= preparing;
  WholeRows rows(*neighbours_, factor_->is_ground(), brought);
  while (!rows.choose(*field_)) {
    if (!factor(work)) return std::nullopt;
  }
  return DigitLift(*field_, *factor_, rows, std::exchange(choices_.weights, {})).run(work);
}

}  // namespace ohmfold

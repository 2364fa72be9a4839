// The node equations of a conductance network, factored modulo a prime of one word.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <utility>
#include <vector>

#include "exact/prime_field.h"
#include "solve/neighbours.h"

namespace ohmfold {

/// Conductances as residues, by node: the neighbours and what joins them, in ascending order.
using ModularRows = std::vector<std::vector<std::pair<std::uint32_t, PrimeField::Value>>>;

/// Nothing where the prime divides the denominator of a conductance.
[[nodiscard]] std::optional<ModularRows> modular_rows(const PrimeField& field,
                                                      const Neighbours& neighbours);

/// L D L^T of the conductance matrix modulo a prime, the node with the fewest neighbours first
/// (minimum degree: Tinney and Walker, Proc. IEEE 55 (1967) 1801, from memory). The node of each
/// connected piece that goes last is its ground.
class NodeFactor {
 public:
  enum class Outcome { done, bad_prime, too_much_work };

  explicit NodeFactor(const PrimeField& field) : field_(field) {}

  /// Factors once; what it costs, in multiplications, is taken from `work`. With `bad_prime` the
  /// prime divides a pivot, with `too_much_work` the work was not enough: then there is nothing to
  /// solve with.
  [[nodiscard]] Outcome factor(ModularRows rows, std::uint64_t& work);

  /// The potentials modulo the prime where these currents are brought to the nodes; grounds are at
  /// zero. In place. Cost: two multiplications for each entry of the factor.
  void solve(std::vector<PrimeField::Value>& values);

  [[nodiscard]] const std::vector<bool>& is_ground() const { return is_ground_; }
  /// Entries of the factor.
  [[nodiscard]] std::size_t entries() const { return later_.terms.size(); }
  /// For each node that of its piece which is the ground.
  [[nodiscard]] std::vector<std::uint32_t> grounds() const;

 private:
  using Term = std::pair<std::uint32_t, PrimeField::Value>;  // position, share
  struct Lists {
    std::vector<std::size_t> begin;
    std::vector<Term> terms;
    [[nodiscard]] std::span<const Term> of(std::size_t at) const {
      return std::span(terms).subspan(begin[at], begin[at + 1] - begin[at]);
    }
  };

  void eliminate(std::uint32_t node, ModularRows& rows, PrimeField::Value inverse);
  void number_by_position();

  PrimeField field_;
  std::vector<std::uint32_t> order_;         // nodes as they were eliminated
  std::vector<PrimeField::Value> inverses_;  // of the pivots, by position in that order
  Lists later_;    // by position: the shares of the neighbours that were still there
  Lists earlier_;  // by position: the shares that it had when those were eliminated
  std::vector<bool> is_ground_;
  std::vector<PrimeField::Value> ordered_;
};

}  // namespace ohmfold

// Exact solution of large node equations by lifting it digit after digit from one modulo a prime.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "solve/neighbours.h"
#include "solve/node_factor.h"
#include "solve/whole_rows.h"

namespace ohmfold {

/// What is drawn at random where it is not given; tests give what must not lead to a wrong answer.
struct LiftingChoices {
  std::vector<std::uint64_t> primes;  ///< to try before random ones
  std::vector<std::vector<unsigned>>
      weights;  ///< of the first attempt: sums of potentials, by node
};

/// Conductances between numbered nodes; potentials for as many sets of currents as are asked.
///
/// The equations are factored once modulo a prime p of 61 bits. Each digit in base p of the exact
/// potentials then costs one solving with that factor: with A v = b and v0 = A^-1 b modulo p, what
/// is left, (b - A v0) / p, is whole and stays as short as the coefficients (Dixon, Numer. Math. 40
/// (1982) 137, from memory). When there are enough digits for the common denominator d to show,
/// which random sums of the potentials tell, the whole numbers d v are lifted in the same way, and
/// nothing being left over ends it. In the end the potentials are put into the equations, exactly:
/// no answer rests on a bound or on chance, only the time does.
class NodeLifting {
 public:
  explicit NodeLifting(std::size_t nodes, LiftingChoices choices = {});

  /// Joins two nodes; nothing happens where they are the same. All joining comes before solving.
  void join(std::uint32_t a, std::uint32_t b, const Conductance& conductance) {
    joints_.push_back({a, b, conductance});
  }

  /// The potentials where these currents are brought to the nodes from outside; one node of each
  /// connected piece is at zero. Nothing where the work would exceed `most_work`, in
  /// multiplications of words, roughly. Requires that the currents brought to each piece sum to
  /// zero (InternalError otherwise). The factor is kept for the next currents.
  [[nodiscard]] std::optional<SharedFractions> solve(const std::vector<Number>& brought,
                                                     std::uint64_t most_work);

 private:
  [[nodiscard]] bool factor(std::uint64_t& work);
  [[nodiscard]] PrimeField next_field();
  void demand_balance(const std::vector<Number>& brought) const;

  std::size_t nodes_;
  LiftingChoices choices_;
  std::size_t primes_tried_ = 0;
  std::vector<Joint> joints_;
  std::optional<Neighbours> neighbours_;
  std::optional<PrimeField> field_;
  std::optional<NodeFactor> factor_;
};

}  // namespace ohmfold

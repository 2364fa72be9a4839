// One right-hand side lifted: the common denominator first, then the numerators.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "exact/digits.h"
#include "solve/node_factor.h"
#include "solve/whole_rows.h"

namespace ohmfold {

/// Lifts the solution of whole equations with a factor of them (see NodeLifting).
class DigitLift {
 public:
  /// `weights`, if any, are those of the first attempt.
  DigitLift(const PrimeField& field, NodeFactor& factor, WholeRows& rows,
            std::vector<std::vector<unsigned>> weights);

  /// The solution, put into the equations and found right. What it costs, in multiplications, is
  /// taken from `work`; nothing where that is not enough.
  [[nodiscard]] std::optional<SharedFractions> run(std::uint64_t& work);

 private:
  using Digits = std::vector<std::int64_t>;

  [[nodiscard]] bool spend(std::uint64_t amount, std::uint64_t& work);
  Digits next_digits(std::int64_t multiplier_digit);
  void draw_weights();
  void watch(const Digits& potentials);
  [[nodiscard]] std::optional<cln::cl_I> find_denominator(std::uint64_t& work);
  [[nodiscard]] std::optional<cln::cl_I> denominator_shown();
  [[nodiscard]] bool find_numerators(const cln::cl_I& denominator, std::uint64_t& work);
  [[nodiscard]] SharedFractions put_together(const cln::cl_I& denominator);

  PrimeField field_;
  NodeFactor& factor_;
  WholeRows& rows_;
  DigitBase base_;
  std::vector<PrimeField::Value> currents_;
  // Sums of the potentials with random weights: their digits, and what is carried to the next one.
  std::vector<std::vector<unsigned>> weights_;
  std::vector<Digits> sums_;
  std::vector<std::int64_t> carries_;
  std::vector<Digits> numerators_;  // digit after digit: that of every node
};

}  // namespace ohmfold

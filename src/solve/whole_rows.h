// The node equations in whole numbers, and what is left of them digit after digit of a solution.
#pragma once

#include <cln/integer.h>

#include <cstdint>
#include <optional>
#include <vector>

#include "exact/prime_field.h"
#include "solve/neighbours.h"

namespace ohmfold {

/// Potentials over one common denominator, which is positive.
struct SharedFractions {
  std::vector<cln::cl_I> numerators;  ///< by node
  cln::cl_I denominator;

  [[nodiscard]] Number lowest_terms(std::size_t node) const {
    return Number::quotient(numerators[node], denominator);
  }
};

/// The current laws of all nodes but the grounds, each multiplied by what makes its coefficients
/// whole numbers without a common factor, and all right-hand sides by one number more that makes
/// them whole.
///
/// What is left over after some digits is one machine word in each equation whose coefficients have
/// less than a word between them (values of a textbook have a few digits), and a long number in the
/// others.
class WholeRows {
 public:
  /// `brought` is the current brought to each node.
  WholeRows(const Neighbours& neighbours, const std::vector<bool>& is_ground,
            const std::vector<Number>& brought);

  /// Prepares for lifting in this field. False where the prime divides a multiplier.
  [[nodiscard]] bool choose(const PrimeField& field);
  /// Forgets all digits.
  void restart();
  /// The remaining right-hand sides modulo the prime, as currents brought to each node, when
  /// `digit` is the next digit of what multiplies the right-hand sides.
  void remaining(std::int64_t digit, std::vector<PrimeField::Value>& currents);
  /// Takes the next digits of the potentials off. Requires those that solve what `remaining` gave.
  void take_off(std::int64_t digit, const std::vector<std::int64_t>& potentials);
  /// Is nothing left over?
  [[nodiscard]] bool is_nothing_left() const;

  /// Do the potentials satisfy every equation? In whole numbers, from the equations alone.
  [[nodiscard]] bool hold(const SharedFractions& potentials) const;
  /// What all right-hand sides were multiplied by.
  [[nodiscard]] const cln::cl_I& multiplier() const { return multiplier_; }
  /// Multiplications for one digit.
  [[nodiscard]] std::size_t cost() const { return cost_; }

 private:
  template <class Whole>
  struct Row {
    std::uint32_t node;
    std::uint32_t begin, end;  // of its entries
    Whole total;               // of its entries
    Whole brought;
    Whole left = 0;                     // left over
    PrimeField::Value brought_residue;  // modulo the prime
    PrimeField::Value scale_inverse;    // of its multiplier, modulo the prime
    Number scale;
  };
  template <class Whole>
  struct Rows {
    std::vector<Row<Whole>> rows;
    std::vector<std::pair<std::uint32_t, Whole>> entries;
  };

  template <class Whole>
  void add(std::uint32_t node, const std::vector<std::pair<std::uint32_t, cln::cl_I>>& entries,
           const cln::cl_I& total, const cln::cl_I& brought, const Number& scale, Rows<Whole>& to);

  Rows<std::int64_t> short_;
  Rows<cln::cl_I> long_;
  cln::cl_I multiplier_ = 1;
  std::size_t cost_ = 0;
  std::optional<PrimeField> field_;
  std::uint64_t word_inverse_ = 0;  // of the prime modulo 2^64
};

}  // namespace ohmfold

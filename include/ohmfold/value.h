// Exact numbers and quantities: rationals in lowest terms, and units that the compiler checks.
//
// Where a circuit has symbols in place of values, a number is a quotient of polynomials in them,
// also in lowest terms; symbolic.h asks such numbers for their parts.
//
// This is the only public header that names types of CLN. No function here takes a double:
// a decimal is read by decimal.h, digit by digit, as the fraction that it is.
#pragma once

#include <cln/integer.h>
#include <cln/rational.h>

#include <compare>
#include <cstddef>
#include <memory>
#include <string>
#include <string_view>
#include <utility>

#include "ohmfold/error.h"

namespace ohmfold {

/// A quotient of two polynomials in symbols (exact/rational_function.h).
struct RationalFunction;

/// What a number has besides its rational where a symbol is in play: of the size of one pointer,
/// which is nothing for the numbers of a large network.
class SymbolicPart {
 public:
  SymbolicPart() = default;
  explicit SymbolicPart(std::shared_ptr<const RationalFunction> function)
      : held_(std::make_unique<Shared>(std::move(function))) {}
  SymbolicPart(const SymbolicPart& other)
      : held_(other.held_ ? std::make_unique<Shared>(*other.held_) : nullptr) {}
  SymbolicPart(SymbolicPart&&) noexcept = default;
  SymbolicPart& operator=(const SymbolicPart& other) {
    if (held_ || other.held_) *this = SymbolicPart(other);
    return *this;
  }
  SymbolicPart& operator=(SymbolicPart&&) noexcept = default;
  ~SymbolicPart() = default;

  [[nodiscard]] bool exists() const { return held_ != nullptr; }
  /// Requires that it exists.
  [[nodiscard]] const RationalFunction& operator*() const { return **held_; }

 private:
  using Shared = std::shared_ptr<const RationalFunction>;
  std::unique_ptr<Shared> held_;
};

/// What is known of the sign of a number in which every symbol stands for a positive one.
enum class Sign { negative, zero, positive, depends };

/// An exact number in lowest terms: a rational, or a quotient of polynomials in symbols. A symbolic
/// number that turns out free of symbols is a rational again, and one form belongs to each value,
/// so that equality, being zero and being symbolic are decided. Copying is cheap (shared digits,
/// count not atomic: a Number must not be shared between threads).
///
/// Arithmetic with symbols can grow beyond any bound: it throws BeyondBudget (symbolic.h).
class Number {
 public:
  Number() : value_(0) {}
  Number(int whole) : value_(whole) {}  // NOLINT(google-explicit-constructor): 2 is a number
  explicit Number(cln::cl_RA value) : value_(std::move(value)) {}

  /// A number that needs symbols: see RationalFunction.
  explicit Number(std::shared_ptr<const RationalFunction> function)
      : value_(1), symbolic_(std::move(function)) {}

  /// numerator / denominator in lowest terms. Requires a denominator other than zero.
  static Number quotient(const cln::cl_I& numerator, const cln::cl_I& denominator);
  /// The symbol of this name, which stands for some positive number. Equal names are one symbol.
  static Number symbol(std::string_view name);

  [[nodiscard]] bool is_symbolic() const { return symbolic_.exists(); }

  // A symbolic number is never zero: it would be the rational 0.
  [[nodiscard]] bool is_zero() const { return cln::zerop(value_); }
  /// Negative or positive whatever positive numbers the symbols stand for. Both are false where the
  /// sign depends on them, or where that it does not cannot be read off the signs of the terms.
  [[nodiscard]] bool is_negative() const {
    return is_symbolic() ? symbolic_sign() == Sign::negative : cln::minusp(value_);
  }
  [[nodiscard]] bool is_positive() const {
    return is_symbolic() ? symbolic_sign() == Sign::positive : cln::plusp(value_);
  }
  [[nodiscard]] Sign sign() const;
  [[nodiscard]] bool is_integer() const;

  /// The rational itself, for the bulk loops that work below this class; its numerator and
  /// denominator. Require a number without symbols.
  [[nodiscard]] const cln::cl_RA& raw() const {
    ensure(!is_symbolic(), "a number with symbols has no digits");
    return value_;
  }
  [[nodiscard]] cln::cl_I numerator() const { return cln::numerator(raw()); }
  [[nodiscard]] cln::cl_I denominator() const { return cln::denominator(raw()); }
  /// Requires a number with symbols.
  [[nodiscard]] const RationalFunction& function() const {
    ensure(is_symbolic(), "a number without symbols is no function of them");
    return *symbolic_;
  }

  /// Bits of numerator and denominator together: what it costs to work with this number.
  [[nodiscard]] std::size_t bits() const;

  /// "18/5", "-3", "0": the exact value in decimal digits; with symbols in plain letters,
  /// "3/2 r", "(r^2 + 6 r)/(2 r + 6)" (symbolic.h). Time grows with the square of the length at
  /// worst.
  [[nodiscard]] std::string to_string() const;

  Number& operator+=(const Number& other) { return *this = *this + other; }
  Number& operator-=(const Number& other) { return *this = *this - other; }

  friend Number operator-(const Number& a) { return a.is_symbolic() ? 0 - a : Number(-a.value_); }
  friend Number operator+(const Number& a, const Number& b) {
    return symbols_in(a, b) ? symbolic_sum(a, b) : Number(a.value_ + b.value_);
  }
  friend Number operator-(const Number& a, const Number& b) {
    return symbols_in(a, b) ? symbolic_difference(a, b) : Number(a.value_ - b.value_);
  }
  friend Number operator*(const Number& a, const Number& b) {
    return symbols_in(a, b) ? symbolic_product(a, b) : Number(a.value_ * b.value_);
  }
  /// Requires b other than zero (InternalError otherwise).
  friend Number operator/(const Number& a, const Number& b);
  friend bool operator==(const Number& a, const Number& b) {
    return symbols_in(a, b) ? symbolic_equal(a, b) : cln::equal(a.value_, b.value_);
  }
  /// Unordered where the sign of the difference depends on the symbols: then none of <, >, ==
  /// holds.
  friend std::partial_ordering operator<=>(const Number& a, const Number& b) {
    if (symbols_in(a, b)) return symbolic_order(a, b);
    return cln::compare(a.value_, b.value_) <=> 0;
  }

 private:
  friend class Ratio;
  explicit Number(SymbolicPart symbolic) : value_(1), symbolic_(std::move(symbolic)) {}

  static bool symbols_in(const Number& a, const Number& b) {
    return a.is_symbolic() || b.is_symbolic();
  }
  [[nodiscard]] Sign symbolic_sign() const;
  static Number symbolic_sum(const Number& a, const Number& b);
  static Number symbolic_difference(const Number& a, const Number& b);
  static Number symbolic_product(const Number& a, const Number& b);
  static Number symbolic_quotient(const Number& a, const Number& b);
  static bool symbolic_equal(const Number& a, const Number& b);
  static std::partial_ordering symbolic_order(const Number& a, const Number& b);

  cln::cl_RA value_;
  SymbolicPart symbolic_;
};

/// The size of a number; of one whose sign depends on symbols, the number itself.
[[nodiscard]] Number abs(const Number& number);

/// A number with a unit V^Volts * A^Amperes. Adding unlike units does not compile; multiplying and
/// dividing give the unit of the result, so that Voltage / Resistance is a Current.
template <int Volts, int Amperes>
struct Measure {
  Number number;

  [[nodiscard]] bool is_zero() const { return number.is_zero(); }

  Measure& operator+=(const Measure& other) {
    number += other.number;
    return *this;
  }
  Measure& operator-=(const Measure& other) {
    number -= other.number;
    return *this;
  }

  friend Measure operator-(const Measure& a) { return {-a.number}; }
  friend Measure operator+(const Measure& a, const Measure& b) { return {a.number + b.number}; }
  friend Measure operator-(const Measure& a, const Measure& b) { return {a.number - b.number}; }
  friend bool operator==(const Measure&, const Measure&) = default;
  friend std::partial_ordering operator<=>(const Measure& a, const Measure& b) {
    return a.number <=> b.number;
  }
};

template <int V1, int A1, int V2, int A2>
Measure<V1 + V2, A1 + A2> operator*(const Measure<V1, A1>& a, const Measure<V2, A2>& b) {
  return {a.number * b.number};
}

/// Requires b other than zero (InternalError otherwise).
template <int V1, int A1, int V2, int A2>
Measure<V1 - V2, A1 - A2> operator/(const Measure<V1, A1>& a, const Measure<V2, A2>& b) {
  return {a.number / b.number};
}

using Voltage = Measure<1, 0>;
using Current = Measure<0, 1>;
using Resistance = Measure<1, -1>;
using Conductance = Measure<-1, 1>;
using Power = Measure<1, 1>;

/// The units that a circuit file can write and an answer can have.
enum class Unit { ohm, volt, ampere, watt, siemens };

/// A number with a unit that is known only when the program runs: what views show.
struct Quantity {
  Number number;
  Unit unit = Unit::ohm;

  Quantity() = default;
  Quantity(Number n, Unit u) : number(std::move(n)), unit(u) {}
  // NOLINTBEGIN(google-explicit-constructor): each of these is a quantity
  Quantity(const Voltage& v) : number(v.number), unit(Unit::volt) {}
  Quantity(const Current& i) : number(i.number), unit(Unit::ampere) {}
  Quantity(const Resistance& r) : number(r.number), unit(Unit::ohm) {}
  Quantity(const Power& p) : number(p.number), unit(Unit::watt) {}
  Quantity(const Conductance& g) : number(g.number), unit(Unit::siemens) {}
  // NOLINTEND(google-explicit-constructor)

  friend bool operator==(const Quantity&, const Quantity&) = default;
};

/// A ratio P/Q with Q > 0 that is *not* kept in lowest terms. Series and parallel combinations of
/// such pairs need no greatest common divisor, which makes reducing a large network about three
/// times as fast as rationals do, and the way back needs no division at all (see docs/method.md).
/// Where a symbol is in play it holds a Number, which is in lowest terms.
class Ratio {
 public:
  Ratio() : p_(0), q_(1) {}
  explicit Ratio(const Number& number)
      : p_(number.is_symbolic() ? 1 : number.numerator()),
        q_(number.is_symbolic() ? 1 : number.denominator()),
        symbolic_(number.symbolic_) {}
  Ratio(cln::cl_I p, cln::cl_I q) : p_(std::move(p)), q_(std::move(q)) {}

  [[nodiscard]] bool is_symbolic() const { return symbolic_.exists(); }
  /// Require a ratio without symbols.
  [[nodiscard]] const cln::cl_I& p() const {
    ensure(!is_symbolic(), "a ratio with symbols has no digits");
    return p_;
  }
  [[nodiscard]] const cln::cl_I& q() const {
    ensure(!is_symbolic(), "a ratio with symbols has no digits");
    return q_;
  }
  [[nodiscard]] bool is_zero() const { return cln::zerop(p_); }
  [[nodiscard]] bool is_positive() const {
    return is_symbolic() ? lowest_terms().is_positive() : cln::plusp(p_);
  }
  /// Bits of both parts together.
  [[nodiscard]] std::size_t bits() const;

  /// The same value in lowest terms.
  [[nodiscard]] Number lowest_terms() const {
    return is_symbolic() ? Number(symbolic_) : Number::quotient(p_, q_);
  }

  /// a + b as (Pa Qb + Pb Qa, Qa Qb).
  static Ratio series(const Ratio& a, const Ratio& b);
  /// 1/(1/a + 1/b) as (Pa Pb, Pa Qb + Pb Qa). Requires a and b other than zero.
  static Ratio parallel(const Ratio& a, const Ratio& b);

 private:
  cln::cl_I p_;
  cln::cl_I q_;
  SymbolicPart symbolic_;  // where it exists, p_ and q_ say nothing but that it is not zero
};

}  // namespace ohmfold

// Exact numbers and quantities: rationals in lowest terms, and units that the compiler checks.
//
// This is the only public header that names types of CLN. No function here takes a double:
// a decimal is read by decimal.h, digit by digit, as the fraction that it is.
#pragma once

#include <cln/integer.h>
#include <cln/rational.h>

#include <compare>
#include <cstddef>
#include <string>
#include <utility>

namespace ohmfold {

/// An exact rational number in lowest terms. Copying is cheap (shared digits, count not atomic:
/// a Number must not be shared between threads).
class Number {
 public:
  Number() : value_(0) {}
  Number(int whole) : value_(whole) {}  // NOLINT(google-explicit-constructor): 2 is a number
  explicit Number(cln::cl_RA value) : value_(std::move(value)) {}

  /// numerator / denominator in lowest terms. Requires a denominator other than zero.
  static Number quotient(const cln::cl_I& numerator, const cln::cl_I& denominator);

  [[nodiscard]] bool is_zero() const { return cln::zerop(value_); }
  [[nodiscard]] bool is_negative() const { return cln::minusp(value_); }
  [[nodiscard]] bool is_positive() const { return cln::plusp(value_); }
  [[nodiscard]] bool is_integer() const;

  /// The rational itself, for the bulk loops that work below this class.
  [[nodiscard]] const cln::cl_RA& raw() const { return value_; }
  [[nodiscard]] cln::cl_I numerator() const { return cln::numerator(value_); }
  [[nodiscard]] cln::cl_I denominator() const { return cln::denominator(value_); }

  /// Bits of numerator and denominator together: what it costs to work with this number.
  [[nodiscard]] std::size_t bits() const;

  /// "18/5", "-3", "0": the exact value in decimal digits. Time grows with the square of the
  /// length at worst.
  [[nodiscard]] std::string to_string() const;

  Number& operator+=(const Number& other) { return *this = *this + other; }
  Number& operator-=(const Number& other) { return *this = *this - other; }

  friend Number operator-(const Number& a) { return Number(-a.value_); }
  friend Number operator+(const Number& a, const Number& b) { return Number(a.value_ + b.value_); }
  friend Number operator-(const Number& a, const Number& b) { return Number(a.value_ - b.value_); }
  friend Number operator*(const Number& a, const Number& b) { return Number(a.value_ * b.value_); }
  /// Requires b other than zero (InternalError otherwise).
  friend Number operator/(const Number& a, const Number& b);
  friend bool operator==(const Number& a, const Number& b) {
    return cln::equal(a.value_, b.value_);
  }
  friend std::strong_ordering operator<=>(const Number& a, const Number& b) {
    return cln::compare(a.value_, b.value_) <=> 0;
  }

 private:
  cln::cl_RA value_;
};

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
  friend std::strong_ordering operator<=>(const Measure& a, const Measure& b) {
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
class Ratio {
 public:
  Ratio() : p_(0), q_(1) {}
  explicit Ratio(const Number& number) : p_(number.numerator()), q_(number.denominator()) {}
  Ratio(cln::cl_I p, cln::cl_I q) : p_(std::move(p)), q_(std::move(q)) {}

  [[nodiscard]] const cln::cl_I& p() const { return p_; }
  [[nodiscard]] const cln::cl_I& q() const { return q_; }
  [[nodiscard]] bool is_zero() const { return cln::zerop(p_); }
  /// Bits of both parts together.
  [[nodiscard]] std::size_t bits() const;

  /// The same value in lowest terms.
  [[nodiscard]] Number lowest_terms() const { return Number::quotient(p_, q_); }

  /// a + b as (Pa Qb + Pb Qa, Qa Qb).
  static Ratio series(const Ratio& a, const Ratio& b);
  /// 1/(1/a + 1/b) as (Pa Pb, Pa Qb + Pb Qa). Requires a and b other than zero.
  static Ratio parallel(const Ratio& a, const Ratio& b);

 private:
  cln::cl_I p_;
  cln::cl_I q_;
};

}  // namespace ohmfold

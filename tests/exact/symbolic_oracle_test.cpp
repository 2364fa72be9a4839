// Arithmetic with symbols against that of another library, GiNaC.
#include <ginac/ginac.h>
#include <gtest/gtest.h>

#include <random>

#include "ohmfold/symbolic.h"

namespace ohmfold {
namespace {

/// A number in both libraries.
struct Twin {
  Number ours;
  GiNaC::ex theirs;
};

class Twins {
 public:
  explicit Twins(unsigned seed) : random_(seed) {}

  Twin symbol(std::size_t index) { return {Number::symbol(names_.at(index)), symbols_.at(index)}; }
  Twin whole(int number) { return {Number(number), GiNaC::numeric(number)}; }

  /// Some operations on what has been drawn before.
  Twin draw() {
    std::vector<Twin> pool{symbol(0), symbol(1), symbol(2),
                           whole(static_cast<int>(random_() % 9) + 1)};
    for (int i = 0; i < 6; ++i) {
      const Twin& a = pool.at(random_() % pool.size());
      const Twin& b = pool.at(random_() % pool.size());
      pool.push_back(combined(a, b));
    }
    return pool.back();
  }

  [[nodiscard]] GiNaC::ex translated(const Number& number) const {
    return polynomial(numerator_of(number), 0) / polynomial(denominator_of(number), 0);
  }

  [[nodiscard]] GiNaC::ex polynomial(const Number& number, std::size_t from) const {
    if (from == names_.size()) return GiNaC::numeric(cln::cl_N(number.raw()));
    GiNaC::ex sum = 0;
    const std::vector<Number> parts = coefficients(number, names_.at(from));
    for (std::size_t i = 0; i < parts.size(); ++i) {
      sum += polynomial(parts[i], from + 1) * GiNaC::pow(symbols_.at(from), static_cast<int>(i));
    }
    return sum.expand();
  }

 private:
  Twin combined(const Twin& a, const Twin& b) {
    switch (random_() % 4) {
      case 0:
        return {a.ours + b.ours, (a.theirs + b.theirs).normal()};
      case 1:
        return {a.ours - b.ours, (a.theirs - b.theirs).normal()};
      case 2:
        return {a.ours * b.ours, (a.theirs * b.theirs).normal()};
      default:
        if (b.ours.is_zero()) return a;
        return {a.ours / b.ours, (a.theirs / b.theirs).normal()};
    }
  }

  std::mt19937 random_;
  std::vector<std::string> names_{"r", "s", "t"};
  std::vector<GiNaC::symbol> symbols_{GiNaC::symbol("r"), GiNaC::symbol("s"), GiNaC::symbol("t")};
};

TEST(SymbolicOracle, AgreesOnRandomExpressions) {
  Twins twins(2024);
  std::size_t fractions = 0;
  for (int i = 0; i < 400; ++i) {
    const Twin twin = twins.draw();
    EXPECT_TRUE((twins.translated(twin.ours) - twin.theirs).normal().is_zero())
        << twin.ours.to_string();
    const GiNaC::ex above = twins.polynomial(numerator_of(twin.ours), 0);
    const GiNaC::ex below = twins.polynomial(denominator_of(twin.ours), 0);
    if (above.is_zero()) continue;
    EXPECT_TRUE(GiNaC::gcd(above, below).is_equal(1)) << twin.ours.to_string();
    fractions += symbols_of(denominator_of(twin.ours)).empty() ? 0 : 1;
  }
  EXPECT_GT(fractions, 100U);
}

}  // namespace
}  // namespace ohmfold

// Solving with symbols and putting numbers in gives what solving with the numbers gives.
#include <gtest/gtest.h>

#include <optional>

#include "ohmfold/solve.h"
#include "ohmfold/symbolic.h"
#include "rounds.h"
#include "support/random_network.h"

namespace ohmfold::test {
namespace {

using support::Multigraph;
using support::RandomCircuits;

/// Puts multiples of r and s in place of some resistances.
void put_symbols_in(Problem& problem, RandomCircuits& random) {
  const std::vector<std::string> names{"r", "s"};
  for (const std::string& name : names) {
    problem.symbols.push_back({name, Unit::ohm, random.resistance(), {}});
  }
  for (Part& part : problem.parts) {
    if (part.kind != PartKind::resistor || random.below(3) > 0) continue;
    const Number symbol = Number::symbol(names.at(random.below(2)));
    part.value = random.below(2) == 0 ? symbol * part.value : symbol + part.value;
  }
}

class Comparison {
 public:
  Comparison(const Problem& problem, const CaseTrace& symbolic, const CaseTrace& numeric)
      : values_(given_values(problem)), symbolic_(symbolic), numeric_(numeric) {}

  void run() {
    ASSERT_EQ(symbolic_.branches.size(), numeric_.branches.size());
    for (std::size_t i = 0; i < symbolic_.branches.size(); ++i) {
      compare(symbolic_.branches[i].current, numeric_.branches[i].current);
      compare(symbolic_.branches[i].voltage, numeric_.branches[i].voltage);
      compare(symbolic_.branches[i].power, numeric_.branches[i].power);
    }
    for (std::size_t i = 0; i < symbolic_.nodes.size(); ++i) {
      compare(symbolic_.nodes[i].potential, numeric_.nodes[i].potential);
    }
    ASSERT_EQ(symbolic_.equivalent.has_value(), numeric_.equivalent.has_value());
    if (symbolic_.equivalent) compare(*symbolic_.equivalent, *numeric_.equivalent);
    for (const Answer& answer : symbolic_.answers) {
      if (!answer.condition) continue;
      ++conditions_;
      compare_zeros(answer);
    }
  }

  [[nodiscard]] std::size_t symbolic_values() const { return seen_; }
  [[nodiscard]] std::size_t conditions() const { return conditions_; }

 private:
  void compare(const Reading& symbolic, const Reading& numeric) {
    ASSERT_EQ(symbolic.value.has_value(), numeric.value.has_value());
    if (!symbolic.value) return;
    seen_ += symbolic.value->number.is_symbolic() ? 1 : 0;
    EXPECT_EQ(substitute(symbolic.value->number, values_), numeric.value->number);
    const Sign sign = symbolic.value->number.sign();
    if (sign != Sign::depends) {
      EXPECT_EQ(sign, numeric.value->number.sign());
    }
  }

  // At each zero that is told, the value is zero.
  static void compare_zeros(const Answer& answer) {
    for (const Number& zero : answer.condition->zeros) {
      const std::vector<SymbolValue> there{{answer.condition->symbol, zero}};
      EXPECT_EQ(substitute(answer.value.value->number, there), Number(0));
    }
  }

  std::vector<SymbolValue> values_;
  const CaseTrace& symbolic_;
  const CaseTrace& numeric_;
  std::size_t seen_ = 0, conditions_ = 0;
};

TEST(Symbols, StandForEveryNumberThatIsPutIn) {
  RandomCircuits random(61'803);
  std::size_t symbolic_values = 0, conditions = 0;
  for (std::uint64_t i = 0; i < rounds(300); ++i) {
    SCOPED_TRACE(i);
    Multigraph wanted;
    wanted.points = 3 + random.below(4);
    wanted.resistors = 3 + random.below(6);
    wanted.wires = random.below(2);
    wanted.batteries = 1 + random.below(2);
    wanted.internal = Multigraph::Internal::all;
    Problem problem =
        i % 2 == 0 ? random.multigraph(wanted) : random.series_parallel(2 + random.below(9));
    put_symbols_in(problem, random);
    const Trace symbolic = solve(problem);
    ASSERT_FALSE(symbolic.is_beyond_budget());
    ASSERT_FALSE(symbolic.values_put_in_first);
    const Trace numeric = solve(with_values_put_in(problem));
    Comparison comparison(problem, symbolic.cases.front(), numeric.cases.front());
    comparison.run();
    symbolic_values += comparison.symbolic_values();
    conditions += comparison.conditions();
  }
  EXPECT_GT(symbolic_values, 1'000U);
  EXPECT_GT(conditions, 5U);
}

}  // namespace
}  // namespace ohmfold::test

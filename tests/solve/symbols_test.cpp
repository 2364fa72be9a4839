// Circuits with symbols in place of values: solved as others are, with answers in symbols.
#include <gtest/gtest.h>

#include <string>

#include "ohmfold/solve.h"
#include "ohmfold/symbolic.h"

namespace ohmfold {
namespace {

const Number& r() {
  static const Number symbol = Number::symbol("r");
  return symbol;
}

struct Wire {
  PartKind kind;
  std::uint32_t from, to;
  Number value;
};

/// A problem of parts between points 0, 1, …; asks for everything.
Problem problem_of(const std::vector<Wire>& wires) {
  Problem problem;
  for (const Wire& wire : wires) {
    Part part;
    part.name = (wire.kind == PartKind::battery ? "E" : "R") + std::to_string(problem.parts.size());
    part.kind = wire.kind;
    part.from = PointId{wire.from};
    part.to = PointId{wire.to};
    part.value = wire.value;
    while (problem.points.size() <= std::max(wire.from, wire.to)) {
      problem.points.push_back("P" + std::to_string(problem.points.size()));
    }
    problem.parts.push_back(part);
  }
  problem.symbols.push_back({"r", Unit::ohm, {}, {}});
  problem.cases.emplace_back();
  return problem;
}

constexpr auto kE = PartKind::battery;
constexpr auto kR = PartKind::resistor;

// 12 V over 2 ohm and 3 ohm, with r ampere brought to the middle: I1 = (12 - 3 r) / 5.
TEST(Symbols, CanBeTheCurrentOfASourceAlone) {
  for (const Method method : {Method::automatic, Method::node_voltage}) {
    SolveOptions options;
    options.method = method;
    const Trace trace = solve(
        problem_of(
            {{kE, 0, 1, 12}, {kR, 1, 2, 2}, {kR, 2, 0, 3}, {PartKind::current_source, 0, 2, r()}}),
        options);
    const CaseTrace& one = trace.cases.front();
    EXPECT_EQ(one.branches[1].current.value->number, (12 - 3 * r()) / 5);
    EXPECT_FALSE(one.checks.empty());
  }
}

TEST(Symbols, GoThroughSeriesAndParallel) {
  // 12 V over r and 2 r in series, 3 r beside both.
  const Trace trace = solve(
      problem_of({{kE, 0, 1, 12}, {kR, 1, 2, r()}, {kR, 2, 0, 2 * r()}, {kR, 1, 0, 3 * r()}}));
  const CaseTrace& one = trace.cases.front();
  EXPECT_EQ(one.equivalent->value->number, r() * 3 / 2);
  EXPECT_EQ(one.branches[0].current.value->number, 8 / r());
  EXPECT_EQ(one.branches[1].current.value->number, 4 / r());
  EXPECT_EQ(one.branches[1].voltage.value->number, Number(4));
  EXPECT_EQ(one.branches[3].power.value->number, 48 / r());
  for (const Check& check : one.checks) EXPECT_TRUE(check.holds);
}

TEST(Symbols, GoThroughABridge) {
  // Corners 1 (top) and 0 (bottom), middle 2 and 3; balanced where r / 2 = 2 / 4.
  const Trace trace = solve(problem_of({{kE, 0, 1, 6},
                                        {kR, 1, 2, 1},
                                        {kR, 1, 3, r()},
                                        {kR, 2, 0, 2},
                                        {kR, 3, 0, 4},
                                        {kR, 2, 3, 5}}));
  const CaseTrace& one = trace.cases.front();
  const Number bridge = one.branches[5].current.value->number;
  EXPECT_EQ(bridge.sign(), Sign::depends);
  const std::vector<SymbolValue> balanced{{"r", Number(2)}};
  EXPECT_EQ(substitute(bridge, balanced), Number(0));
  for (const Check& check : one.checks) EXPECT_TRUE(check.holds);
}

TEST(Symbols, TellWhereABridgeIsBalanced) {
  const Trace trace = solve(problem_of({{kE, 0, 1, 6},
                                        {kR, 1, 2, 1},
                                        {kR, 1, 3, r()},
                                        {kR, 2, 0, 2},
                                        {kR, 3, 0, 4},
                                        {kR, 2, 3, 5}}));
  const CaseTrace& one = trace.cases.front();
  ASSERT_EQ(one.conditions.size(), 1U);
  EXPECT_EQ(one.conditions.front().part, PartId{5});
  const SignCondition& condition = one.conditions.front().condition;
  EXPECT_EQ(condition.decides, r() - 2);
  EXPECT_EQ(condition.zeros, std::vector<Number>{Number(2)});
  EXPECT_EQ(condition.signs, (std::vector<Sign>{Sign::negative, Sign::positive}));
}

TEST(Symbols, LeaveTheEquationWhereThereAreSeveral) {
  const Number s = Number::symbol("s");
  const Trace trace = solve(problem_of({{kE, 0, 1, 6},
                                        {kR, 1, 2, s},
                                        {kR, 1, 3, r()},
                                        {kR, 2, 0, 2},
                                        {kR, 3, 0, 4},
                                        {kR, 2, 3, 5}}));
  const CaseTrace& one = trace.cases.front();
  ASSERT_EQ(one.conditions.size(), 1U);
  EXPECT_EQ(one.conditions.front().condition.decides, r() - 2 * s);
  EXPECT_TRUE(one.conditions.front().condition.signs.empty());
}

TEST(Symbols, TellForWhichValuesBatteriesWouldAgree) {
  const Number v = Number::symbol("v");
  const Trace trace = solve(problem_of({{kE, 0, 1, 2 * v}, {kE, 0, 1, 6}, {kR, 1, 0, 1}}));
  const CaseTrace& one = trace.cases.front();
  ASSERT_TRUE(one.contradiction);
  ASSERT_TRUE(one.contradiction->agree);
  EXPECT_EQ(one.contradiction->agree->zeros, std::vector<Number>{Number(3)});
}

TEST(Symbols, CautionOnlyWhereAValueIsGiven) {
  Problem problem = problem_of({{kE, 0, 1, 12}, {kR, 1, 0, r()}});
  EXPECT_TRUE(solve(problem).cases.front().cautions.empty());
  problem.symbols.front().value = Number(1);
  EXPECT_FALSE(solve(problem).cases.front().cautions.empty());
}

TEST(Symbols, OneOfThemFillsALadderOfFiftyParts) {
  std::vector<Wire> wires{{kE, 0, 1, 10}};
  for (std::uint32_t i = 1; i <= 25; ++i) {
    wires.push_back({kR, i, i + 1, static_cast<int>(i % 4 + 1) * r()});
    wires.push_back({kR, i + 1, 0, static_cast<int>(i % 5 + 1)});
  }
  const Trace trace = solve(problem_of(wires));
  EXPECT_FALSE(trace.is_beyond_budget());
  EXPECT_EQ(trace.cases.front().branches.size(), wires.size());
}

TEST(Symbols, BeyondTheBudgetTheirValuesArePutInFirst) {
  std::vector<Wire> wires{{kE, 0, 1, 10}};
  for (std::uint32_t i = 1; i <= 40; ++i) {
    wires.push_back({kR, i, i + 1, Number::symbol("a" + std::to_string(i))});
    wires.push_back({kR, i + 1, 0, Number::symbol("b" + std::to_string(i))});
  }
  Problem problem = problem_of(wires);
  problem.symbols.clear();
  for (std::uint32_t i = 1; i <= 40; ++i) {
    problem.symbols.push_back({"a" + std::to_string(i), Unit::ohm, Number(1), {}});
    problem.symbols.push_back({"b" + std::to_string(i), Unit::ohm, Number(2), {}});
  }
  const Trace numeric = solve(problem);
  EXPECT_TRUE(numeric.values_put_in_first);
  EXPECT_FALSE(numeric.is_beyond_budget());
  EXPECT_FALSE(numeric.cases.front().equivalent->value->number.is_symbolic());
  problem.symbols.front().value.reset();
  const Trace none = solve(problem);
  EXPECT_FALSE(none.values_put_in_first);
  EXPECT_TRUE(none.is_beyond_budget());
  EXPECT_TRUE(none.cases.front().branches.empty());
}

}  // namespace
}  // namespace ohmfold

// Whatever is changed in an elimination on record, its check fails.
#include "check/node_elimination.h"

#include <gtest/gtest.h>

#include "check/building.h"

namespace ohmfold {
namespace {

// 12 V between 0 (ground) and 1; 4 ohm from 1 to 2, 24 ohm from 2 to 0, 18 ohm from 1 to 3, 6 ohm
// from 3 to 0, 3 ohm between 2 and 3, which an ideal battery of 1 V puts 4 below 3 by, too.
CaseTrace solved() {
  CaseTrace results;
  results.main.end = Builder(5)
                         .battery(0, 1, 12)
                         .resistor(1, 2, 4)
                         .resistor(2, 0, 24)
                         .resistor(1, 3, 18)
                         .resistor(3, 0, 6)
                         .resistor(2, 3, 3)
                         .battery(4, 3, 1)
                         .build();
  for (int i = 0; i < 7; ++i) results.main.left.push_back(part(i));
  const int potentials[] = {0, 12, 8, 6, 5};
  for (int i = 0; i < 5; ++i) results.nodes.push_back({point(i), Voltage{potentials[i]}});
  NodeElimination& written = results.elimination;
  written.ground = point(0);
  written.unknowns = {point(2), point(3)};
  written.fixed = {{point(1), point(0), {12}}, {point(4), point(3), {-1}}};
  using Origin = EquationOrigin;
  const Number one(1);
  written.equations = {
      {Origin::current_law,
       1,
       0,
       {point(2)},
       24,
       {},
       one,
       {},
       {{point(2), 15}, {point(3), -8}},
       {72}},
      {Origin::current_law,
       2,
       0,
       {point(3), point(4)},
       18,
       {},
       2,
       {},
       {{point(2), -3}, {point(3), 5}},
       {6}},
      {Origin::combined, 2, 1, {}, one, {{1, 5}, {0, one}}, one, point(2), {{point(3), 17}}, {102}},
      {Origin::solved, 0, 0, {}, one, {{2, one}}, 17, point(3), {{point(3), one}}, {6}},
      {Origin::solved, 0, 0, {}, one, {{0, one}, {3, 8}}, 15, point(2), {{point(2), one}}, {8}},
  };
  return results;
}

TEST(CheckElimination, HoldsForWhatIsRight) {
  const auto check = check_elimination(solved());
  ASSERT_TRUE(check);
  EXPECT_TRUE(check->holds) << check->detail;
  EXPECT_EQ(check->places, 5U);
}

TEST(CheckElimination, SaysNothingWhereNothingIsWritten) {
  const CaseTrace nothing;
  EXPECT_FALSE(check_elimination(nothing));
}

TEST(CheckElimination, FailsForEachChangedNumber) {
  const auto failing = [](auto change) {
    CaseTrace results = solved();
    change(results.elimination);
    const auto check = check_elimination(results);
    return check && !check->holds && !check->detail.empty();
  };
  for (std::size_t i = 0; i < solved().elimination.equations.size(); ++i) {
    EXPECT_TRUE(failing([&](auto& e) { e.equations[i].constant.number += 1; })) << i;
    EXPECT_TRUE(failing([&](auto& e) { e.equations[i].divisor += 1; })) << i;
    EXPECT_TRUE(failing([&](auto& e) { e.equations[i].divisor = 0; })) << i;
    for (std::size_t k = 0; k < solved().elimination.equations[i].terms.size(); ++k) {
      EXPECT_TRUE(failing([&](auto& e) { e.equations[i].terms[k].coefficient += 1; })) << i << k;
      EXPECT_TRUE(failing([&](auto& e) { e.equations[i].terms[k].point = point(4); })) << i << k;
    }
    for (std::size_t k = 0; k < solved().elimination.equations[i].from.size(); ++k) {
      EXPECT_TRUE(failing([&](auto& e) { e.equations[i].from[k].factor += 1; })) << i << k;
      EXPECT_TRUE(failing([&](auto& e) { e.equations[i].from[k].equation = i; })) << i << k;
    }
  }
  EXPECT_TRUE(failing([](auto& e) { e.equations[0].factor += 1; }));
  EXPECT_TRUE(failing([](auto& e) { e.equations[0].points = {point(3)}; }));
  EXPECT_TRUE(failing([](auto& e) { e.equations[1].points = {point(4)}; }));
  EXPECT_TRUE(failing([](auto& e) { e.equations[2].unknown = point(3); }));
  EXPECT_TRUE(failing([](auto& e) { e.equations[3].unknown = point(2); }));
  EXPECT_TRUE(failing([](auto& e) { e.fixed[1].rise.number += 1; }));
  EXPECT_TRUE(failing([](auto& e) { e.fixed.erase(e.fixed.begin()); }));
  EXPECT_TRUE(failing([](auto& e) { e.ground = point(1); }));
  EXPECT_TRUE(failing([](auto& e) { e.equations.pop_back(); }));
}

// Twice a right equation is right, but not what it says; a right law of another point likewise.
TEST(CheckElimination, FailsForWhatHoldsButDoesNotFollow) {
  CaseTrace results = solved();
  for (PotentialTerm& term : results.elimination.equations[0].terms) {
    term.coefficient += term.coefficient;
  }
  results.elimination.equations[0].constant.number += 72;
  EXPECT_FALSE(check_elimination(results)->holds);
}

TEST(CheckElimination, FailsForOtherPotentials) {
  for (int i = 0; i < 5; ++i) {
    CaseTrace results = solved();
    results.nodes[static_cast<std::size_t>(i)].potential.value->number += 1;
    EXPECT_FALSE(check_elimination(results)->holds) << i;
  }
  CaseTrace results = solved();
  results.nodes[2].potential = Undetermined::floating;
  EXPECT_FALSE(check_elimination(results)->holds);
}

}  // namespace
}  // namespace ohmfold

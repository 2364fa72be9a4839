// Amounts and phrases as text.
#include "views/words.h"

#include <gtest/gtest.h>

#include "views/amounts.h"
#include "views/formula.h"

namespace ohmfold::views {
namespace {

Quantity ohm(int p, int q = 1) {
  return {Number(p) / Number(q), Unit::ohm};
}
Quantity ampere(int p, int q = 1) {
  return {Number(p) / Number(q), Unit::ampere};
}

std::string line(const Quantity& value) {
  Equation equation{{Symbol{"R", "eq"}}, {}, {}};
  append_value(equation, value, 3);
  std::string text = symbol_text(std::get<Symbol>(equation.left.node));
  for (const Link& link : equation.links) {
    text += link.relation == Relation::about ? " ≈ " : " = ";
    text += plain_text(say(std::get<Amount>(link.right.node)));
  }
  return text;
}

TEST(Value, HasADecimalOnlyWhereItSaysMore) {
  EXPECT_EQ(line(ohm(6)), "R_eq = 6 Ω");
  EXPECT_EQ(line(ohm(0)), "R_eq = 0 Ω");
  EXPECT_EQ(line(ohm(18, 5)), "R_eq = 18/5 Ω = 3.6 Ω");
  EXPECT_EQ(line(ampere(15, 8)), "R_eq = 15/8 A ≈ 1.88 A");  // half to even: 1.875 is a tie
  EXPECT_EQ(line(ampere(-15, 8)), "R_eq = −15/8 A ≈ −1.88 A");
  EXPECT_EQ(line(ampere(3, 4)), "R_eq = 3/4 A = 0.75 A");
  EXPECT_EQ(line(ampere(3, 500)), "R_eq = 3/500 A = 6 mA");
  EXPECT_EQ(line(ampere(1, 3)), "R_eq = 1/3 A ≈ 333 mA");
  EXPECT_EQ(line(ohm(4700)), "R_eq = 4700 Ω = 4.7 kΩ");
  EXPECT_EQ(line(ohm(12345)), "R_eq = 12345 Ω ≈ 12.3 kΩ");
}

TEST(Value, IsDescribedWhereItIsTooLongToShow) {
  const Number power(cln::cl_RA(cln::expt_pos(cln::cl_I(7), 100)));
  const Quantity whole(power, Unit::ohm);
  EXPECT_EQ(plain_text(say(Amount{whole, Form::exact, 3})), "(a number of 85 digits) Ω");
  const Quantity fraction(Number(1) / power, Unit::ohm);
  EXPECT_EQ(plain_text(say(Amount{fraction, Form::exact, 3})), "(a fraction of 86 digits) Ω");
  EXPECT_TRUE(has_unwritten_amount(sum({{Amount{whole}}, {Amount{ohm(1)}}})));
  EXPECT_FALSE(has_unwritten_amount(sum({{Amount{ohm(2)}}, {Amount{ohm(1)}}})));
}

TEST(Amount, IsADecimalInALineOnlyWhereItEnds) {
  EXPECT_EQ(plain_text(say(Amount{ohm(47, 10), Form::given, 3})), "4.7 Ω");
  EXPECT_EQ(plain_text(say(Amount{ohm(12345, 1000), Form::given, 3})), "12.345 Ω");
  EXPECT_EQ(plain_text(say(Amount{ohm(12345, 1000), Form::compact, 3})), "2469/200 Ω");
  EXPECT_EQ(plain_text(say(Amount{ohm(1, 3), Form::given, 3})), "1/3 Ω");
  EXPECT_EQ(plain_text(say(Amount{ohm(-1, 2), Form::compact, 3}), Letters::ascii), "-0.5 ohm");
}

TEST(Words, JoinAndCapitalise) {
  EXPECT_EQ(plain_text(sentence(say("only ", PartName{"r1"}, " is left"))), "Only r1 is left.");
  EXPECT_EQ(plain_text(sentence(say(PartName{"r1"}, " is left"))), "r1 is left.");
  EXPECT_EQ(plain_text(sentence(say(PartName{"wire 3"}, " is left"))), "Wire 3 is left.");
}

TEST(Words, ListWithCommasAndAnd) {
  std::vector<Words> names;
  EXPECT_EQ(plain_text(listed(names)), "");
  const char* const expected[] = {"1", "1 and 2", "1, 2 and 3", "1, 2, 3 and 4", "1, 2, … and 5"};
  for (int i = 1; i <= 5; ++i) {
    names.push_back(say(std::to_string(i)));
    EXPECT_EQ(plain_text(listed(names, 4)), expected[i - 1]);
  }
}

TEST(DigitsText, CountsOrEstimates) {
  EXPECT_EQ(digits_text(Number(1) / Number(16)), "3 digits");
  EXPECT_EQ(digits_text(Number(cln::cl_RA(cln::expt_pos(cln::cl_I(10), 21'111)))),
            "about 21,100 digits");
}

TEST(CountText, GroupsDigits) {
  EXPECT_EQ(count_text(7), "7");
  EXPECT_EQ(count_text(999), "999");
  EXPECT_EQ(count_text(21000), "21,000");
  EXPECT_EQ(count_text(1234567), "1,234,567");
}

TEST(Formula, PutsBracketsWhereTheyAreNeeded) {
  const Expression r1{Symbol{"R1", ""}}, r2{Symbol{"R2", ""}}, r3{Symbol{"R3", ""}};
  const auto text = [](const Expression& e) { return formula_text(e, Letters::unicode); };
  EXPECT_EQ(text(sum({r1, r2, negative(r3)})), "R1 + R2 − R3");
  EXPECT_EQ(text(sum({r1, in_parallel({r2, r3})})), "R1 + (R2 ∥ R3)");
  EXPECT_EQ(text(in_parallel({sum({r1, r2}), r3})), "(R1 + R2) ∥ R3");
  EXPECT_EQ(text(quotient(r1, sum({r2, r3}))), "R1 / (R2 + R3)");
  EXPECT_EQ(text(sum({r1, negative(sum({r2, r3}))})), "R1 − (R2 + R3)");
  EXPECT_EQ(text(reciprocal(r1)), "1/R1");
  EXPECT_EQ(text(reciprocal({Amount{ohm(4)}})), "1/(4\u00A0Ω)");
  EXPECT_EQ(text(quotient({Amount{ohm(6)}}, {Amount{ohm(4)}})), "6\u00A0Ω / 4\u00A0Ω");
  EXPECT_EQ(text(quotient({Amount{ohm(6)}}, {Amount{ohm(4, 3)}})), "6\u00A0Ω / (4/3\u00A0Ω)");
  EXPECT_EQ(text(product({Amount{ohm(-6)}}, r1)), "(−6\u00A0Ω) · R1");
  EXPECT_EQ(text(sum({r1, negative({Amount{ohm(-6)}})})), "R1 − (−6\u00A0Ω)");
}

TEST(Formula, LeavesOutTheMiddleOfALongSum) {
  std::vector<Expression> terms;
  for (int i = 1; i <= 20; ++i) terms.push_back({Symbol{"R" + std::to_string(i), ""}});
  EXPECT_EQ(formula_text(sum(terms), Letters::unicode),
            "R1 + R2 + R3 + R4 + R5 + R6 + R7 + R8 + R9 + R10 + … + R20");
  terms.resize(12);
  EXPECT_EQ(formula_text(sum(terms), Letters::unicode).find("…"), std::string::npos);
}

}  // namespace
}  // namespace ohmfold::views

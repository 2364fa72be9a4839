// A network written as one expression lies between A and B, from left to right.

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "language/findings_of.h"

namespace ohmfold {
namespace {

std::string parts_of(const Problem& problem) {
  std::string text;
  for (const Part& part : problem.parts) {
    if (!text.empty()) text += ", ";
    text += part.name + "=" + part.value.to_string() + " " + problem.point(part.from) + "-" +
            problem.point(part.to);
  }
  return text;
}

struct Row {
  std::string_view expression;
  std::string_view parts;
};

TEST(ReadExpression, PutsPartsBetweenPoints) {
  const std::vector<Row> table{
      {"4", "R1=4 A-B"},
      {"4 + 6 || 3", "R1=4 A-C, R2=6 C-B, R3=3 C-B"},
      {"4+6||3", "R1=4 A-C, R2=6 C-B, R3=3 C-B"},
      {"4 | 6", "R1=4 A-B, R2=6 A-B"},
      {"4 ∥ 6 ∥ 3", "R1=4 A-B, R2=6 A-B, R3=3 A-B"},
      {"(4 + 6) || 3", "R1=4 A-C, R2=6 C-B, R3=3 A-B"},
      {"((4))", "R1=4 A-B"},
      {"R1:4 + R2:6 || R3:3", "R1=4 A-C, R2=6 C-B, R3=3 C-B"},
      {"5 + R1:4 + 3 + R3:2", "R2=5 A-C, R1=4 C-D, R4=3 D-F, R3=2 F-B"},
      {"4.7 kohm + 4k7 + 15/8 kΩ", "R1=4700 A-C, R2=4700 C-D, R3=1875 D-B"},
      {"1e+1+1e1+2", "R1=10 A-C, R2=10 C-D, R3=2 D-B"},
      {"(1 + 2 || (3 + 4)) || 5", "R1=1 A-C, R2=2 C-B, R3=3 C-D, R4=4 D-B, R5=5 A-B"},
      {"4 +\n 6", "R1=4 A-C, R2=6 C-B"},
      {"0 + 4", "R1=0 A-C, R2=4 C-B"},
  };
  for (const Row& row : table) {
    const Outcome<Problem> outcome = read_expression(expression_text(row.expression), {});
    ASSERT_TRUE(outcome) << expression_findings(row.expression);
    EXPECT_EQ(parts_of(*outcome.value), row.parts) << row.expression;
  }
}

TEST(ReadExpression, AsksForTheResistanceBetweenItsEnds) {
  const Outcome<Problem> outcome = read_expression(expression_text("4 + 6"), {});
  ASSERT_TRUE(outcome);
  ASSERT_EQ(outcome.value->questions.size(), 1U);
  EXPECT_EQ(to_string(outcome.value->questions[0], *outcome.value), "resistance between A and B");
  ASSERT_EQ(outcome.value->cases.size(), 1U);
  EXPECT_EQ(outcome.value->cases[0].label, "");
}

TEST(ReadExpression, TakesABatteryAcrossItsEnds) {
  const Outcome<Problem> outcome = read_expression(expression_text("4 + E:6"), Number(12));
  ASSERT_TRUE(outcome);
  EXPECT_EQ(parts_of(*outcome.value), "E1=12 B-A, R1=4 A-C, E=6 C-B");
  EXPECT_EQ(outcome.value->parts[0].kind, PartKind::battery);
  EXPECT_TRUE(outcome.value->questions.empty());
}

TEST(ReadExpression, NamesManyPoints) {
  std::string text = "1";
  for (int i = 0; i < 25; ++i) text += " + 1";
  const Outcome<Problem> outcome = read_expression(expression_text(text), {});
  ASSERT_TRUE(outcome);
  EXPECT_EQ(outcome.value->points.at(2), "C");
  EXPECT_EQ(outcome.value->points.at(4), "F");  // E is the battery
  EXPECT_EQ(outcome.value->points.at(24), "Z");
  EXPECT_EQ(outcome.value->points.at(25), "P1");
  EXPECT_EQ(outcome.value->points.at(26), "P2");
}

TEST(ReadExpression, SaysWhatIsWrong) {
  const std::vector<Row> table{
      {"",
       "expected a value or '(', found the end of the line; an expression looks like 4 + 6 || "
       "3"},
      {"4 +",
       "expected a value or '(', found the end of the line; an expression looks like 4 + 6 "
       "|| 3"},
      {"+4", "expected a value or '(', found '+'"},
      {"(4", "expected ')', found the end of the line"},
      {"4)", "expected '+', '||' or the end, found ')'; there is no '(' that it closes"},
      {"4 5", "expected '+', '||' or a bracket, found '5'"},
      {"4 (5)", "expected '+', '||' or a bracket, found '('"},
      {"4 * 3", "expected '+', '||' or a bracket, found '*'"},
      {"4 ohm R2:3", "expected '+', '||' or a bracket, found 'R2'"},
      {"R1 + R2",
       "'R1' is neither a number nor a declared symbol; a part and its "
       "value are written R1:4"},
      {"R1:4 + R1:3", "the name 'R1' is already taken; every part needs a name of its own"},
      {"2:4", "'2' is not a name; a name is a letter followed by letters, digits or _"},
      {"R1: + 3", "expected a value, found '+'"},
      {"-4", "a resistance cannot be negative"},
      {"4,7 + 3", "'4,7' is not a number; write 4.7"},
      {"4 V", "'V' is no unit of resistance; the unit here is ohm"},
      {"1/0", "'1/0' divides by zero"},
      {"4 + \x01", "the character U+0001 has no place in a text; remove it"},
      {"4 + \xFF", "this byte is not UTF-8 text; save the file as UTF-8"},
  };
  for (const Row& row : table) {
    const Outcome<Problem> outcome = read_expression(expression_text(row.expression), {});
    EXPECT_FALSE(outcome) << row.expression;
    ASSERT_EQ(outcome.diagnostics.size(), 1U) << row.expression;
    EXPECT_EQ(message(outcome.diagnostics.front()), row.parts);
  }
}

TEST(ReadExpression, WarnsOfALetterCodeThatLooksLikeAName) {
  EXPECT_EQ(expression_findings("R10 || 3"),
            "expression:1:1: warning: 'R10' is read as the letter code for 1/10 ohm; a part and "
            "its value are written R10:4\n"
            "    R10 || 3\n"
            "    ^~~\n");
}

TEST(ReadExpression, TakesBracketsToAnyDepth) {
  constexpr std::size_t kDepth = 100'000;
  const std::string deep = std::string(kDepth, '(') + "4" + std::string(kDepth, ')');
  const Outcome<Problem> outcome = read_expression(expression_text(deep), {});
  ASSERT_TRUE(outcome);
  EXPECT_EQ(parts_of(*outcome.value), "R1=4 A-B");

  std::string ladder(kDepth, '(');
  ladder += "1";
  for (std::size_t i = 0; i < kDepth; ++i) ladder += i % 2 == 0 ? "+1)" : "||1)";
  const Outcome<Problem> tall = read_expression(expression_text(ladder), {});
  ASSERT_TRUE(tall);
  EXPECT_EQ(tall.value->parts.size(), kDepth + 1);

  EXPECT_EQ(read_expression(expression_text(std::string(kDepth, '(')), {}).diagnostics.size(), 1U);
  EXPECT_EQ(read_expression(expression_text("4" + std::string(kDepth, ')')), {}).diagnostics.size(),
            1U);
}

}  // namespace
}  // namespace ohmfold

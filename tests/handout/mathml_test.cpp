// Formulas as MathML Core.
#include "handout/mathml.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "handout/markup.h"

namespace ohmfold::test {
namespace {

using namespace views;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::StartsWith;

Expression name(const std::string& text) {
  return {views::Symbol{text, ""}};
}
Expression amount(const Number& number, Unit unit, Form form = Form::exact) {
  return {Amount{{number, unit}, form, 3}};
}

TEST(MathMl, StacksFractions) {
  EXPECT_EQ(handout::mathml(quotient(name("E"), name("R1"))),
            "<mfrac><mi mathvariant=\"normal\">E</mi><msub><mi "
            "mathvariant=\"normal\">R</mi><mn>1</mn></msub></mfrac>");
  EXPECT_EQ(handout::mathml(amount(Number(8) / Number(3), Unit::ohm)),
            "<mrow><mfrac><mn>8</mn><mn>3</mn></mfrac><mtext>\u00A0Ω</mtext></mrow>");
}

TEST(MathMl, SetsALetterWithWhatItIsOf) {
  EXPECT_EQ(handout::mathml({views::Symbol{"I", "R1"}}),
            "<msub><mi>I</mi><mtext>R1</mtext></msub>");
}

TEST(MathMl, PutsTheMinusSignBeforeTheFraction) {
  EXPECT_EQ(handout::mathml(amount(Number(-3) / Number(4), Unit::ampere)),
            "<mrow><mo form=\"prefix\">−</mo><mfrac><mn>3</mn><mn>4</mn></mfrac>"
            "<mtext>\u00A0A</mtext></mrow>");
}

TEST(MathMl, PutsBracketsWhereOneLineNeedsThem) {
  const Expression two = sum({name("R1"), name("R2")});
  EXPECT_THAT(handout::mathml(product(two, name("I"))), HasSubstr("<mo>(</mo><mrow>"));
  EXPECT_THAT(handout::mathml(quotient(two, name("I"))), Not(HasSubstr("(")));
  EXPECT_THAT(handout::mathml(in_parallel({two, name("R3")})), HasSubstr("(</mo>"));
  EXPECT_THAT(handout::mathml(sum({name("E"), negative(two)})), HasSubstr("−</mo><mrow><mo>("));
  EXPECT_THAT(handout::mathml(product(name("R1"), amount(Number(-2), Unit::ampere))),
              HasSubstr("(</mo>"));
}

TEST(MathMl, WritesPowersOfTenAsPowers) {
  const Number large = Number(123) * Number(1'000'000'000) * Number(1'000'000'000);
  EXPECT_THAT(handout::mathml(amount(large * Number(10'000), Unit::ohm, Form::decimal)),
              HasSubstr("<mo>×</mo><msup><mn>10</mn>"));
}

TEST(MathMl, TakesExpressionsInSymbolsApart) {
  const Number r = Number::symbol("r");
  const std::string written = handout::mathml(amount((r * r + 6 * r) / (2 * r + 6), Unit::ohm));
  EXPECT_THAT(written, StartsWith("<mrow><mfrac>"));
  EXPECT_THAT(written, HasSubstr("<mi>r</mi>"));
  EXPECT_THAT(read_markup(written).fault, IsEmpty()) << written;
  EXPECT_THAT(handout::mathml(amount((r + 3) * (r + 3), Unit::ohm)), HasSubstr("<msup>"));
  EXPECT_THAT(handout::mathml(amount(r + 3, Unit::ohm)), HasSubstr("<mo>)</mo><mtext>\u00A0Ω"));
}

TEST(MathMl, DescribesWhatIsTooLongToWrite) {
  Number number(1);
  for (int i = 0; i < 60; ++i) number = number * Number(10) + Number(7);
  EXPECT_THAT(handout::mathml(amount(number, Unit::ohm)),
              StartsWith("<mtext>(a number of 61 digits"));
  EXPECT_THAT(handout::mathml({Count{number}}), HasSubstr("61 digits"));
}

TEST(MathMlPieces, BeginWithEachRelationButTheFirst) {
  Equation line;
  line.left = name("R12");
  append_value(line, {Number(8) / Number(3), Unit::ohm}, 3);
  const std::vector<std::string> pieces = handout::mathml_pieces(line);
  ASSERT_EQ(pieces.size(), 2U);
  EXPECT_THAT(pieces[0], HasSubstr("<mn>12</mn></msub><mo form=\"infix\">=</mo>"));
  EXPECT_THAT(pieces[1], StartsWith("<math><mrow><mo form=\"infix\">≈</mo>"));
}

TEST(MathMlPieces, BeginWithEachTermOfALongSum) {
  Equation line;
  line.left = name("R");
  line.links.push_back(
      {Relation::equal, sum({name("R123"), name("R456"), negative(name("R789")), name("R_L2")})});
  const std::vector<std::string> pieces = handout::mathml_pieces(line);
  ASSERT_EQ(pieces.size(), 4U);
  EXPECT_THAT(pieces[2], StartsWith("<math><mrow><mo form=\"infix\">−</mo>"));
}

TEST(MathMl, EscapesNames) {
  const std::string written = handout::mathml({views::Symbol{"<b>&", "]]>"}});
  EXPECT_THAT(written, HasSubstr("&lt;b&gt;&amp;"));
  EXPECT_THAT(read_markup(written).fault, IsEmpty());
}

}  // namespace
}  // namespace ohmfold::test

// Names, amounts and formulas in the math mode of LaTeX.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "handout/latex_math.h"
#include "handout/latex_width.h"
#include "handout/latex_working.h"
#include "handout/sample_documents.h"

namespace ohmfold::handout {
namespace {

using test::amount;
using test::symbol;
using ::testing::Each;
using ::testing::Field;
using ::testing::HasSubstr;
using ::testing::Le;
using ::testing::Not;
using views::Form;

TEST(LatexName, HasTheDigitsAtItsEndAsASubscript) {
  EXPECT_EQ(math_name("R12").code, "R_{12}");
  EXPECT_EQ(math_name("R").code, "R");
  EXPECT_EQ(math_name("Heater2").code, "\\mathit{Heater}_{2}");
  EXPECT_EQ(math_name("R2_10").code, "\\mathit{R2\\_10}");
}

TEST(LatexName, CanBeRaisedToAPowerOrStandUnderARoot) {
  EXPECT_EQ(math_name("R3²").code, "R_{3}^{2}");
  EXPECT_EQ(math_name("r^12").code, "r^{12}");
  EXPECT_EQ(math_name("√33").code, "\\sqrt{33}");
}

TEST(LatexSymbol, NamesWhatItIsOfUpright) {
  EXPECT_EQ(math_symbol({"I", "R1"}).code, "I_{\\mathrm{R1}}");
  EXPECT_EQ(math_symbol({"V", "(A,B2)"}).code, "V_{\\mathrm{(A,B2)}}");
  EXPECT_EQ(math_symbol({"I", "wire 3"}).code, "I_{\\text{wire 3}}");
}

TEST(LatexAmount, IsADecimalOrAFractionWithItsUnit) {
  EXPECT_EQ(math_amount(amount(47, 10, Unit::ohm, Form::given)).code, "\\qty{4.7}{\\ohm}");
  EXPECT_EQ(math_amount(amount(3, 500, Unit::ampere, Form::decimal)).code,
            "\\qty{6}{\\milli\\ampere}");
  EXPECT_EQ(math_amount(amount(-18, 5, Unit::volt)).code, "-\\frac{18}{5}\\,\\unit{\\volt}");
  EXPECT_EQ(text_amount(amount(-18, 5, Unit::volt)).code, "$-18/5\\,\\unit{\\volt}$");
}

TEST(LatexAmount, MayBeAQuotientOfPolynomials) {
  const Number r = Number::symbol("r1");
  const auto code = [](const Number& number) {
    return math_amount({{number, Unit::ohm}, Form::exact, 3}).code;
  };
  EXPECT_EQ(code(r + 3), "(r_{1}+3)\\,\\unit{\\ohm}");
  EXPECT_EQ(code(r * 3 / 2), "\\tfrac{3}{2}\\,r_{1}\\,\\unit{\\ohm}");
  EXPECT_EQ(code((r * r + 6) / (r + 2)), "\\frac{r_{1}^{2}+6}{r_{1}+2}\\,\\unit{\\ohm}");
}

std::string on_one_row(const views::Expression& expression) {
  const auto rows = math_rows(expression, kOwnLineWidth);
  EXPECT_EQ(rows.size(), 1U);
  return rows.front().code;
}

TEST(LatexFormula, HasBracketsOnlyWhereTheBarDoesNotGroup) {
  const views::Expression sum = views::sum({symbol("a"), symbol("b")});
  EXPECT_EQ(on_one_row(views::quotient(sum, symbol("c"))), "\\frac{a + b}{c}");
  EXPECT_EQ(on_one_row(views::product(sum, symbol("c"))), "(a + b) \\cdot c");
  EXPECT_EQ(on_one_row(views::sum({symbol("a"), views::negative(sum)})), "a - (a + b)");
  EXPECT_EQ(on_one_row(views::sum({symbol("a"), {amount(-3, 1, Unit::volt)}})),
            "a + (\\qty{-3}{\\volt})");
  EXPECT_EQ(on_one_row(views::sum({symbol("a"), views::in_parallel({symbol("b"), symbol("c")})})),
            "a + (b \\mathbin{\\parallel} c)");
}

TEST(LatexFormula, BreaksBeforeASignWhereALineIsTooShort) {
  const auto rows = math_rows(test::long_sum(12), 1000);
  EXPECT_GT(rows.size(), 1U);
  EXPECT_THAT(rows, Each(Field(&MathText::width, Le(1000))));
  for (std::size_t i = 1; i < rows.size(); ++i) EXPECT_TRUE(rows[i].code.starts_with("{} + "));
}

TEST(LatexFormula, StacksALongSumAboveABar) {
  const auto rows = math_rows(views::quotient(test::long_sum(12), symbol("c")), 1000);
  ASSERT_EQ(rows.size(), 1U);
  EXPECT_THAT(rows.front().code, HasSubstr("\\begin{gathered}"));
  EXPECT_LE(rows.front().width, 1100);
}

TEST(LatexWorking, AlignsRelationsAndPutsAShortNoteBeside) {
  EXPECT_EQ(latex_working({{test::parallel_pair()}}, kOwnLineWidth),
            "\\begin{alignat*}{2}\n"
            "R_{12} & = R_{1} \\mathbin{\\parallel} R_{2} = \\frac{18}{5}\\,\\unit{\\ohm} "
            "\\approx \\qty{3.6}{\\ohm} &\\qquad& \\text{(R1 and R2 are in parallel)}\n"
            "\\end{alignat*}\n");
}

TEST(LatexWorking, PutsALongNoteBelow) {
  views::Equation equation = test::parallel_pair();
  equation.note = views::say(std::string(200, 'x'));
  const std::string code = latex_working({{equation}}, kOwnLineWidth);
  EXPECT_THAT(code, HasSubstr("\\\\\n& \\quad \\parbox[t]{"));
  EXPECT_THAT(code, HasSubstr("\\begin{align*}"));
}

TEST(LatexWorking, SetsALongLeftSideInRowsOfItsOwn) {
  const views::Equation equation{
      test::long_sum(12), {{views::Relation::equal, {views::Count{Number(0)}}}}, {}};
  const std::string code = latex_working({{equation}}, kOwnLineWidth);
  EXPECT_TRUE(code.starts_with("\\begin{align*}\n& R_{10} + ")) << code;
  EXPECT_THAT(code, HasSubstr("= 0\n\\end{align*}"));
}

TEST(LatexWorking, IsNothingWithoutLines) {
  EXPECT_EQ(latex_working({}, kOwnLineWidth), "");
}

}  // namespace
}  // namespace ohmfold::handout

// Documents as LaTeX: what stands where; that it compiles is shown by tests/latex.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "handout/latex_document.h"
#include "handout/latex_table.h"
#include "handout/latex_width.h"
#include "handout/sample_documents.h"

namespace ohmfold::handout {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

std::size_t count(const std::string& text, const std::string& what) {
  std::size_t found = 0;
  for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + 1)) {
    ++found;
  }
  return found;
}

TEST(LatexDocument, OfOneProblemHasNoContents) {
  const std::string code = latex_document(test::whole("One"), {});
  EXPECT_TRUE(code.starts_with("\\documentclass"));
  EXPECT_THAT(code, HasSubstr("\\section{One}"));
  EXPECT_THAT(code, Not(HasSubstr("\\tableofcontents")));
  EXPECT_THAT(code, Not(HasSubstr("\\clearpage")));
}

TEST(LatexDocument, OfSeveralProblemsHasContentsAndAPageForEach) {
  views::Document document = test::whole("One");
  for (const views::Block& block : test::whole("Two").blocks) document.blocks.push_back(block);
  const std::string code = latex_document(document, {});
  EXPECT_THAT(code, HasSubstr("\\tableofcontents\n\\clearpage"));
  EXPECT_EQ(count(code, "\\clearpage\n\\section{Two}"), 1U);
}

TEST(LatexDocument, AsAFragmentHasNoPreamble) {
  const std::string code = latex_document(test::whole("One"), {SymbolSet::rectangle, true, {}});
  EXPECT_TRUE(code.starts_with("\\begin{ohmfold}")) << code;
  EXPECT_TRUE(code.ends_with("\\end{ohmfold}\n")) << code;
  EXPECT_THAT(code, Not(HasSubstr("document")));
}

TEST(LatexDocument, KeepsAHeadingWithTheStepBelowIt) {
  views::Document document;
  document.heading(2, views::say("Solution"));
  document.begin_step(views::say("Combine"));
  document.paragraph(views::say("Text"));
  document.end_step();
  EXPECT_THAT(latex_document(document, {}),
              HasSubstr("\\begin{ohmfoldstep}\n\n\\subsection*{Solution}\n"));
}

TEST(LatexDocument, OpensAndClosesEveryEnvironment) {
  const std::string code = latex_document(test::whole(test::hostile_text()), {});
  for (const char* name : {"ohmfold", "ohmfoldentries", "ohmfoldstep", "tabular", "document"}) {
    const std::string braces = std::string("{") + name + "}";
    EXPECT_EQ(count(code, "\n\\begin" + braces) + count(code, "{\\begin" + braces),
              count(code, "\n\\end" + braces))
        << name;
  }
}

TEST(LatexDocument, EscapesTextOfTheFile) {
  const std::string code = latex_document(test::whole(test::hostile_text()), {});
  EXPECT_THAT(code, Not(HasSubstr("\\input{")));
  EXPECT_THAT(code, HasSubstr("\\textbackslash{}input\\{x\\}"));
}

TEST(LatexDocument, LetsALongWordBreak) {
  views::Document document;
  document.paragraph(views::say(std::string(60, 'x')));
  EXPECT_EQ(count(latex_document(document, {}), "\\allowbreak{}"), 5U);
}

TEST(LatexDocument, LetsAWordBreakBetweenStandIns) {
  views::Document document;
  std::string word;
  for (int i = 0; i < 9; ++i) word += "\u05D0";
  document.paragraph(views::say(word));
  EXPECT_EQ(count(latex_document(document, {}), "{]}\\allowbreak{}{[}U+05D0"), 7U);
}

TEST(LatexTable, IsOneTabularWithNaturalColumns) {
  EXPECT_THAT(latex_table(test::table(2), kOwnLineWidth),
              HasSubstr("\\begin{tabular}{@{}lr@{}}\n\\textbf{Part} & \\textbf{Current} \\\\\n"
                        "\\hline\n$R_{1}$ & \\qty{143}{\\milli\\ampere} \\\\\n"));
}

TEST(LatexTable, IsCutWhereItIsLongerThanAPage) {
  const std::string code = latex_table(test::table(65), kOwnLineWidth);
  EXPECT_EQ(count(code, "\\begin{tabular}"), 3U);
  EXPECT_EQ(count(code, "\\textbf{Part}"), 3U);
}

TEST(LatexTable, LetsALongNameBreakWithinItsCell) {
  views::Table table = test::table(1);
  table.rows[0][0] = views::say(views::Run(views::PartName{"Element_of_the_heater_2"}));
  EXPECT_THAT(latex_table(table, kOwnLineWidth), HasSubstr("\\_of\\allowbreak{}\\_the"));
}

TEST(LatexTable, WrapsItsWidestCells) {
  views::Table table = test::table(2);
  table.rows[0][0] = views::say(
      "many words that need more than a line of a page, so that they "
      "have to go on below, in the same cell");
  EXPECT_THAT(latex_table(table, kOwnLineWidth), HasSubstr("\\raggedright\\arraybackslash}p{"));
}

}  // namespace
}  // namespace ohmfold::handout

// Documents as CommonMark: what is escaped, and what stands where.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "handout/markdown_document.h"
#include "handout/markdown_text.h"
#include "handout/sample_documents.h"

namespace ohmfold::handout {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

TEST(MarkdownText, EscapesSignsOfStructure) {
  EXPECT_EQ(markdown_text("*a* _b_ `c` [d](e) <f> &amp; ~g~ h|i \\j"),
            R"(\*a\* \_b\_ \`c\` \[d\](e) \<f\> \&amp; \~g\~ h\|i \\j)");
}

TEST(MarkdownText, EscapesWhatWouldBeginABlock) {
  EXPECT_EQ(markdown_text("1. a"), R"(1\. a)");
  EXPECT_EQ(markdown_text("12) a"), R"(12\) a)");
  EXPECT_EQ(markdown_text("- a"), R"(\- a)");
  EXPECT_EQ(markdown_text("+ a"), R"(\+ a)");
  EXPECT_EQ(markdown_text("==="), R"(\===)");
  EXPECT_EQ(markdown_text("# a #"), R"(\# a \#)");
  EXPECT_EQ(markdown_text("> a"), R"(\> a)");
}

TEST(MarkdownText, LeavesPlainTextAlone) {
  EXPECT_EQ(markdown_text("R12 is 18/5 Ω (about 3.6)."), "R12 is 18/5 Ω (about 3.6).");
}

TEST(MarkdownText, IsOneLineWithoutSpaceAtItsEnds) {
  EXPECT_EQ(markdown_text("    a\n\n- b\t"), "a  - b");
}

TEST(MarkdownText, KeepsHyphensAndDotsApartFromEachOther) {
  EXPECT_EQ(markdown_text("a -- b ..."), R"(a -\- b .\.\.)");
}

TEST(Fence, IsLongerThanAnyWithinIt) {
  EXPECT_EQ(fenced("a ``` b\n"), "````text\na ``` b\n````\n");
  EXPECT_EQ(fenced("a\n"), "```text\na\n```\n");
}

TEST(Link, IsEncodedInPercent) {
  EXPECT_EQ(link_to("my (x) ü-1.svg"), "my%20%28x%29%20%C3%BC-1.svg");
}

TEST(MarkdownDocument, HasItsBlocksInOrder) {
  views::Document document;
  document.heading(1, views::say("Title"));
  document.paragraph(views::say("Text."));
  document.entry("1", views::say("First"));
  document.working({test::parallel_pair()});
  document.entry("2", views::say("Second"));
  document.entry("3", views::say("Third"));
  document.table(test::table(1));
  document.entry("", views::say("Bullet"));
  EXPECT_EQ(markdown_document(document, "", SymbolSet::rectangle).text,
            "# Title\n\nText.\n\n1. First\n\n"
            "   ```text\n"
            "   R12 = R1 ∥ R2 = 18/5 Ω ≈ 3.6 Ω   (R1 and R2 are in parallel)\n"
            "   ```\n\n"
            "2. Second\n3. Third\n\n"
            "```text\nPart  Current\n────  ───────\nR1     143 mA\n```\n\n"
            "- Bullet\n");
}

TEST(MarkdownDocument, BeginsANewListWhereNumbersBeginAgain) {
  views::Document document;
  document.entry("1", views::say("a"));
  document.entry("2", views::say("b"));
  document.entry("1", views::say("c"));
  EXPECT_EQ(markdown_document(document, "", SymbolSet::rectangle).text, "1. a\n2. b\n1) c\n");
}

TEST(MarkdownDocument, RefersToFiguresByName) {
  const Markdown written = markdown_document(test::whole("T_1"), "my file", SymbolSet::rectangle);
  ASSERT_EQ(written.figures.size(), 1U);
  EXPECT_EQ(written.figures.front().name, "my file-1.svg");
  EXPECT_THAT(written.text, HasSubstr("![T\\_1. T\\_1.](my%20file-1.svg)\n\nThe circuit: T\\_1\n"));
  EXPECT_THAT(written.text, Not(HasSubstr("<svg")));
}

TEST(MarkdownDocument, HoldsAFigureInOneBlockWithoutBlankLines) {
  const Markdown written =
      markdown_document(test::whole(test::hostile_text()), "", SymbolSet::rectangle);
  EXPECT_TRUE(written.figures.empty());
  const std::size_t begin = written.text.find("\n\n<div>\n");
  const std::size_t end = written.text.find("</div>\n\n");
  ASSERT_NE(begin, std::string::npos);
  ASSERT_NE(end, std::string::npos);
  EXPECT_EQ(written.text.substr(begin + 2, end - begin).find("\n\n"), std::string::npos);
}

}  // namespace
}  // namespace ohmfold::handout

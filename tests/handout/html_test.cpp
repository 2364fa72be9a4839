// Documents as pages.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>
#include <sstream>

#include "handout/html_assets.h"
#include "handout/html_page.h"
#include "handout/markup.h"
#include "handout/page_documents.h"

namespace ohmfold::test {
namespace {

using namespace views;
using handout::html_page;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

handout::PageOptions plain(const std::string& title = "Two lamps") {
  handout::PageOptions options;
  options.title = title;
  return options;
}
handout::PageOptions workbook() {
  handout::PageOptions options = plain();
  options.workbook = true;
  options.figures = {4, 3};
  return options;
}

Document two_problems() {
  Document all = every_block("First");
  for (Block& block : every_block("Second").blocks) all.blocks.push_back(std::move(block));
  all.heading(1, say("Answers"));
  all.paragraph(say("8/3 Ω"));
  return all;
}

std::vector<std::string> texts(const std::vector<Element>& elements) {
  std::vector<std::string> found;
  for (const Element& element : elements) found.push_back(element.text);
  return found;
}

/// References to ids that are not there, and ids that come twice.
std::vector<std::string> faulty_ids(const Markup& markup) {
  std::set<std::string> ids;
  std::vector<std::string> faulty;
  for (const Element& element : markup.elements) {
    const auto id = element.attributes.find("id");
    if (id != element.attributes.end() && !ids.insert(id->second).second) {
      faulty.push_back(id->second);
    }
  }
  for (const Element& element : markup.elements) {
    for (const auto& [name, value] : element.attributes) {
      const bool link = name == "href" && value.starts_with("#");
      const bool refers = name == "for" || name == "aria-describedby" || name == "aria-labelledby";
      if (link && !ids.contains(value.substr(1))) faulty.push_back(value);
      std::istringstream words(refers ? value : "");
      for (std::string word; words >> word;) {
        if (!ids.contains(word)) faulty.push_back(word);
      }
    }
  }
  return faulty;
}

TEST(Page, IsWellFormedWithEveryKindOfBlock) {
  for (const Document& document : {every_block(), two_problems(), Document{}}) {
    for (const handout::PageOptions& options : {plain(), workbook()}) {
      const Markup markup = read_markup(html_page(document, options));
      EXPECT_EQ(markup.fault, "");
      EXPECT_THAT(faulty_ids(markup), IsEmpty());
    }
  }
}

TEST(Page, TakesEveryTextAsText) {
  handout::PageOptions options = workbook();
  options.title = kHostile;
  const Markup markup = read_markup(html_page(hostile_document(), options));
  EXPECT_EQ(markup.fault, "");
  EXPECT_THAT(all_of(markup, "script"), SizeIs(1));
  // The control character is none that a page may hold.
  std::string shown = kHostile;
  shown.replace(shown.find('\x01'), 1, "\uFFFD");
  EXPECT_THAT(all_of(markup, "title").front().text, shown);
  EXPECT_THAT(all_of(markup, "h1").front().text, HasSubstr(shown + shown + shown + shown + shown));
  EXPECT_THAT(all_of(markup, "mi").front().text, shown);
  EXPECT_THAT(all_of(markup, "figcaption").front().text, HasSubstr(shown));
}

TEST(Page, FetchesNothing) {
  const std::string page = html_page(two_problems(), workbook());
  for (const char* what : {"http:", "https:", "src=", "url(", "@import", "<link", "<img"}) {
    for (std::size_t at = page.find(what); at != std::string::npos; at = page.find(what, at + 1)) {
      EXPECT_TRUE(page.substr(at).starts_with("http://www.w3.org/2000/svg")) << page.substr(at, 60);
    }
  }
  EXPECT_NE(page.find("default-src 'none'"), std::string::npos);
}

TEST(Page, IsolatesNames) {
  const Markup markup = read_markup(html_page(every_block(), plain()));
  EXPECT_THAT(texts(all_of(markup, "bdi")), ElementsAre("R1", "E", "R1", "R1", "R2"));
}

TEST(Page, HasNoScriptUnlessItIsAWorkbook) {
  EXPECT_THAT(all_of(read_markup(html_page(every_block(), plain())), "script"), IsEmpty());
}

TEST(Page, PutsFiguresBesideTheirSteps) {
  const Markup markup = read_markup(html_page(every_block(), plain()));
  const std::vector<Element> figures = all_of(markup, "figure");
  ASSERT_THAT(figures, SizeIs(2));
  EXPECT_GT(figures[1].depth, figures[0].depth);
}

TEST(Page, NestsHeadingsWithoutGaps) {
  for (const Document& document : {every_block(), two_problems()}) {
    int before = 0;
    for (const Element& element : read_markup(html_page(document, plain())).elements) {
      if (element.name.size() != 2 || element.name[0] != 'h' || element.name == "hr") continue;
      const int level = element.name[1] - '0';
      if (element.text == "Contents") continue;
      EXPECT_LE(level, before + 1) << element.text;
      before = level;
    }
  }
}

TEST(Page, ListsProblemsAndTheirChaptersInTheContents) {
  const Markup markup = read_markup(html_page(two_problems(), plain("Problems")));
  EXPECT_THAT(texts(all_of(markup, "a")),
              ElementsAre("Skip to the text", "First", "Given", "Solution", "Second", "Given",
                          "Solution", "Answers"));
  EXPECT_EQ(all_of(markup, "h1").front().text, "Problems");
  EXPECT_THAT(all_of(markup, "article"), SizeIs(3));
}

TEST(Page, OfOneProblemListsItsChaptersAndSections) {
  const Markup markup = read_markup(html_page(every_block(), plain()));
  EXPECT_THAT(texts(all_of(markup, "a")), ElementsAre("Skip to the text", "Given", "Solution",
                                                      "Reducing the circuit", "All parts"));
}

TEST(Page, SaysTheTitleOfAStepOnceWhereItIsThatOfItsSection) {
  const Markup markup = read_markup(html_page(every_block(), plain()));
  EXPECT_THAT(texts(all_of(markup, "h3")), ElementsAre("Reducing the circuit", "All parts"));
  EXPECT_THAT(texts(all_of(markup, "h4")),
              ElementsAre("Step 1: combine R1 and R2", "Step 2: look at what is left"));
}

TEST(Page, KeepsWhatBelongsToAnEntryWithinIt) {
  Document document;
  document.entry("7", say("A step."));
  document.paragraph(say("Its reason."), 1);
  document.entry("7a", say("Another."));
  document.paragraph(say("Outside."));
  const Markup markup = read_markup(html_page(document, plain()));
  EXPECT_THAT(texts(all_of(markup, "li")), ElementsAre("A step.\nIts reason.\n", "7a. Another.\n"));
  EXPECT_EQ(all_of(markup, "li").front().attributes.at("value"), "7");
}

TEST(Page, GivesEachRowAndColumnItsHeading) {
  const Markup markup = read_markup(html_page(every_block(), plain()));
  std::vector<std::string> scopes;
  for (const Element& heading : all_of(markup, "th")) {
    scopes.push_back(heading.attributes.at("scope"));
  }
  EXPECT_THAT(scopes, ElementsAre("col", "col", "row", "row"));
}

TEST(Workbook, CoversEveryStepAndAKeyOfAnswers) {
  const Markup markup = read_markup(html_page(two_problems(), workbook()));
  EXPECT_THAT(all_of(markup, "details"), SizeIs(7));
  EXPECT_EQ(all_of(markup, "summary").front().text, "Show this step: Step 1: combine R1 and R2");
  EXPECT_EQ(all_of(markup, "summary").back().text, "Show this part: Answers");
}

TEST(Workbook, AsksWithTheExactValueBesideTheField) {
  const Markup markup = read_markup(html_page(two_problems(), workbook()));
  const std::vector<Element> fields = all_of(markup, "form");
  ASSERT_THAT(fields, SizeIs(2));
  EXPECT_EQ(fields[0].attributes.at("data-value"), "8/3");
  EXPECT_EQ(fields[0].attributes.at("data-unit"), "ohm");
  EXPECT_EQ(fields[0].attributes.at("data-figures"), "4");
  EXPECT_EQ(fields[1].attributes.at("data-figures"), "3");
  EXPECT_EQ(all_of(markup, "label").front().text, "What is R12? (Ω)");
}

TEST(Workbook, ShowsNoFieldWithoutItsScript) {
  for (const Element& element : read_markup(html_page(every_block(), workbook())).elements) {
    const auto kind = element.attributes.find("class");
    if (kind != element.attributes.end() && kind->second == "ask") {
      EXPECT_TRUE(element.attributes.contains("hidden"));
    }
  }
}

TEST(Workbook, HasNoFieldForAValueWithSymbols) {
  Document document;
  document.heading(1, say("Symbols"));
  document.begin_step(say("Step 1"), {{say("What is R12?"), {Number::symbol("r"), Unit::ohm}}});
  document.paragraph(say("r"));
  document.end_step();
  EXPECT_THAT(all_of(read_markup(html_page(document, workbook())), "form"), IsEmpty());
}

TEST(Workbook, IsRememberedByItsText) {
  const auto key = [](const std::string& title) {
    return all_of(read_markup(html_page(every_block(title), workbook())), "main")
        .front()
        .attributes.at("data-key");
  };
  EXPECT_EQ(key("One"), key("One"));
  EXPECT_NE(key("One"), key("Two"));
}

TEST(PageAssets, EndNoElementOfThePage) {
  for (const std::string_view asset :
       {handout::kPageStyle, handout::kWorkbookStyle, handout::kPrintStyle, handout::kWorkbookJudge,
        handout::kWorkbookScript}) {
    EXPECT_FALSE(asset.empty());
    EXPECT_EQ(asset.find("</"), std::string_view::npos);
    EXPECT_EQ(asset.find("<!--"), std::string_view::npos);
  }
}

TEST(Markup, FaultsAreFound) {
  for (const char* text : {"<p>", "<p></q>", "<p>a & b</p>", "<p a=\"1\" a=\"2\"></p>", "<p a></p>",
                           "text", "<p>]]></p>", "<p>\x01</p>", "<p a=\"<\"></p>"}) {
    EXPECT_NE(read_markup(text).fault, "") << text;
  }
  EXPECT_EQ(read_markup("<p a=\"&lt;\">b<br /></p>").fault, "");
}

}  // namespace
}  // namespace ohmfold::test

// What a parser of CommonMark makes of our Markdown: text comes out as it stands. Needs the program
// cmark.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include <unistd.h>

#include "handout/markdown_document.h"
#include "handout/sample_documents.h"

namespace ohmfold::handout {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

std::string contents(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

/// The HTML that the parser makes of it.
std::string parsed(const std::string& markdown) {
  const auto stem =
      std::filesystem::temp_directory_path() / ("ohmfold-markdown-" + std::to_string(getpid()));
  const std::string in = stem.string() + ".md";
  const std::string out = stem.string() + ".html";
  std::ofstream(in, std::ios::binary) << markdown;
  EXPECT_EQ(std::system(("cmark --unsafe " + in + " > " + out).c_str()), 0);
  std::string html = contents(out);
  std::filesystem::remove(in);
  std::filesystem::remove(out);
  return html;
}

std::string in_html(const std::string& text) {
  std::string html;
  for (const char c : text) {
    switch (c) {
      case '&':
        html += "&amp;";
        break;
      case '<':
        html += "&lt;";
        break;
      case '>':
        html += "&gt;";
        break;
      case '"':
        html += "&quot;";
        break;
      default:
        html += c;
    }
  }
  return html;
}

class ParsedMarkdown : public ::testing::Test {
 protected:
  void SetUp() override {
    if (std::system("command -v cmark > /dev/null") != 0) GTEST_SKIP() << "no cmark here";
  }
};

TEST_F(ParsedMarkdown, GivesTextBackAsItStands) {
  for (const std::string& text :
       {test::hostile_text(), std::string("1. not a list"), std::string("- not an entry"),
        std::string("# not a heading #"), std::string("==="), std::string("***"),
        std::string("[a]: /b \"c\""), std::string("```"), std::string("&copy; <b>"),
        std::string("ends in \\"), std::string("12345) x"), std::string("+ x")}) {
    views::Document document;
    document.heading(1, views::say(text));
    document.paragraph(views::say(text));
    document.entry("", views::say(text));
    document.entry("7", views::say(text));
    const std::string html = parsed(markdown_document(document, "", SymbolSet::rectangle).text);
    const std::string shown = in_html(text);
    EXPECT_EQ(html, "<h1>" + shown + "</h1>\n<p>" + shown + "</p>\n<ul>\n<li>" + shown +
                        "</li>\n</ul>\n<ol start=\"7\">\n<li>" + shown + "</li>\n</ol>\n");
  }
}

TEST_F(ParsedMarkdown, KeepsWorkingWithinItsEntryAndCountsOn) {
  views::Document document;
  document.entry("1", views::say("a"));
  document.working({test::parallel_pair()});
  document.entry("2", views::say("b"));
  EXPECT_EQ(parsed(markdown_document(document, "", SymbolSet::rectangle).text),
            "<ol>\n<li>\n<p>a</p>\n<pre><code class=\"language-text\">R12 = R1 ∥ R2 = 18/5 Ω ≈ 3.6 "
            "Ω   (R1 and R2 are in parallel)\n</code></pre>\n</li>\n<li>\n<p>b</p>\n</li>\n"
            "</ol>\n");
}

TEST_F(ParsedMarkdown, LeavesAFigureWhole) {
  const std::string html =
      parsed(markdown_document(test::whole("Title"), "", SymbolSet::rectangle).text);
  const std::size_t begin = html.find("<svg");
  ASSERT_NE(begin, std::string::npos);
  const std::string figure = html.substr(begin, html.find("</svg>", begin) - begin);
  EXPECT_THAT(figure, Not(HasSubstr("<p>")));
  EXPECT_THAT(figure, HasSubstr("<title"));
}

TEST_F(ParsedMarkdown, ShowsAFileWithItsDescription) {
  EXPECT_THAT(parsed(markdown_document(test::whole("A [b]"), "x y", SymbolSet::rectangle).text),
              HasSubstr("<img src=\"x%20y-1.svg\" alt=\"A [b]. A [b].\" />"));
}

}  // namespace
}  // namespace ohmfold::handout

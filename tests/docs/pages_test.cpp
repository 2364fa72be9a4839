// The reader of the pages itself, links, and the set-up commands of README.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include "docs/pages.h"
#include "programs/program.h"

namespace ohmfold::testing {
namespace {

using ::testing::IsSupersetOf;

const std::filesystem::path kTop = OHMFOLD_SOURCE_DIR;

TEST(Examples, AreFencedBlocksWithAComment) {
  const std::string page =
      "Text.\n\n<!-- run 3 -->\n```sh\nohmfold solve x\n```\n<!-- output "
      "-->\n```text\na\n\nb\n```\n"
      "<!-- circuit\nresistor R = 1 from A to B\n-->\n\n```\nwire W from A to B\n```\n"
      "<!-- file: a/b.circuit -->\nMore text.\n```\nplain\n```\n";
  const std::vector<Example> examples = examples_in(page);
  ASSERT_EQ(examples.size(), 4U);
  EXPECT_EQ(examples[0].kind, "run");
  EXPECT_EQ(examples[0].details, "3");
  EXPECT_EQ(examples[0].text, "ohmfold solve x\n");
  EXPECT_EQ(examples[0].line, 4U);
  EXPECT_EQ(examples[0].language, "sh");
  EXPECT_EQ(examples[1].kind, "output");
  EXPECT_EQ(examples[1].text, "a\n\nb\n");
  EXPECT_EQ(page.substr(examples[1].begin, 5), "a\n\nb\n");
  EXPECT_EQ(examples[2].kind, "circuit");
  EXPECT_EQ(examples[2].details, "resistor R = 1 from A to B");
  EXPECT_EQ(examples[3].kind, "") << "a comment belongs to the block right after it";
}

TEST(Examples, ShowWhatTheyShowAndNothingElse) {
  const std::string full = "a\nb\nc\nd\n";
  for (const std::string shown : {"a\nb\nc\nd\n", "a\n[...]\nd\n", "[...]\nb\nc\n[...]\n",
                                  "[...]\nd\n", "a\n[...]\n", "a\n[...]\nb\nc\nd\n", "[...]\n"}) {
    EXPECT_TRUE(shows(shown, full)) << shown;
  }
  for (const std::string shown :
       {"", "a\nb\nc\n", "b\n[...]\n", "[...]\nc\n", "a\nc\nd\n", "[...]\nb\nd\n[...]\n",
        "[...]\nc\n[...]\nb\n[...]\n", "a\nb\nc\nd\nd\n", "a\nb\n[...]\nb\nc\nd\n"}) {
    EXPECT_FALSE(shows(shown, full)) << shown;
  }
}

TEST(Examples, AreMadeNewBetweenTheirFirstAndLastLines) {
  EXPECT_EQ(shown_anew("old\n", "new\n"), "new\n");
  EXPECT_EQ(shown_anew("a\nold\nc\n[...]\nx\n", "a\nb\nc\nd\nx\n"), "a\nb\nc\n[...]\nx\n");
  EXPECT_EQ(shown_anew("[...]\nb\nold\nd\n[...]\n", "a\nb\nc\nd\ne\n"), "[...]\nb\nc\nd\n[...]\n");
  EXPECT_EQ(shown_anew("[...]\ngone\n", "a\n"), "[...]\ngone\n")
      << "left as it is, so that it fails";
}

TEST(Pages, LinkToFilesThatAreThere) {
  static const std::regex kLink(R"(\]\(([^)#]+)[^)]*\))");
  std::size_t seen = 0;
  for (const Page& page : pages()) {
    const std::sregex_iterator end;
    for (std::sregex_iterator at(page.text.begin(), page.text.end(), kLink); at != end; ++at) {
      const std::string target = (*at)[1].str();
      if (target.starts_with("http")) continue;
      ++seen;
      EXPECT_TRUE(std::filesystem::exists(page.path.parent_path() / target))
          << page.path.filename() << " links to " << target;
    }
  }
  EXPECT_GT(seen, 10U);
}

/// The block of README that installs packages and builds; "" where there is none.
std::string set_up_command() {
  for (const Page& page : pages()) {
    for (const Example& example : page.examples) {
      if (example.text.find("apt-get") != std::string::npos) return example.text;
    }
  }
  return "";
}

/// What could be the name of a package.
std::set<std::string> words_in(const std::string& text) {
  static const std::regex kWord(R"([a-z0-9][a-z0-9+.-]+)");
  std::set<std::string> words;
  const std::sregex_iterator end;
  for (std::sregex_iterator at(text.begin(), text.end(), kWord); at != end; ++at) {
    words.insert(at->str());
  }
  return words;
}

TEST(SetUp, InstallsOnlyWhatTheTestsInstallToo) {
  const std::string command = set_up_command();
  std::smatch packages;
  const std::regex list(R"(--no-install-recommends([^&]+)&&)");
  ASSERT_TRUE(std::regex_search(command, packages, list));
  const std::set<std::string> wanted = words_in(packages[1].str());
  EXPECT_GE(wanted.size(), 6U);
  EXPECT_THAT(words_in(read_file(kTop / "tests" / "all.sh")), IsSupersetOf(wanted));
}

TEST(SetUp, EndsWithAProblemThatIsThere) {
  const std::string command = set_up_command();
  std::smatch match;
  ASSERT_TRUE(std::regex_search(command, match, std::regex(R"(ohmfold solve (problems/\S+))")));
  EXPECT_TRUE(std::filesystem::exists(kTop / match[1].str()));
}

}  // namespace
}  // namespace ohmfold::testing

// What README and docs promise: every command, file and circuit that they show is as they say.
//
// OHMFOLD_REWRITE=1 in the environment writes what the program does now into the pages; read the
// difference before you keep it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <set>
#include <string>
#include <vector>

#include "docs/pages.h"
#include "programs/program.h"

namespace ohmfold::testing {
namespace {

const std::filesystem::path kTop = OHMFOLD_SOURCE_DIR;

bool is_rewriting() {
  return std::getenv("OHMFOLD_REWRITE") != nullptr;
}

/// A folder in which the commands of a page run: problems/ is there, and files that the page
/// writes.
class Workplace {
 public:
  Workplace() {
    std::filesystem::create_directory_symlink(kTop / "problems", folder_.path() / "problems");
  }
  void write(const std::string& name, const std::string& text) const {
    write_file(folder_.path() / name, text);
  }
  /// What a person sees who runs the command: errors, then the answer.
  [[nodiscard]] Ending run(const std::string& command) const {
    Ending ending = run_shell(command, folder_.path());
    ending.out = ending.err + ending.out;
    return ending;
  }

 private:
  TemporaryFolder folder_;
};

/// Checks a page from its first example to its last; rewrites it where that is wanted.
class PageCheck {
 public:
  explicit PageCheck(Page page) : page_(std::move(page)) {}

  void run() {
    for (std::size_t i = 0; i < page_.examples.size(); ++i) {
      const Example& example = page_.examples[i];
      SCOPED_TRACE(page_.place(example));
      if (example.kind == "file") {
        compare(i, read_file(kTop / example.details));
      } else if (example.kind == "write") {
        place_.write(example.details, example.text);
      } else if (example.kind == "run") {
        ending_ = place_.run(example.text);
        EXPECT_EQ(ending_.code, example.details.empty() ? 0 : std::stoi(example.details));
      } else if (example.kind == "output") {
        compare(i, ending_.out);
      }
    }
    if (is_rewriting()) rewrite();
  }

 private:
  void compare(std::size_t index, const std::string& full) {
    std::string shown = page_.examples[index].text;
    if (!shows(shown, full) && is_rewriting()) {
      shown = shown_anew(shown, full);
      changes_.push_back({index, shown});
    }
    EXPECT_TRUE(shows(shown, full)) << "the page shows:\n" << shown << "but it is:\n" << full;
  }

  void rewrite() {
    if (changes_.empty()) return;
    for (auto change = changes_.rbegin(); change != changes_.rend(); ++change) {
      const Example& example = page_.examples[change->index];
      page_.text.replace(example.begin, example.text.size(), change->text);
    }
    write_file(page_.path, page_.text);
  }

  struct Change {
    std::size_t index;
    std::string text;
  };

  Page page_;
  Workplace place_;
  Ending ending_;
  std::vector<Change> changes_;
};

TEST(Pages, ShowWhatTheProgramDoes) {
  for (Page& page : pages()) PageCheck(std::move(page)).run();
}

TEST(Pages, MarkTheirExamplesInKnownWays) {
  const std::set<std::string> known = {"",       "file",    "write", "run",
                                       "output", "circuit", "work",  "values"};
  std::set<std::string> seen;
  for (const Page& page : pages()) {
    for (const Example& example : page.examples) {
      EXPECT_TRUE(known.contains(example.kind)) << page.place(example) << ": " << example.kind;
      seen.insert(example.kind);
      // A command that nobody runs may be wrong; the set-up commands install packages.
      const bool is_command =
          example.text.find("ohmfold combine ") == 0 || example.text.find("ohmfold solve ") == 0;
      EXPECT_TRUE(!is_command || example.kind == "run") << page.place(example);
    }
  }
  EXPECT_EQ(seen, known) << "an example of each kind is tested";
}

}  // namespace
}  // namespace ohmfold::testing

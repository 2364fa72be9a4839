// docs/errors.md lists every known error once, with the mark that it costs and where that is known.
#include <regex>

#include "ohmfold/known_error.h"
#include "samples.h"

namespace ohmfold {
namespace {

std::string errors_page() {
  return test::contents(std::filesystem::path(OHMFOLD_SOURCE_DIR) / "docs/errors.md");
}

TEST(ErrorsPage, ListsEveryErrorOnceWithItsMark) {
  const std::string page = errors_page();
  for (std::size_t i = 0; i < kKnownErrors; ++i) {
    const auto error = static_cast<KnownError>(i);
    const std::string begin = "\n| `" + std::string(word_of(error)) + "` | ";
    const std::size_t at = page.find(begin);
    ASSERT_NE(at, std::string::npos) << word_of(error);
    EXPECT_EQ(page.find(begin, at + 1), std::string::npos) << word_of(error);
    const std::string row = page.substr(at + 1, page.find('\n', at + 1) - at - 1);
    EXPECT_NE(row.find(costs_method(error) ? " | M | " : " | A | "), std::string::npos) << row;
  }
}

TEST(ErrorsPage, ListsNothingElse) {
  const std::string page = errors_page();
  const std::regex row("\n\\| `[a-z-]+` \\|");
  const auto rows =
      std::distance(std::sregex_iterator(page.begin(), page.end(), row), std::sregex_iterator());
  EXPECT_EQ(static_cast<std::size_t>(rows), kKnownErrors);
}

}  // namespace
}  // namespace ohmfold

// Whole pages, read and found right, stay as they are. OHMFOLD_REWRITE=1 writes them anew.
#include <cstdlib>

#include "samples.h"

namespace ohmfold {
namespace {

class Golden : public testing::TestWithParam<const char*> {};

TEST_P(Golden, PageIsUnchanged) {
  const std::filesystem::path root = OHMFOLD_SOURCE_DIR;
  const std::string name = GetParam();
  const std::filesystem::path page = root / "tests/views/golden" / (name + ".txt");
  const SourceText source{name + ".circuit",
                          test::contents(root / "problems" / (name + ".circuit"))};
  ASSERT_FALSE(source.text.empty()) << name;
  const std::string text = render_text(test::trace_of(source));
  if (std::getenv("OHMFOLD_REWRITE") != nullptr) {  // NOLINT(concurrency-mt-unsafe): one thread
    std::ofstream(page, std::ios::binary) << text;
    GTEST_SKIP() << "written anew: " << page;
  }
  EXPECT_EQ(text, test::contents(page)) << page;
}

INSTANTIATE_TEST_SUITE_P(Problems, Golden,
                         testing::Values("22-joined-middles", "33-night-charger",
                                         "37-awkward-bridge", "38-signal-box", "40-plant-heater",
                                         "41-trimmed-scale",
                                         "46-soup-warmer"));

}  // namespace
}  // namespace ohmfold

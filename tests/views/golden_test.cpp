// Whole pages, read and found right, stay as they are. OHMFOLD_REWRITE=1 writes them anew.
#include <algorithm>
#include <cstdlib>

#include "samples.h"

namespace ohmfold {
namespace {

struct Page {
  std::string problem;
  Method method = Method::automatic;
  std::string suffix = {};  // of the page's name, where a method is asked for
};

class Golden : public testing::TestWithParam<Page> {};

TEST_P(Golden, PageIsUnchanged) {
  const std::filesystem::path root = OHMFOLD_SOURCE_DIR;
  const auto& [name, method, suffix] = GetParam();
  const std::filesystem::path page = root / "tests/views/golden" / (name + suffix + ".txt");
  const SourceText source{name + ".circuit",
                          test::contents(root / "problems" / (name + ".circuit"))};
  ASSERT_FALSE(source.text.empty()) << name;
  SolveOptions options;
  options.method = method;
  const std::string text = render_text(test::trace_of(source, options));
  if (std::getenv("OHMFOLD_REWRITE") != nullptr) {  // NOLINT(concurrency-mt-unsafe): one thread
    std::ofstream(page, std::ios::binary) << text;
    GTEST_SKIP() << "written anew: " << page;
  }
  EXPECT_EQ(text, test::contents(page)) << page;
}

INSTANTIATE_TEST_SUITE_P(
    Problems, Golden,
    testing::Values(Page{"22-joined-middles"}, Page{"33-night-charger"}, Page{"35-balanced-scale"},
                    Page{"36-loaded-scale", Method::delta_star, "-delta-star"},
                    Page{"37-awkward-bridge"}, Page{"38-signal-box"}, Page{"40-plant-heater"},
                    Page{"41-trimmed-scale"}, Page{"42-wire-lantern"}, Page{"43-two-sheds"},
                    Page{"45-steady-lamp"}, Page{"46-spare-socket"}, Page{"49-soup-warmer"}),
    [](const testing::TestParamInfo<Page>& page) {
      std::string name = page.param.problem + page.param.suffix;
      std::replace(name.begin(), name.end(), '-', '_');
      return name;
    });

}  // namespace
}  // namespace ohmfold

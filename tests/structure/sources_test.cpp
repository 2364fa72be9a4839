// What holds for every source file of the program.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include "structure/sources.h"

namespace ohmfold::testing {
namespace {

using ::testing::IsEmpty;

constexpr std::size_t kMostLines = 400;

std::vector<Source> all_sources() {
  std::vector<Source> all = sources("src");
  for (Source& source : sources("include")) all.push_back(std::move(source));
  return all;
}

bool has_floating_point(const std::string& text) {
  static const std::regex kType(R"(\b(double|float)\b)");
  return std::regex_search(code_only(text), kType);
}

TEST(Sources, HaveNoFloatingPoint) {
  std::vector<std::string> wrong;
  for (const Source& source : all_sources()) {
    if (has_floating_point(source.text)) wrong.push_back(source.path);
  }
  EXPECT_THAT(wrong, IsEmpty());
}

TEST(Sources, WithFloatingPointAreFound) {
  EXPECT_TRUE(has_floating_point("int a; double b;"));
  EXPECT_TRUE(has_floating_point("x = \"a\\\"\"; /* */ float b;"));
  EXPECT_TRUE(has_floating_point("x = '\"'; float b; y = '\"';"));
  EXPECT_FALSE(
      has_floating_point("// a double\nint doubled; /* float */ const char* a = \"float\";"));
}

TEST(Sources, AreShort) {
  std::vector<std::string> wrong;
  for (const Source& source : all_sources()) {
    if (lines(source.text).size() > kMostLines) wrong.push_back(source.path);
  }
  EXPECT_THAT(wrong, IsEmpty());
}

TEST(Sources, BeginWithWhatTheyAreAbout) {
  std::vector<std::string> wrong;
  for (const Source& source : all_sources()) {
    if (!source.text.starts_with("// ")) wrong.push_back(source.path);
    const bool guarded = source.text.find("\n#pragma once\n") != std::string::npos;
    if (source.path.ends_with(".h") && !guarded) wrong.push_back(source.path + " (unguarded)");
  }
  EXPECT_THAT(wrong, IsEmpty());
}

TEST(Project, HasTheseNamesAtItsTop) {
  const std::set<std::string> expected = {"README.md", "DEVELOPERS.md", "CMakeLists.txt",
                                          "src",       "include",       "tests",
                                          "problems",  "docs",          "LICENSE"};
  std::set<std::string> found;
  for (const auto& entry : std::filesystem::directory_iterator(top_folder())) {
    const std::string name = entry.path().filename().string();
    const bool is_ours = !name.starts_with(".") && !name.starts_with("build");
    if (is_ours) found.insert(name);
  }
  EXPECT_EQ(found, expected);
}

}  // namespace
}  // namespace ohmfold::testing
